import { BaseReferenceObject } from "@univerjs/engine-formula";

let areKept = false;

/**
 * The engine takes a text of no letters that a formula came to for a blank cell, but only within the calculation that
 * made it: `=IF(TRUE,F12,1)` was "" or blank, and a sum of weights a number or "", by what else was worked out at the
 * same time. Its test for blanks lets a cell with a formula pass; results that were just made have none, so they get one.
 */
export function keepEmptyTexts(): void {
  if (areKept) return;
  areKept = true;
  const cells = BaseReferenceObject.prototype;
  const getCellData = cells.getCellData;
  cells.getCellData = function (this: BaseReferenceObject, row: number, column: number) {
    const cell = getCellData.call(this, row, column);
    return cell?.v === "" && cell.f === undefined && cell.t !== undefined ? { ...cell, f: "=" } : cell;
  };
}
