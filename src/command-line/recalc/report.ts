/** What became of a file, by sheets, to read on a screen. */
import type { Cell } from "../../workbook/workbook";
import { englishFew, englishSavingRemark } from "../../xlsx/english-remarks";
import { few } from "../../xlsx/remarks";
import type { Options } from "./options";
import type { Recalculated, RecalculatedSheet } from "./recalculated";

export function report(file: string, { sheets, bytes, warnings }: Recalculated, { check, out }: Options): string {
  const all = sheets.flatMap(({ changed }) => changed);
  const formulas = sheets.reduce((sum, sheet) => sum + sheet.formulas, 0);
  const summary = check
    ? `${counted(all.length, "stored value differs", "stored values differ")} of ${counted(formulas, "formula", "formulas")}`
    : `${counted(formulas, "formula", "formulas")}, ${counted(all.length, "new result", "new results")}${written(bytes, out)}`;
  return [
    `${file}: ${summary}`,
    ...sheets.filter(({ formulas: own }) => own > 0).flatMap((sheet) => linesOf(sheet, check)),
    ...(check ? [] : warnings.map(englishSavingRemark)),
  ].join("\n");
}

function written(bytes: Uint8Array | undefined, out: string | undefined): string {
  if (out !== undefined) return `; written to ${out}`;
  return bytes ? "; written" : "; the file stays as it is";
}

function linesOf({ name, formulas, changed, left }: RecalculatedSheet, check: boolean): string[] {
  const what = check ? counted(changed.length, "differs", "differ") : counted(changed.length, "new", "new");
  const reasons = new Map<string, string[]>();
  for (const { at, why } of left) reasons.set(why, [...(reasons.get(why) ?? []), at]);
  return [
    `  ${name}: ${counted(formulas, "formula", "formulas")}, ${what}`,
    ...(check
      ? changed.map(({ at, stored, now }) => `    ${at} holds ${shown(stored)} and comes to ${shown(now)}`)
      : []),
    ...[...reasons].map(([why, cells]) => `    not worked out because of ${why}: ${englishFew(few(cells))}`),
  ];
}

const shown = (value: Cell["value"]): string => (value === undefined || value === "" ? "nothing" : String(value));

const counted = (count: number, one: string, several: string): string =>
  `${count.toLocaleString("en")} ${count === 1 ? one : several}`;
