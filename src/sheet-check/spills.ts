import { mayCallOurs } from "../core/describe";
import type { Entry } from "../core/entry";
import type { ReadArea, WorkbookHost } from "../host/workbook-host";
import { addressOf } from "../workbook/addresses";
import { areaWithin, partsOf } from "../workbook/references";
import type { Area } from "../workbook/workbook";
import { isErrorAnswer } from "../workbook/workbook";
import { formulaReading, type TeaCall } from "../working/formula-reading";

/** What a host is asked at the most, one formula after the other. */
const mostAsked = 30;

/**
 * The cells that the answers of the sheet's formulas fill, as far as the sheet alone shows them: a table of the
 * catalogue is as wide as its columns and ends above a row that is blank or holds a formula.
 */
export function spillsOn(area: ReadArea, catalogue: readonly Entry[]): Area[] {
  return formulasOf(area).flatMap(({ row, column, formula, value }) => {
    if (!mayCallOurs(formula) || isErrorAnswer(value) || !hasConstantBeside(area, row, column)) return [];
    const { calls, isCall } = formulaReading(formula, catalogue);
    const [call] = calls;
    if (call === undefined || !isCall) return [];
    const spill = extent(area, { row, column }, mostOf(call, area));
    return isLarge(spill) ? [spill] : [];
  });
}

/** The same, with what the host says where it knows more. */
export async function spillsKnownTo(
  host: WorkbookHost,
  area: ReadArea,
  catalogue: readonly Entry[],
): Promise<readonly Area[]> {
  const estimated = spillsOn(area, catalogue);
  const spills = new Map(estimated.map((spill) => [addressOf(spill.row, spill.column), spill]));
  const others = formulasOf(area).filter(
    ({ row, column, formula }) =>
      !spills.has(addressOf(row, column)) && maySpill(formula) && hasConstantBeside(area, row, column),
  );
  for (const { row, column } of [...estimated, ...others].slice(0, mostAsked)) {
    const address = addressOf(row, column);
    try {
      const spill = await host.read(`${address}#`, { sheet: area.sheet, row, column });
      if (spill.row === row && spill.column === column) spills.set(address, spill);
    } catch {
      // A host that knows no spill there leaves the estimate as it is.
    }
  }
  return [...spills.values()].filter(isLarge);
}

const isLarge = ({ rows, columns }: Area): boolean => rows > 1 || columns > 1;

function formulasOf({ formulas, values, row, column }: ReadArea) {
  return formulas.flatMap((line, down) =>
    line.flatMap((formula, right) =>
      formula === "" ? [] : [{ row: row + down, column: column + right, formula, value: values[down]?.[right] ?? "" }],
    ),
  );
}

/** A formula on a range gives one, unless it is a plain sum or the like. */
const maySpill = (formula: string): boolean =>
  /[:#[]|SEQUENCE\(|RANDARRAY\(/i.test(formula) &&
  !/^=(SUM|SUMIFS?|COUNT|COUNTA|COUNTIFS?|AVERAGE|MEDIAN|MIN|MAX)\([^()]*\)$/i.test(formula);

const hasConstantBeside = (area: ReadArea, row: number, column: number): boolean =>
  [
    [row + 1, column],
    [row, column + 1],
  ].some(([down = 0, right = 0]) => {
    const at = [down - area.row, right - area.column] as const;
    return (area.values[at[0]]?.[at[1]] ?? "") !== "" && area.formulas[at[0]]?.[at[1]] === "";
  });

/** The most rows and columns that a call can fill. */
function mostOf({ entry, given }: TeaCall, area: ReadArea): { rows: number; columns: number } {
  const { parameters, result } = entry.spec;
  const used = { rows: area.row + area.rows, columns: area.column + area.columns };
  const sizes = given.flatMap((argument, place) => {
    if (argument.is !== "reference" || parameters[place]?.takes === "list") return [];
    return areaWithin(partsOf(argument.address).cells, used) ?? [];
  });
  const rows = Math.max(1, ...sizes.map((size) => size.rows));
  if (result.shape === "cell") return { rows, columns: Math.max(1, ...sizes.map(({ columns }) => columns)) };
  if (result.shape === "row") return { rows, columns: result.columns.length };
  if (result.shape === "column") return { rows: Infinity, columns: 1 };
  const isOpen = result.columns.some(({ repeats }) => repeats);
  return { rows: Infinity, columns: isOpen ? Infinity : result.columns.length };
}

/** From a formula to the right and downwards, over what is filled and is no formula. */
function extent(area: ReadArea, at: { row: number; column: number }, most: { rows: number; columns: number }): Area {
  const [top, left] = [at.row - area.row, at.column - area.column];
  const isFree = (down: number, right: number) => area.formulas[top + down]?.[left + right] === "";
  const isFilled = (down: number, right: number) =>
    isFree(down, right) && (area.values[top + down]?.[left + right] ?? "") !== "";
  // Of a table of known width the first row may have blanks at its end.
  let columns = 1;
  const isWithin = most.columns === Infinity ? isFilled : isFree;
  while (columns < most.columns && isWithin(0, columns)) columns += 1;
  const across = Array.from({ length: columns }, (_, right) => right);
  let rows = 1;
  while (
    rows < most.rows &&
    across.every((right) => isFree(rows, right)) &&
    across.some((right) => isFilled(rows, right))
  ) {
    rows += 1;
  }
  return { ...at, rows, columns };
}
