/** Calls the functions in workbooks as named formulas, so that they need no add-in, or as the add-in's again. */
import { readFileSync } from "node:fs";
import { idInPlainName } from "../core/describe";
import { namespace } from "../core/namespace";
import { type WithoutAddIn, withAddInFunctions, withNamedFunctions } from "../xlsx/named-functions";
import { Refusal } from "../xlsx/refusal";
import { booksAt } from "./files-in";
import { type Options, optionsIn, usage } from "./names/options";
import { stampOf, writeInPlace, writeWhole } from "./recalc/in-place";
import { withOptions } from "./with-options";

const main = (given: readonly string[]): number => withOptions(optionsIn(given), usage, work);

function work({ paths, out, back, backup }: Options): number {
  const files = booksAt(paths);
  if (typeof files === "string" || (files.length > 1 && out !== undefined)) {
    console.error(typeof files === "string" ? files : "--out is for one file; got several");
    return 2;
  }
  let stands = true;
  for (const file of files) {
    try {
      const before = stampOf(file);
      const found = (back ? withAddInFunctions : withNamedFunctions)(readFileSync(file));
      if (out !== undefined) writeWhole(out, found.bytes);
      else if (found.formulas > 0 || found.names.join() !== found.namesBefore.join()) {
        writeInPlace(file, found.bytes, before, backup);
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
