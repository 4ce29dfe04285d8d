/** Which cells formulas read. Taking formulas apart is slow, and they seldom change: each is taken apart once. */
import { tokenize } from "../../workbook/formula";
import { areaWithin, partsOf } from "../../workbook/references";
import type { Area } from "../../workbook/workbook";

export type SheetArea = Area & { readonly sheet: string };

/** Whole columns or rows, which reach as far as their sheet is used. */
interface WholeLines {
  readonly sheet: string;
  readonly cells: string;
}

/** By the sheet that a formula stands in, and by its text. */
const known = new Map<string, Map<string, readonly (SheetArea | WholeLines)[]>>();
/** The same area is the same object, so that what is found out of it can be kept by it. */
let areas = new Map<string, SheetArea>();

/** What a formula in a cell of that sheet refers to, the sheets there or not; without names. */
export function referencesOf(formula: string, home: string): readonly (SheetArea | WholeLines)[] {
  const here = known.get(home) ?? new Map<string, readonly (SheetArea | WholeLines)[]>();
  known.set(home, here);
  const before = here.get(formula);
  if (before) return before;
  const references = tokenize(formula)
    .filter(({ type }) => type.startsWith("range"))
    .flatMap(({ value }) => referenceOf(value, home) ?? []);
  if (here.size > 20_000) here.clear();
  here.set(formula, references);
  return references;
}

const isWhole = /^[$A-Z]+:[$A-Z]+$|^[$\d]+:[$\d]+$/i;

function referenceOf(reference: string, home: string): SheetArea | WholeLines | undefined {
  const { sheet = home, cells } = partsOf(reference);
  if (isWhole.test(cells)) return { sheet, cells };
  const area = areaWithin(cells, { rows: 0, columns: 0 });
  if (area === undefined) return undefined;
  const key = `${sheet}!${area.row},${area.column},${area.rows},${area.columns}`;
  const same = areas.get(key) ?? { ...area, sheet };
  if (areas.size > 100_000) areas = new Map();
  areas.set(key, same);
  return same;
}
