import { existsSync, readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { wordsInEveryLanguage } from "../src/generate/in-every-language";
import { packagesImportedBy, roomsImportedBy, roomsOf } from "../src/generate/rooms";
import { languageIds, languages } from "../src/words/languages";

const rooms = roomsOf(".");
const files = rooms.flatMap((room) => room.files);

test("every file stands in a room, and the type check goes through every room", () => {
  const all = readdirSync("src", { recursive: true, encoding: "utf8" }).filter((path) => /(?<!\.d)\.tsx?$/.test(path));
  expect(files.length).toBe(all.length);
  const { references } = JSON.parse(readFileSync("tsconfig.json", "utf8")) as { references: { path: string }[] };
  expect(references.map(({ path }) => path).sort()).toEqual([...rooms.map(({ name }) => `src/${name}`), "test"].sort());
});

describe.each(rooms)("$name", ({ name, references, packages, mayName, files: own }) => {
  test("imports from the rooms that it states, and from each of them", () => {
    expect([...references].sort()).toEqual([...new Set(own.flatMap((file) => roomsImportedBy(file, rooms)))].sort());
  });

  test("imports the packages that it states, and each of them", () => {
    expect([...packages].sort()).toEqual([...new Set(own.flatMap(packagesImportedBy))].sort());
  });

  // Types of packages bring the names of Node along, so that the compiler does not see all of it.
  test.runIf(!mayName.node)("names nothing of Node", () => {
    for (const { path, text, imports } of own) {
      expect(
        imports.filter((from) => from.startsWith("node:")),
        path,
      ).toEqual([]);
      expect(text, path).not.toMatch(/\b(process|Buffer)\.[a-z]|\b__dirname\b/);
    }
  });

  test.runIf(name !== "pages/excel")("names no Office", () => {
    for (const { path, text } of own) {
      expect(text, path).not.toMatch(/\b(CustomFunctions|Office|Excel)\.(?!js\b)[A-Za-z]/);
    }
  });
});

test("Google's services are named in one room", () => {
  const naming = files.filter(({ text }) => /\b(SpreadsheetApp|Utilities)\.[a-z]/.test(text));
  expect([...new Set(naming.map(({ room }) => room))]).toEqual(["google-sheets"]);
});

test("calculation and a spreadsheet's rules rest on nothing from outside", () => {
  const bare = rooms.filter(({ name }) => name === "core" || name === "cells");
  expect(bare.map(({ packages, mayName }) => [packages, Object.values(mayName)])).toEqual([
    [[], [false, false, false]],
    [[], [false, false, false]],
  ]);
  expect(rooms.find(({ name }) => name === "core")?.references).toEqual([]);
});

test("the picture of the rooms is shown to developers", () => {
  expect(readFileSync("DEVELOPERS.md", "utf8")).toContain("(docs/rooms.svg)");
  expect(existsSync("docs/rooms.svg")).toBe(true);
});

// A prefix by itself, before what is put in, and at the start of a pattern.
test("the namespace stands once", () => {
  const making = /= "TEA"|["'`]_?TEA[._]["'`]|\bTEA\\\.|TEA[._]\$\{|\/\^_?\??TEA/;
  expect(files.filter(({ text }) => making.test(text)).map(({ path }) => path)).toEqual(["core/namespace.ts"]);
});

test("formulas are read in one place", () => {
  const readers = files.filter((file) => packagesImportedBy(file).includes("@borgar/fx"));
  expect(readers.map(({ path }) => path)).toEqual(["workbook/formula.ts"]);
});

test("a function is one file in its group's folder", () => {
  const functionFiles = files.filter(({ room, text }) => room === "core" && /= defineFunction\(/.test(text));
  for (const { path, text } of functionFiles) {
    const group = /group: "([a-z]+)"/.exec(text)?.[1];
    expect(path.split("/")[1]).toBe(group);
    expect([...text.matchAll(/= defineFunction\(/g)].length, path).toBe(1);
  }
  expect(functionFiles.length).toBeGreaterThan(0);
});

describe("a language is named in its folder and in the list of languages alone", () => {
  const [first, ...others] = languageIds;
  const generated = [...wordsInEveryLanguage().keys()].map((path) => path.slice("src/".length));
  const outside = files.filter(
    ({ path }) =>
      !languageIds.some((id) => path.startsWith(`words/${id}/`)) &&
      path !== "words/languages.ts" &&
      !generated.includes(path),
  );
  const withoutComments = (text: string) => text.replaceAll(/\/\*[\s\S]*?\*\/|^\s*\/\/.*$/gm, "");
  const namesIn = (text: string, name: string) => new RegExp(`(?<![\\w$])${name}(?![\\w$])`).test(text);

  test.each(others)("%s", (id) => {
    const name = languages[id].inEnglish.toLowerCase();
    const naming = outside.filter(({ text }) => {
      const code = withoutComments(text);
      return namesIn(code, id) || new RegExp(`\\b${name}`).test(code);
    });
    expect(naming.map(({ path }) => path)).toEqual([]);
  });

  // What is written in English counts as the English do, and says so where it is a page; what is played or asked of other
  // programs is in American English.
  test(`${first}, in which it is written first`, () => {
    const ofTexts = /toLocaleString\("en"\)|<html lang="en">|\ben-US\b/g;
    const naming = outside.filter(({ text }) => namesIn(withoutComments(text).replaceAll(ofTexts, ""), first));
    // What sample workbooks say is as much as the English does.
    expect(naming.map(({ path }) => path)).toEqual(["words/samples.ts"]);
  });
});
