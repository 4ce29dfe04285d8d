import { bind } from "../cells/bind";
import { balanceFit } from "../core/balance/balance-fit";
import { steadyTime } from "./rows-of-cells";
import { column } from "./season-rows";

const call = bind(balanceFit);

/** A lot of many weighings, each a little off: the invented readings drift by a tenth of a percent and back. */
function lot(stages: number): unknown[] {
  const names: string[] = [];
  const weights: number[] = [];
  const moistures: number[] = [];
  for (let stage = 0; stage < stages; stage += 1) {
    const moisture = 0.77 - (0.7 * stage) / stages;
    const off = 1 + 0.001 * ((stage % 3) - 1);
    names.push(`stage ${stage + 1}`);
    moistures.push(moisture);
    weights.push((220 / (1 - moisture)) * off);
  }
  return [column(names), column(weights), column(moistures), 0.5, 0.01];
}

/** Milliseconds of one fit. */
export function growthOfFit(stages: readonly number[]): number[] {
  return stages.map((count) => {
    const given = lot(count);
    return (
      steadyTime(() => {
        for (let repeat = 0; repeat < 10; repeat += 1) call(...given);
      }) / 10
    );
  });
}
