import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { catalogue } from "../../src/core/catalogue";
import { plainName } from "../../src/core/describe";
import { trials } from "../../src/release/trials";
import { faultsInGoogleSheets } from "../../src/release/tried-in-google-sheets";

test.each(["[]", "[[]]"])("a script whose functions answer %s fails every trial", (nothing) => {
  const folder = mkdtempSync(join(tmpdir(), "tea-sheets-"));
  const script = join(folder, "script.gs");
  writeFileSync(
    script,
    catalogue.map(({ spec }) => `function ${plainName(spec.id)}() { return ${nothing}; }`).join("\n"),
  );
  expect(faultsInGoogleSheets(script)).toHaveLength(trials.length);
  rmSync(folder, { recursive: true });
});
