import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { describe, expect, it } from "vitest";
import { sampleBooks, sampleFile, withoutAddIn, withoutNeedOfAddIn } from "../../src/sample-books/sample-books";
import { readWorkbook } from "../../src/xlsx/read-workbook";
import { writeWorkbook } from "../../src/xlsx/write-workbook";
import { expectSample } from "./expect-sample";

/** Large ones are calculated once: in the tests that go on with them, season.test.ts and one-lot.test.ts. */
const provedElsewhere = ["season.xlsx", "one-lot.xlsx"];

const filesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => relative(folder, join(parentPath, name)).replaceAll("\\", "/"))
    .sort();

describe("sample-workbooks/", () => {
  it("holds the files that the builder makes, and no others", () => {
    expect(filesIn("sample-workbooks").filter((name) => !name.startsWith(withoutAddIn))).toEqual(
      Object.keys(sampleBooks).sort(),
    );
  });

  it("holds beside them those that need no add-in, made of the same files", () => {
    const named = Object.keys(sampleBooks).flatMap((name) => {
      const bytes = withoutNeedOfAddIn(new Uint8Array(readFileSync(`sample-workbooks/${name}`)));
      return bytes ? [[name, bytes] as const] : [];
    });
    expect(filesIn(`sample-workbooks/${withoutAddIn}`)).toEqual(named.map(([name]) => name).sort());
    expect(named.length).toBeGreaterThan(0);
    for (const [name, bytes] of named) {
      expect(readFileSync(`sample-workbooks/${withoutAddIn}/${name}`).equals(bytes), name).toBe(true);
    }
  });

  it.each(Object.entries(sampleBooks).filter(([name]) => !provedElsewhere.includes(name)))(
    "%s is what `npm run samples` makes of the sources today",
    async (name, build) => expectSample(name, await sampleFile(build)),
  );

  it.each(Object.keys(sampleBooks))("%s is the same after reading and writing", async (name) => {
    const read = readWorkbook(new Uint8Array(readFileSync(`sample-workbooks/${name}`)));
    expect(readWorkbook(await writeWorkbook(read))).toEqual(read);
  });
});
