import type { Finding } from "../finding";
import type { KnownCell } from "../known-cell";
import type { KnownSheet } from "../known-sheet";
import { grouped } from "../lots";
import { isMoisture } from "../roles";
import { percent } from "../shown";
import { slipInFall, targetSlips } from "../target-slips";

/** No finished tea is as moist as this, nor as dry as that; no fresh leaf is as dry as the last. A slip of ten is. */
const moistestTea = 0.2;
const driestTea = 0.01;
const driestLeaf = 0.2;
/** So many others, alike within this factor, say what is usual in a column; a slip lies within these factors of it. */
const fewestOthers = 4;
const alikeWithin = 2;
const leastSlip = 5;
const largestSlip = 20;

type Moisture = KnownCell & { readonly share: number };

/** A moisture ten times what it can be, or a tenth: by its kind, by the others of its column, by the targets around it. */
export function moistureTenfold(sheet: KnownSheet): Finding[] {
  const isShare = (cell: KnownCell): cell is Moisture =>
    isMoisture(cell.role) && cell.typed && cell.share !== undefined && cell.share > 0 && cell.share < 1;
  const moistures = sheet.cells.filter(isShare);
  // From stage to stage moistures fall, and none of them is usual.
  const stages = new Set(sheet.stages.flat().map(({ moisture }) => moisture));
  const series = grouped(
    moistures.filter((cell) => cell.series !== undefined && !stages.has(cell)),
    (cell) => cell.series ?? "",
  );
  const found = new Map<string, Finding>();
  const add = (cell: { row: number; column: number; share: number }, meant: number) => {
    const { row, column, share } = cell;
    const details = { value: percent(share), meant: percent(meant) };
    found.set(`${row} ${column}`, { rule: "a moisture ten times off", row, column, details });
  };
  for (const cell of moistures) {
    const meant = meantByKind(cell);
    if (meant !== undefined) add(cell, meant);
  }
  for (const cells of series) {
    const sorted = cells.toSorted((one, other) => one.share - other.share);
    // Where all the others are alike, the odd one is the least of them or the largest.
    for (const [cell, others] of [
      [sorted[0], sorted.slice(1)],
      [sorted.at(-1), sorted.slice(0, -1)],
    ] as const) {
      const meant = cell && meantByOthers(cell, others);
      if (cell && meant !== undefined) add(cell, meant);
    }
  }
  for (const stages of sheet.stages) {
    const run = stages.filter(({ moisture }) => isShare(moisture));
    const slip = slipInFall(run.map(({ moisture }) => moisture.share ?? 0));
    const cell = slip && run[slip.place]?.moisture;
    if (cell?.typed) add({ ...cell, share: cell.share ?? 0 }, slip?.meant ?? 0);
  }
  for (const { at, value, meant } of targetSlips(sheet)) add({ ...at, share: value }, meant);
  return [...found.values()];
}

function meantByKind({ role, share }: Moisture): number | undefined {
  if (role === "finished moisture") {
    if (share >= moistestTea) return share / 10;
    return share < driestTea ? share * 10 : undefined;
  }
  return role === "fresh moisture" && share < driestLeaf && share * 10 < 1 ? share * 10 : undefined;
}

function meantByOthers(cell: Moisture, sorted: readonly Moisture[]): number | undefined {
  if (sorted.length < fewestOthers) return undefined;
  const [least, most] = [sorted[0]?.share ?? 0, sorted.at(-1)?.share ?? 0];
  if (most > alikeWithin * least) return undefined;
  const usual = sorted[Math.floor(sorted.length / 2)]?.share ?? 0;
  if (cell.share >= leastSlip * usual && cell.share <= largestSlip * usual) return cell.share / 10;
  const isLow = cell.share <= usual / leastSlip && cell.share >= usual / largestSlip;
  return isLow && cell.share * 10 < 1 ? cell.share * 10 : undefined;
}
