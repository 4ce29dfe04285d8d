import { spawnSync } from "node:child_process";
import { copyFileSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { optionsIn } from "../../src/command-line/names/options";

test("the words behind npm run names say what to do, or what is wrong with them", () => {
  expect(optionsIn(["a.xlsx", "--back", "--out", "b.xlsx"])).toEqual({
    ...{ help: false, paths: ["a.xlsx"] },
    ...{ out: "b.xlsx", back: true, backup: true },
  });
  expect(optionsIn(["a.xlsx", "--no-backup"])).toMatchObject({ backup: false, back: false, out: undefined });
  expect(optionsIn(["a.xlsx", "--out", "--back"])).toBe("--out must be followed by a file");
  expect(optionsIn(["a.xlsx", "--out"])).toBe("--out must be followed by a file");
  expect(optionsIn(["a.xlsx", "-x"])).toBe("options must be --out, --back or --no-backup; got -x");
  expect(optionsIn([])).toContain("npm run names");
  expect(optionsIn(["--help"])).toMatchObject({ help: true });
});

describe("npm run names", () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "tea-names-"));
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));
  const names = (...words: string[]) =>
    spawnSync(process.execPath, ["--import", "tsx", "src/command-line/names.ts", ...words], { encoding: "utf8" });

  test("says so where there is no workbook, and takes what a pattern stands for", () => {
    mkdirSync(join(folder, "empty"));
    const nothing = names(join(folder, "empty"));
    expect([nothing.status, nothing.stderr.trim()]).toEqual([2, "there is no .xlsx file there"]);
    const book = join(folder, "one-lot.xlsx");
    copyFileSync("sample-workbooks/one-lot.xlsx", book);
    const before = readFileSync(book);
    const changed = names(join(folder, "*.xlsx"), "--no-backup");
    expect(changed.stderr).toBe("");
    expect(changed.status).toBe(0);
    expect(readFileSync(book).equals(before)).toBe(false);
    expect(existsSync(`${book}.bak`)).toBe(false);
  });
});
