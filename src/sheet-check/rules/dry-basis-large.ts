import type { Finding } from "../finding";
import type { KnownSheet } from "../known-sheet";

/** From here on a moisture on dry basis, 5 times as much water as dry matter, cannot be told from a percentage. */
const doubtful = 5;

/** A moisture on dry basis of 5 or more: wetter than leaf is picked, or a percentage without its sign. */
export const dryBasisLarge = ({ cells }: KnownSheet): Finding[] =>
  cells.flatMap(({ role, fedAs, typed, value, row, column }): Finding[] => {
    const isDry = role === "dry-basis moisture" && (fedAs === undefined || fedAs === role);
    if (!isDry || !typed || typeof value !== "number" || value < doubtful) return [];
    const details = { value: String(value), percent: `${Number((value * 100).toPrecision(6))} %` };
    return [{ rule: "a dry basis above 500 %", row, column, details }];
  });
