/**
 * npm run check-proofs: LibreOffice works out the formulas of the samples that need no add-in, the proofs above all,
 * and every answer is held against the one of our own engine. Not part of `npm test`: it needs LibreOffice Calc.
 */

import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { mayCallOurs } from "../core/describe";
import { addressOf } from "../workbook/addresses";
import type { Cell, Workbook } from "../workbook/workbook";
import { readWorkbook } from "../xlsx/read-workbook";
import { writeWorkbook } from "../xlsx/write-workbook";
import { calculated, sampleBooks } from "./sample-books";

/** As a share of the number, and below 1 as it is: LibreOffice saves times to a tenth of a millisecond, 1e-9 of a day. */
const tolerance = 1e-8;

const calc = ["org.openoffice", "Office", "Calc"].join(".");

/** Works every formula out anew when a file is opened, whatever results it holds. */
const alwaysCalculate = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
<item oor:path="/${calc}/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>`;

const needsAddIn = (cell: Cell): boolean => mayCallOurs(cell.formula ?? "");
const isOurs = (cell: Cell): boolean => cell.formula !== undefined && !needsAddIn(cell) && cell.spill === undefined;

/** The book with the answers of TEA functions as plain values, so that everything else can be worked out without them. */
const withoutAddIn = (book: Workbook): Workbook => ({
  ...book,
  sheets: book.sheets.map((sheet) => ({
    ...sheet,
    charts: [],
    cells: sheet.cells.map((cell) => {
      const isSpilled = cell.formula === undefined && cell.value === "";
      if (!needsAddIn(cell) && !isSpilled) return cell;
      const { formula, spill, ...rest } = cell;
      // A text without letters is not a blank: other formulas ask.
      return rest.value === "" ? { ...rest, formula: '=""' } : rest;
    }),
  })),
});

async function byLibreOffice(book: Workbook, name: string, folder: string): Promise<Workbook> {
  const from = join(folder, "from");
  const profile = join(folder, "profile");
  mkdirSync(join(profile, "user"), { recursive: true });
  mkdirSync(from, { recursive: true });
  writeFileSync(join(profile, "user", "registrymodifications.xcu"), alwaysCalculate);
  writeFileSync(join(from, name), await writeWorkbook(withoutAddIn(book)));
  const options = ["--headless", `-env:UserInstallation=${pathToFileURL(profile).href}`, "--convert-to", "xlsx"];
  execFileSync("soffice", [...options, "--outdir", folder, join(from, name)], { stdio: "pipe", timeout: 300_000 });
  return readWorkbook(new Uint8Array(readFileSync(join(folder, name))));
}

const agree = (one: Cell["value"], other: Cell["value"]): boolean => {
  if (typeof one === "number" && typeof other === "number") {
    return Math.abs(one - other) <= tolerance * Math.max(1, Math.abs(one), Math.abs(other));
  }
  // An empty text comes back as one or as nothing; where it had spilled from a TEA function, as the 0 of a blank cell.
  return (one ?? "") === (other ?? "") || ((one ?? "") === "" && other === 0);
};

/** Says what differs, one line each; gives how many formulas were held against each other. */
async function check(
  name: string,
  build: () => Workbook,
  folder: string,
): Promise<{ count: number; differ: string[] }> {
  const ours = await calculated(build());
  const theirs = await byLibreOffice(ours, name, folder);
  let count = 0;
  const differ = ours.sheets.flatMap((sheet) => {
    const found = new Map(
      theirs.sheets
        .find((other) => other.name === sheet.name)
        ?.cells.map((cell) => [addressOf(cell.row, cell.column), cell.value]),
    );
    return sheet.cells.filter(isOurs).flatMap((cell) => {
      count += 1;
      const address = addressOf(cell.row, cell.column);
      const value = found.get(address);
      if (agree(cell.value, value)) return [];
      return [`${sheet.name}!${address}: ${String(cell.value)} here, ${String(value)} there, of ${cell.formula}`];
    });
  });
  return { count, differ };
}

async function checkAll(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "tea-proofs-"));
  try {
    for (const [name, build] of Object.entries(sampleBooks)) {
      const { count, differ } = await check(name, build, folder);
      console.log(`${name}: ${count - differ.length} of ${count} formulas without TEA functions agree`);
      for (const line of differ) console.log(`  ${line}`);
      if (differ.length > 0) process.exitCode = 1;
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
}

checkAll().catch((problem) => {
  console.error(
    problem instanceof Error && "code" in problem && problem.code === "ENOENT"
      ? "LibreOffice was not found: install libreoffice-calc-nogui (Debian) or put soffice on the path"
      : problem,
  );
  process.exitCode = 1;
});
