import type { Finding } from "../finding";
import type { KnownCell } from "../known-cell";
import type { KnownSheet } from "../known-sheet";
import { grouped } from "../lots";
import { isMoisture } from "../roles";
import { targetSlips } from "../target-slips";

/** No finished tea is as moist as this, nor as dry as that; no fresh leaf is as dry as the last. A slip of ten is. */
const moistestTea = 0.2;
const driestTea = 0.01;
const driestLeaf = 0.2;
/** So many others, alike within this factor, say what is usual in a column; a slip lies within these factors of it. */
const fewestOthers = 4;
const alikeWithin = 2;
const leastSlip = 5;
const largestSlip = 20;

type Moisture = KnownCell & { readonly value: number };

/** A moisture ten times what it can be, or a tenth: by its kind, by the others of its column, by the targets around it. */
export function moistureTenfold(sheet: KnownSheet): Finding[] {
  const isShare = (cell: KnownCell): cell is Moisture =>
    isMoisture(cell.role) && cell.typed && typeof cell.value === "number" && cell.value > 0 && cell.value < 1;
  const moistures = sheet.cells.filter(isShare);
  const columns = grouped(moistures, ({ column, heading, headingRow }) => `${column} ${headingRow} ${heading}`);
  const found = new Map<string, Finding>();
  const add = (cell: { row: number; column: number; value: number }, meant: number) => {
    const { row, column, value } = cell;
    const details = { value: percent(value), meant: percent(meant) };
    found.set(`${row} ${column}`, { rule: "a moisture ten times off", row, column, details });
  };
  for (const cell of moistures) {
    const meant = meantByKind(cell);
    if (meant !== undefined) add(cell, meant);
  }
  for (const column of columns) {
    for (const cell of column) {
      const meant = meantByOthers(cell, column);
      if (meant !== undefined) add(cell, meant);
    }
  }
  for (const { at, value, meant } of targetSlips(sheet)) add({ ...at, value }, meant);
  return [...found.values()];
}

function meantByKind({ role, value }: Moisture): number | undefined {
  if (role === "finished moisture") {
    if (value >= moistestTea) return value / 10;
    return value < driestTea ? value * 10 : undefined;
  }
  return role === "fresh moisture" && value < driestLeaf && value * 10 < 1 ? value * 10 : undefined;
}

function meantByOthers(cell: Moisture, column: readonly Moisture[]): number | undefined {
  if (column.length <= fewestOthers) return undefined;
  const others = column.filter((other) => other !== cell).map(({ value }) => value);
  const sorted = others.sort((one, other) => one - other);
  const [least, most] = [sorted[0] as number, sorted.at(-1) as number];
  if (most > alikeWithin * least) return undefined;
  const usual = sorted[Math.floor(sorted.length / 2)] as number;
  if (cell.value >= leastSlip * usual && cell.value <= largestSlip * usual) return cell.value / 10;
  const isLow = cell.value <= usual / leastSlip && cell.value >= usual / largestSlip;
  return isLow && cell.value * 10 < 1 ? cell.value * 10 : undefined;
}

const percent = (value: number): string => `${Number((value * 100).toPrecision(6))} %`;
