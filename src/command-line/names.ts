/** Calls the functions in workbooks as named formulas, so that they need no add-in, or as the add-in's again. */
import { existsSync, readFileSync } from "node:fs";
import { idInPlainName } from "../core/describe";
import { namespace } from "../core/namespace";
import { type WithoutAddIn, withAddInFunctions, withNamedFunctions } from "../xlsx/named-functions";
import { Refusal } from "../xlsx/refusal";
import { filesIn } from "./files-in";
import { stampOf, writeInPlace, writeWhole } from "./recalc/in-place";

const usage = `Puts the functions into workbooks themselves, as named formulas, so that they work without the add-in.

  npm run names -- book.xlsx                    in place: TEA.X( becomes TEA_X(; the file before is kept as book.xlsx.bak
  npm run names -- book.xlsx --out new.xlsx     into another file
  npm run names -- book.xlsx --back             TEA_X( becomes TEA.X( again, and the names go
  npm run names -- FOLDER                       every .xlsx and .xlsm in it
  npm run names -- book.xlsx --no-backup        keeps no .bak

Only the names that are called are put in, with those that they call. Every other part of the file keeps its bytes; the
next spreadsheet program that opens it is asked to work everything out. Functions without a named formula stay as they
are and are listed: they still need the add-in. docs/without-the-add-in.md says more.`;

function main(given: readonly string[]): number {
  const outAt = given.indexOf("--out");
  const out = outAt < 0 ? undefined : given[outAt + 1];
  const flags = given.filter((word) => word.startsWith("--") && word !== "--out");
  const paths = given.filter((word, index) => !word.startsWith("-") && (outAt < 0 || index !== outAt + 1));
  if (flags.includes("--help") || given.includes("-h")) {
    console.log(usage);
    return 0;
  }
  const unknown = flags.find((flag) => !["--back", "--no-backup"].includes(flag));
  const missing = paths.find((path) => !existsSync(path));
  if (paths.length === 0 || unknown !== undefined || missing !== undefined || (outAt >= 0 && out === undefined)) {
    if (unknown !== undefined) console.error(`options must be --out, --back or --no-backup; got ${unknown}`);
    else console.error(missing === undefined ? usage : `there is no ${missing}`);
    return 2;
  }
  const files = filesIn(paths);
  if (out !== undefined && files.length !== 1) {
    console.error(`--out is for one file; got ${files.length}`);
    return 2;
  }
  const isBack = flags.includes("--back");
  let stands = true;
  for (const file of files) {
    try {
      const before = stampOf(file);
      const found = (isBack ? withAddInFunctions : withNamedFunctions)(readFileSync(file));
      if (out !== undefined) writeWhole(out, found.bytes);
      else if (found.formulas > 0 || found.names.join() !== found.namesBefore.join()) {
        writeInPlace(file, found.bytes, before, !flags.includes("--no-backup"));
      }
      console.log(`${out ?? file}: ${report(found)}`);
    } catch (problem) {
      stands = false;
      const reason = problem instanceof Error ? problem.message : String(problem);
      console.error(`${file}: ${problem instanceof Refusal ? reason : `it was not changed: ${reason}`}`);
    }
  }
  return stands ? 0 : 1;
}

function report({ formulas, names, left }: WithoutAddIn): string {
  const own = names.filter((name) => idInPlainName(name) !== undefined);
  const said = [
    `${formulas} formula${formulas === 1 ? "" : "s"} changed`,
    `${own.length} function${own.length === 1 ? "" : "s"} in names (${names.length} names in all)`,
  ];
  return [
    said.join(", "),
    ...(left.length === 0
      ? []
      : [`  still called in the add-in's way: ${left.map((id) => `${namespace}.${id}`).join(", ")}`]),
  ].join("\n");
}

process.exitCode = main(process.argv.slice(2));
