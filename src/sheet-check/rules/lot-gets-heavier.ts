import type { Finding } from "../finding";
import { type KnownCell, weightOf } from "../known-cell";
import type { KnownSheet } from "../known-sheet";
import { inOneUnit } from "../units";

/** Leaf that is heavier after a stage than before it: aired above fresh, tea above aired, from stage to stage, and as a charge dries. */
export const lotGetsHeavier = ({ lots, aired, stages, dryings }: KnownSheet): Finding[] => [
  ...aired.flatMap(({ fresh, after }) => heavier(fresh, after)),
  ...lots.flatMap(({ aired: before, fresh, finished }) => {
    // More tea than fresh leaf is another finding.
    const isAboveFresh = heavier(fresh, finished).length > 0;
    return before === undefined || isAboveFresh ? [] : heavier(before, finished);
  }),
  ...stages.map((run) => run.map(({ weight }) => weight)).flatMap(rises),
  ...dryings.map((list) => list.filter(({ value }) => typeof value === "number")).flatMap(rises),
];

const rises = (weights: readonly KnownCell[]): Finding[] =>
  weights.slice(1).flatMap((weight, index) => heavier(weights[index] as KnownCell, weight));

function heavier(before: KnownCell, after: KnownCell): Finding[] {
  if (typeof before.value !== "number" || typeof after.value !== "number") return [];
  const [leaf, later] = inOneUnit(weightOf(before), weightOf(after));
  // What formulas work out has its slip elsewhere.
  if (leaf <= 0 || later <= leaf || !(before.typed || after.typed)) return [];
  const details = { before: withUnit(before), after: withUnit(after) };
  return [{ rule: "heavier after than before", row: after.row, column: after.column, details }];
}

const withUnit = ({ value, unit }: KnownCell): string => (unit === undefined ? String(value) : `${value} ${unit}`);
