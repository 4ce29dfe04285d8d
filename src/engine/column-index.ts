import { ArrayValueObject, type BaseValueObject, CELL_INVERTED_INDEX_CACHE as index } from "@univerjs/engine-formula";

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
  askOnlyWhatItKnows();
}

/** The part of the engine that compares a column with one value. */
interface Comparing {
  _batchOperatorValue(
    value: BaseValueObject,
    column: number,
    result: unknown,
    kind: number,
    operator: string,
    ...rest: unknown[]
  ): void;
}

/**
 * To the index a 0, a text of no letters and a blank are the same, so that `=IF(A1="","",A1)` lost a 0 once anything else
 * had been compared with that column. It is asked for values alone that are none of these; all else is compared cell by
 * cell, which takes no longer: the index goes through every row as well but where values are looked for.
 */
function askOnlyWhatItKnows(): void {
  let isAsked = true;
  const canUseCache = index.canUseCache.bind(index);
  index.canUseCache = (...place) => (isAsked ? canUseCache(...place) : { rowsInCache: [], rowsNotInCache: [] });
  const comparing = ArrayValueObject.prototype as unknown as Comparing;
  const compare = comparing._batchOperatorValue;
  comparing._batchOperatorValue = function (value, column, result, kind, operator, ...rest) {
    isAsked = operator === "=" && !isNothing(value);
    try {
      compare.call(this, value, column, result, kind, operator, ...rest);
    } finally {
      isAsked = true;
    }
  };
}

const isNothing = (value: BaseValueObject): boolean =>
  value.isNull() || value.getValue() === "" || value.getValue() === 0;
