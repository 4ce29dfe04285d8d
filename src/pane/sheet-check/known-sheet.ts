import type { Entry } from "../../core/entry";
import { areaWithin, partsOf } from "../../workbook-files/references";
import type { CellContent, ReadArea } from "../host/workbook-host";
import { formulaReading, type TeaCall } from "../working/formula-reading";
import { type Role, roleOfHeading, roleOfParameter } from "./roles";

/** A cell of the sheet, by its row and column there. */
export interface At {
  readonly row: number;
  readonly column: number;
}

/** A cell that is known to hold something. */
export interface KnownCell extends At {
  readonly role: Role;
  readonly value: CellContent;
  /** Whether it was typed, and does not come from a formula. */
  readonly typed: boolean;
  /** What stands over its column, or at its left. */
  readonly heading: string | undefined;
  /** What the functions that read it take there; undefined where none reads it. */
  readonly fedAs: Role | undefined;
}

/** A formula with functions of the catalogue. */
export interface TeaFormula extends At {
  readonly calls: readonly TeaCall[];
  readonly value: CellContent;
  /** Cells of this sheet that it reads for itself, no whole ranges. */
  readonly reads: readonly (At & { readonly role: Role | undefined })[];
}

/** The fresh and finished weight of one lot, with its moistures where they are written down. */
export interface Lot {
  readonly fresh: KnownCell;
  readonly finished: KnownCell;
  readonly freshMoisture: KnownCell | undefined;
  readonly finishedMoisture: KnownCell | undefined;
}

/** What is known of a sheet before any rule looks at it. */
export interface KnownSheet {
  readonly area: ReadArea;
  readonly cells: readonly KnownCell[];
  readonly formulas: readonly TeaFormula[];
  readonly lots: readonly Lot[];
  /** Weighings below each other, in the order of the work: weight and moisture of each. */
  readonly stages: readonly (readonly { readonly weight: KnownCell; readonly moisture: KnownCell }[])[];
  readonly valueAt: (at: At) => CellContent;
  readonly formulaAt: (at: At) => string;
}

const widest = 16_384;
const keyOf = ({ row, column }: At): number => row * widest + column;

export function knownSheet(area: ReadArea, catalogue: readonly Entry[]): KnownSheet {
  const valueAt = ({ row, column }: At): CellContent => area.values[row - area.row]?.[column - area.column] ?? "";
  const formulaAt = ({ row, column }: At): string => area.formulas[row - area.row]?.[column - area.column] ?? "";
  const formulas = teaFormulas(area, catalogue);
  const fed = fedRoles(formulas);
  const known = new Map<number, KnownCell>();
  const headed = headedCells(area, valueAt, formulaAt);
  for (const cell of headed) {
    known.set(keyOf(cell), {
      ...cell,
      value: valueAt(cell),
      typed: formulaAt(cell) === "",
      fedAs: fed.get(keyOf(cell)),
    });
  }
  for (const [key, role] of fed) {
    const at = { row: Math.floor(key / widest), column: key % widest };
    if (!known.has(key)) {
      known.set(key, { ...at, role, value: valueAt(at), typed: formulaAt(at) === "", heading: undefined, fedAs: role });
    }
  }
  const cells = [...known.values()].sort((one, other) => keyOf(one) - keyOf(other));
  return { area, cells, formulas, lots: lotsOf(cells, formulas, known), stages: stagesOf(cells), valueAt, formulaAt };
}

function teaFormulas(area: ReadArea, catalogue: readonly Entry[]): TeaFormula[] {
  const found: TeaFormula[] = [];
  area.formulas.forEach((row, down) => {
    row.forEach((formula, right) => {
      if (!/TEA[._]/i.test(formula)) return;
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
    const found: (At & { role: Role | undefined })[] = [];
    for (let row = 0; row < Math.min(of.rows, 2000); row += 1) {
      for (let column = 0; column < Math.min(of.columns, 50); column += 1) {
        found.push({ row: of.row + row, column: of.column + column, role });
      }
    }
    return found;
  });
}

function fedRoles(formulas: readonly TeaFormula[]): Map<number, Role> {
  const fed = new Map<number, Role>();
  for (const { reads } of formulas) {
    for (const read of reads) {
      if (read.role !== undefined) fed.set(keyOf(read), read.role);
    }
  }
  return fed;
}

type Headed = At & { readonly role: Role; readonly heading: string };

/**
 * Cells below a heading that names their kind, down to the next heading in that column, and single cells at the right
 * of such a word.
 */
function headedCells(area: ReadArea, valueAt: KnownSheet["valueAt"], formulaAt: KnownSheet["formulaAt"]): Headed[] {
  const found = new Map<number, Headed>();
  const isHeadingRow = area.values.map((row) => row.filter(isWords).length >= 2 && !row.some(isNumber));
  for (let column = area.column; column < area.column + area.columns; column += 1) {
    let over: { role: Role | undefined; heading: string } | undefined;
    for (let row = area.row; row < area.row + area.rows; row += 1) {
      const at = { row, column };
      const value = valueAt(at);
      if (!isWords(value) || formulaAt(at) !== "") {
        if (over?.role !== undefined) found.set(keyOf(at), { ...at, role: over.role, heading: over.heading });
        continue;
      }
      const role = roleOfHeading(value);
      const right = { row, column: column + 1 };
      const isHeading = isHeadingRow[row - area.row] === true;
      if (!isHeading && role !== undefined && isNumber(valueAt(right))) {
        // A word with its number at the right is a label, and stands over nothing.
        found.set(keyOf(right), { ...right, role, heading: value });
      } else if (isHeading || (role !== undefined && isNumber(valueAt({ row: row + 1, column })))) {
        over = { role, heading: value };
      } else if (over !== undefined && (over.role === "stage" || over.role === "lot")) {
        found.set(keyOf(at), { ...at, role: over.role, heading: over.heading });
      }
    }
  }
  return [...found.values()];
}

const isNumber = (value: CellContent): value is number => typeof value === "number";

/** Text with letters: digits stored as text are no heading. */
const isWords = (value: CellContent): value is string => typeof value === "string" && /\p{L}/u.test(value);

/** Lots by the rows of a book, and by the functions that take both weights. */
function lotsOf(
  cells: readonly KnownCell[],
  formulas: readonly TeaFormula[],
  known: ReadonlyMap<number, KnownCell>,
): Lot[] {
  const lots = new Map<number, Lot>();
  const add = (group: readonly KnownCell[], roleOf: (cell: KnownCell) => Role | undefined) => {
    const of = (role: Role) => group.find((cell) => roleOf(cell) === role);
    const [fresh, finished] = [of("fresh weight"), of("finished weight")];
    if (fresh === undefined || finished === undefined || lots.has(keyOf(finished))) return;
    const moistures = { freshMoisture: of("fresh moisture"), finishedMoisture: of("finished moisture") };
    lots.set(keyOf(finished), { fresh, finished, ...moistures });
  };
  for (const row of byRow(cells)) add(row, ({ role }) => role);
  for (const { reads } of formulas) {
    const single = reads.flatMap((read) => known.get(keyOf(read)) ?? []);
    if (single.length <= 12) add(single, ({ fedAs }) => fedAs);
  }
  return [...lots.values()];
}

function byRow(cells: readonly KnownCell[]): KnownCell[][] {
  const rows = new Map<number, KnownCell[]>();
  for (const cell of cells) {
    const row = rows.get(cell.row);
    if (row === undefined) rows.set(cell.row, [cell]);
    else row.push(cell);
  }
  return [...rows.values()];
}

/** Rows with one weight and one moisture below a word for stages of one lot. */
function stagesOf(cells: readonly KnownCell[]): KnownSheet["stages"] {
  const runs: { weight: KnownCell; moisture: KnownCell }[][] = [];
  let last: { row: number; column: number } | undefined;
  for (const row of byRow(cells)) {
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
