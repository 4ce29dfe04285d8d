/**
 * `npm run fixtures`: writes the same small book of an invented farm with programs and libraries of others, and which
 * versions of them did. Needs LibreOffice and Python with openpyxl (Debian: libreoffice-calc-nogui, python3-openpyxl).
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { writeWithExceljs } from "./exceljs";

const folder = "test/xlsx/written-elsewhere";

function run(command: string, words: readonly string[]): string {
  const { status, stdout, stderr, error } = spawnSync(command, words, { encoding: "utf8" });
  if (error || status !== 0) throw new Error(`${command} must be there and work: ${error?.message ?? stderr}`);
  return stdout.trim();
}

function writeWithLibreOffice(): string {
  const profile = mkdtempSync(join(tmpdir(), "fixtures-"));
  try {
    const words = [`-env:UserInstallation=file://${profile}`, "--headless", "--convert-to"];
    run("soffice", [...words, "xlsx:Calc MS Excel 2007 XML", "--outdir", folder, join(folder, "libreoffice.fods")]);
    return run("soffice", [`-env:UserInstallation=file://${profile}`, "--version"]).replace(
      /^LibreOffice (\S+).*$/s,
      "$1",
    );
  } finally {
    rmSync(profile, { recursive: true });
  }
}

async function write(): Promise<void> {
  const python = process.env.PYTHON ?? "/usr/bin/python3";
  const versions = {
    "exceljs.xlsx": {
      writer: "exceljs",
      version: await writeWithExceljs(join(folder, "exceljs.xlsx")),
      by: "exceljs.ts",
    },
    "libreoffice.xlsx": { writer: "LibreOffice", version: writeWithLibreOffice(), by: "libreoffice.fods" },
    "openpyxl.xlsx": {
      writer: "openpyxl",
      version: run(python, [join(folder, "write-openpyxl.py"), join(folder, "openpyxl.xlsx")]),
      by: "write-openpyxl.py",
    },
  };
  writeFileSync(join(folder, "versions.json"), `${JSON.stringify(versions, null, 2)}\n`);
  console.log(versions);
}

write().catch((problem: unknown) => {
  console.error(problem instanceof Error ? problem.message : problem);
  process.exitCode = 1;
});
