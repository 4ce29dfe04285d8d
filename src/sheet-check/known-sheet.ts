import { mayCallOurs } from "../core/describe";
import type { Entry } from "../core/entry";
import type { CellContent, ReadArea } from "../host/workbook-host";
import { areaWithin, partsOf } from "../workbook/references";
import { placeOfNumber } from "../workbook/sheet-size";
import type { Area } from "../workbook/workbook";
import { formulaReading, type TeaCall } from "../working/formula-reading";
import { dryingLists } from "./drying-lists";
import { type At, headedCells, keyOf } from "./headed-cells";
import type { KnownCell, TeaFormula } from "./known-cell";
import { type Airing, airingsOf, grouped, type Lot, lotsOf } from "./lots";
import { type Role, roleOfParameter } from "./roles";
import { unitInFormat } from "./units";

/** What is known of a sheet before any rule looks at it. */
export interface KnownSheet {
  readonly area: ReadArea;
  readonly cells: readonly KnownCell[];
  readonly formulas: readonly TeaFormula[];
  readonly lots: readonly Lot[];
  readonly aired: readonly Airing[];
  /** Weighings below each other, in the order of the work: weight and moisture of each. */
  readonly stages: readonly (readonly { readonly weight: KnownCell; readonly moisture: KnownCell }[])[];
  /** Weights of one charge, from time to time as it dries. */
  readonly dryings: readonly (readonly KnownCell[])[];
  readonly knownAt: (at: At) => KnownCell | undefined;
  readonly valueAt: (at: At) => CellContent;
  readonly formulaAt: (at: At) => string;
  /** Whether a cell is filled by the formula of another one. */
  readonly isSpilled: (at: At) => boolean;
}

export function knownSheet(area: ReadArea, catalogue: readonly Entry[], spills: readonly Area[]): KnownSheet {
  const valueAt = ({ row, column }: At): CellContent => area.values[row - area.row]?.[column - area.column] ?? "";
  const formulaAt = ({ row, column }: At): string => area.formulas[row - area.row]?.[column - area.column] ?? "";
  const formatAt = ({ row, column }: At): string => area.formats[row - area.row]?.[column - area.column] ?? "";
  const isSpilled = insideOf(spills, area);
  const formulas = teaFormulas(area, catalogue);
  const fed = fedRoles(formulas);
  const known = new Map<number, KnownCell>();
  const asFound = (at: At, heading?: string) => {
    const { role: fedAs } = fed.get(keyOf(at)) ?? {};
    const value = valueAt(at);
    const part = fedAs === undefined && saysPercent(heading, formatAt(at)) ? 0.01 : 1;
    const share = typeof value === "number" ? part * value : undefined;
    return { value, typed: formulaAt(at) === "", fedAs, share };
  };
  for (const cell of headedCells(area, isSpilled)) known.set(keyOf(cell), { ...cell, ...asFound(cell, cell.heading) });
  for (const [key, { role, series }] of fed) {
    const at = placeOfNumber(key);
    if (known.has(key) || isSpilled(at)) continue;
    const found = { ...at, ...asFound(at), role, unit: unitInFormat(formatAt(at)), series };
    known.set(key, { ...found, heading: undefined, headingRow: undefined });
  }
  const cells = [...known.values()].sort((one, other) => keyOf(one) - keyOf(other));
  const knownAt = (at: At) => known.get(keyOf(at));
  const lots = lotsOf(cells, formulas, knownAt);
  return {
    area,
    cells,
    formulas,
    lots,
    aired: airingsOf(cells),
    stages: stagesOf(cells),
    dryings: dryingLists({ area, cells, formulas, valueAt, formatAt }),
    knownAt,
    valueAt,
    formulaAt,
    isSpilled,
  };
}

/** Whether a number counts percent: its heading says so, and its format makes none of it. */
const saysPercent = (heading: string | undefined, format: string): boolean =>
  /%|\bper ?cent\b|百分/i.test(heading ?? "") && !format.includes("%");

/** Tells the cells inside the spills, without those that hold the formulas. A spill of the whole sheet is no larger than it. */
export function insideOf(spills: readonly Area[], area: ReadArea): (at: At) => boolean {
  const cells = new Set<number>();
  for (const { row: top, column: left, rows, columns } of spills) {
    for (let row = top; row < Math.min(top + rows, area.row + area.rows); row += 1) {
      for (let column = left; column < Math.min(left + columns, area.column + area.columns); column += 1) {
        if (row !== top || column !== left) cells.add(keyOf({ row, column }));
      }
    }
  }
  return (at) => cells.has(keyOf(at));
}

function teaFormulas(area: ReadArea, catalogue: readonly Entry[]): TeaFormula[] {
  const found: TeaFormula[] = [];
  area.formulas.forEach((row, down) => {
    row.forEach((formula, right) => {
      if (!mayCallOurs(formula)) return;
      const { calls } = formulaReading(formula, catalogue);
      if (calls.length === 0) return;
      const at = { row: area.row + down, column: area.column + right };
      const value = area.values[down]?.[right] ?? "";
      found.push({ ...at, calls, value, reads: calls.flatMap((call) => readsOf(call, area)) });
    });
  });
  return found;
}

/** The single cells of this sheet that a call reads, and those of the calls inside it. */
function readsOf(call: TeaCall, area: ReadArea): TeaFormula["reads"] {
  return call.given.flatMap((given, place) => {
    if (given.is === "call") return readsOf(given.call, area);
    if (given.is !== "reference") return [];
    const { sheet, cells } = partsOf(given.address);
    if (sheet !== undefined && sheet !== area.sheet) return [];
    const of = areaWithin(cells, { rows: area.row + area.rows, columns: area.column + area.columns });
    const parameter = call.entry.spec.parameters[place];
    if (of === undefined || parameter === undefined) return [];
    // A book of lots is read whole, and its columns are known by their headings.
    if (parameter.book !== undefined && of.rows > 1) return [];
    const role = roleOfParameter(parameter);
    const takesNumber = parameter.quantity.holds === "number";
    const series = parameter.takes === "list" && of.rows * of.columns > 1 ? `list ${given.address}` : undefined;
    const found: TeaFormula["reads"][number][] = [];
    for (let row = 0; row < Math.min(of.rows, 2000); row += 1) {
      for (let column = 0; column < Math.min(of.columns, 50); column += 1) {
        found.push({ row: of.row + row, column: of.column + column, role, series, takesNumber });
      }
    }
    return found;
  });
}

interface Fed {
  readonly role: Role;
  readonly series: string | undefined;
}

/** What the functions take each cell for: one that takes a list of cells knows them better than one that takes a single cell. */
function fedRoles(formulas: readonly TeaFormula[]): Map<number, Fed> {
  const fed = new Map<number, Fed>();
  for (const { reads } of formulas) {
    for (const { row, column, role, series } of reads) {
      const key = keyOf({ row, column });
      if (role === undefined || (series === undefined && fed.get(key)?.series !== undefined)) continue;
      fed.set(key, { role, series });
    }
  }
  return fed;
}

/** Rows with one weight and one moisture below a word for stages of one lot. */
function stagesOf(cells: readonly KnownCell[]): KnownSheet["stages"] {
  const runs: { weight: KnownCell; moisture: KnownCell }[][] = [];
  let last: { row: number; column: number } | undefined;
  for (const row of grouped(cells, ({ row }) => String(row))) {
    const stage = row.find(({ role }) => role === "stage");
    const weight = row.find(({ role }) => role === "weight");
    const moisture = row.find(({ role }) => role === "moisture");
    if (stage === undefined || weight === undefined || moisture === undefined) continue;
    const follows = last?.row === stage.row - 1 && last.column === stage.column;
    if (!follows) runs.push([]);
    runs.at(-1)?.push({ weight, moisture });
    last = stage;
  }
  return runs;
}
