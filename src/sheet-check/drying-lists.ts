import type { CellContent, ReadArea } from "../host/workbook-host";
import { areaWithin, partsOf } from "../workbook/references";
import type { Area } from "../workbook/workbook";
import { isTimeFormat } from "./formats";
import type { At } from "./headed-cells";
import type { KnownCell, TeaFormula } from "./known-cell";
import { grouped } from "./lots";
import { isWeight } from "./roles";

/** A list that nobody forecasts from is one of a drying only where so many weights fall without the one that is asked about. */
const fewestFalling = 5;

interface Sheet {
  readonly area: ReadArea;
  readonly cells: readonly KnownCell[];
  readonly formulas: readonly TeaFormula[];
  readonly valueAt: (at: At) => CellContent;
  readonly formatAt: (at: At) => string;
}

/** Weights of one charge as it dries, in the order of their times: what DRYINGTIME reads, and columns beside clock times. */
export function dryingLists(sheet: Sheet): KnownCell[][] {
  const forecast = forecastFrom(sheet);
  const timed = grouped(
    sheet.cells.filter(({ role, series }) => isWeight(role) && series !== undefined),
    ({ series }) => series ?? "",
  );
  const others = timed.filter((list) => !forecast.some((known) => known.includes(list[0] as KnownCell)));
  return [...forecast, ...others.filter((list) => isTimed(list, sheet) && fallsButOnce(list))];
}

/** The weights that the sheet's own forecasts read. */
function forecastFrom({ area, cells, formulas }: Sheet): KnownCell[][] {
  return formulas
    .flatMap(({ calls }) => calls)
    .flatMap(({ entry, given }) => {
      const weights = entry.spec.id === "DRYINGTIME" ? given[1] : undefined;
      if (weights?.is !== "reference") return [];
      const { sheet = area.sheet, cells: range } = partsOf(weights.address);
      const list = areaWithin(range, { rows: area.row + area.rows, columns: area.column + area.columns });
      return sheet === area.sheet && list ? [cells.filter((cell) => isWeight(cell.role) && isInside(cell, list))] : [];
    });
}

const isInside = ({ row, column }: At, of: Area): boolean =>
  row >= of.row && row < of.row + of.rows && column >= of.column && column < of.column + of.columns;

function isTimed(list: readonly KnownCell[], { valueAt, formatAt }: Sheet): boolean {
  const times = list.map(({ row, column }) => {
    const at = { row, column: column - 1 };
    const value = valueAt(at);
    return typeof value === "number" && isTimeFormat(formatAt(at)) ? value : undefined;
  });
  return times.every((time, index) => time !== undefined && (index === 0 || time > (times[index - 1] ?? Infinity)));
}

/** Whether all of the weights fall from one to the next when one of them is left out. */
function fallsButOnce(list: readonly KnownCell[]): boolean {
  const weights = list.flatMap(({ value }) => (typeof value === "number" ? [value] : []));
  if (weights.length <= fewestFalling) return false;
  return weights.some((_, left) =>
    weights
      .filter((_, place) => place !== left)
      .every((weight, index, rest) => index === 0 || weight < (rest[index - 1] as number)),
  );
}
