import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";

/** What git makes of a file when it is checked out, whatever the system. */
const attributeOf = (name: string, file: string): string =>
  execFileSync("git", ["check-attr", name, "--", file], { encoding: "utf8" }).trim().split(": ").at(-1) as string;

test.skipIf(!existsSync(".git"))("texts are checked out with the line ends that they are written with", () => {
  for (const file of ["signatures.json", "docs/changelog.md", "src/pane/fluent-tokens.css", ".ci/run"]) {
    expect([attributeOf("text", file), attributeOf("eol", file)], file).toEqual(["auto", "lf"]);
  }
});

test.skipIf(!existsSync(".git"))("workbooks and pictures are left as they are", () => {
  const samples = readdirSync("sample-workbooks", { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".xlsx"))
    .map((name) => `sample-workbooks/${name}`);
  for (const file of [...samples, "docs/guide/en-lot.png", "src/pages/excel/icons/icon-16.png"]) {
    expect(attributeOf("text", file), file).toBe("unset");
    // Both formats hold zero bytes, by which git would know them too; a text does not.
    expect(readFileSync(file).includes(0), file).toBe(true);
  }
});
