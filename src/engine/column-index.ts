import { CELL_INVERTED_INDEX_CACHE as index } from "@univerjs/engine-formula";

let isShort = false;

/**
 * The engine keeps an index of the values in a column for the functions that look something up there, and puts each
 * result of a formula into it by asking every value before whether it stood in that row: ten thousand formulas take a
 * hundred times as long as one thousand. Rows of which no index has been made yet are looked up in their cells, so that
 * what they hold need not be in it. One index serves all workbooks of the process.
 */
export function keepColumnIndexShort(): void {
  if (isShort) return;
  isShort = true;
  const set = index.set.bind(index);
  index.set = (unit, sheet, column, value, row, isNew = false) => {
    if (isNew && index.shouldContinueBuildingCache(unit, sheet, column, row)) return;
    set(unit, sheet, column, value, row, isNew);
  };
}
