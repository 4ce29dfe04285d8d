import { typedNumbers } from "../cells/typed-number";
import { secondsInDay } from "../core/days";
import type { Parameter } from "../core/define";
import { isInPercent, isTime, isWeight, type Quantity } from "../core/quantities";
import type { Hint } from "../core/refusals";
import { convertWeight, weightUnit } from "../core/units/convert-weight";
import type { Messages, Says } from "../words/messages";
import { type Reading, typedTime } from "./read-time";
import { shownNumber, type WeightUnit } from "./shown-number";

/** What a form takes a text for. */
export type Understood =
  | { readonly is: "blank" }
  | { readonly is: "value"; readonly value: number | string }
  /** `readings`: what it may mean, to choose from. */
  | { readonly is: "problem"; readonly says: Says; readonly readings?: readonly Reading[] };

type FieldKind = "choice" | "text" | "percent" | "points" | "time" | "number";

/** How a quantity is typed. Errors of moistures are typed in points, since 0.5 is half a point to everyone. */
export function kindOf(quantity: Quantity): FieldKind {
  if (quantity.holds === "choice") return "choice";
  if (quantity.holds !== "number") return "text";
  if (quantity.kind === "moisture error") return "points";
  if (isInPercent(quantity)) return "percent";
  return isTime(quantity) ? "time" : "number";
}

/**
 * Reads what was typed. A cell never guesses; a form does, by rules that it shows the outcome of: a percentage may be
 * written 76, 76 % or 0.76, where a bare number below 1 is a share and any other a percentage; a weight may come with
 * its unit. What can be read in more than one way is asked about.
 */
export function understood(text: string, { quantity, optional, blank }: Parameter, unit: WeightUnit): Understood {
  const typed = text.normalize("NFKC").trim();
  if (typed === "") return optional || blank === "waits" ? { is: "blank" } : problem((m) => m.problems.needed);
  const kind = kindOf(quantity);
  if (kind === "text" || kind === "choice") return { is: "value", value: typed };
  const value =
    kind === "time" ? timeOf(typed, quantity) : numberOf(typed, kind, isWeight(quantity) ? unit : undefined);
  if (typeof value !== "number") return value;
  const broken = brokenBounds(value, quantity);
  if (!broken) return { is: "value", value };
  return problem((m) => m.problems.must(boundsInWords(quantity, unit, m)));
}

const problem = (says: Says, readings: readonly Reading[] = []): Understood => ({
  is: "problem",
  says,
  ...(readings.length > 0 && { readings }),
});

/** What is asked where a text may mean several things. */
const asks = (typed: string, readings: readonly Reading[]): Understood =>
  problem((m) => m.problems.whichOne(typed), readings);

function numberOf(typed: string, kind: "percent" | "points" | "number", unit?: WeightUnit): number | Understood {
  const [, digits = "", behind = ""] = /^([^\p{L}%]*?)\s*(%|\p{L}[\p{L} ]*)?$/u.exec(typed) ?? [];
  const [plain, ...others] = typedNumbers(digits);
  if (plain === undefined) return problem((m) => m.problems.notNumber(typed));
  const from = unit && behind !== "" ? unitNamed(behind) : undefined;
  if (from !== undefined && "refused" in from) return problem((m) => m.problems.unitInDoubt(behind, from.refused));
  if (behind !== "" && from === undefined && (behind !== "%" || kind === "number")) {
    return problem((m) => m.problems.notNumber(typed));
  }
  if (others.length > 0) {
    return asks(
      typed,
      [plain, ...others].map((number) => {
        const becomes = behind === "" ? number : `${number} ${behind}`;
        return { becomes, says: () => becomes };
      }),
    );
  }
  const number = Number(plain);
  if (from !== undefined && unit !== undefined) {
    return Number(convertWeight.calculate(number, from.unit, unit).toPrecision(15));
  }
  if (kind === "number") return number;
  const isShare = kind === "percent" && behind === "" && Math.abs(number) < 1;
  // 5.8 % as it is written, 0.058: divided by 100 it would be 0.057999999999999996.
  return isShare ? number : Number(`${plain}e-2`);
}

type NamedUnit = Parameters<typeof convertWeight.calculate>[1];

/** A unit of weight by any of its names; or why a name says too little. */
function unitNamed(name: string): { readonly unit: NamedUnit } | { readonly refused: Hint } | undefined {
  const wanted = name.toLowerCase();
  const refused = weightUnit.refusedChoices?.[wanted];
  if (refused !== undefined) return { refused };
  const found = Object.entries(weightUnit.choices ?? {}).find(([unit, names]) => [unit, ...names].includes(wanted));
  return found && { unit: found[0] as NamedUnit };
}

/** Hours and minutes as the share of a day. More than a day is written as hours. */
function timeOf(typed: string, { kind }: Quantity): number | Understood {
  const time = typedTime(typed, kind === "time of day");
  if ("seconds" in time) return time.seconds / secondsInDay;
  return time.readings.length > 0 ? asks(typed, time.readings) : problem((m) => m.problems.notTime(typed));
}

function brokenBounds(value: number, { bounds: { above, atLeast, below, atMost, whole } }: Quantity): boolean {
  return (
    (above !== undefined && value <= above) ||
    (atLeast !== undefined && value < atLeast) ||
    (below !== undefined && value >= below) ||
    (atMost !== undefined && value > atMost) ||
    (whole === true && !Number.isInteger(value))
  );
}

function boundsInWords(quantity: Quantity, unit: WeightUnit, { problems, units, unitWords }: Messages): string[] {
  const { above, atLeast, below, atMost, whole } = quantity.bounds;
  const shown = (bound: number) => shownNumber(bound, quantity, unit, { units, unitWords });
  return [
    ...(whole ? [problems.whole] : []),
    ...(above === undefined ? [] : [problems.above(shown(above))]),
    ...(atLeast === undefined ? [] : [problems.atLeast(shown(atLeast))]),
    ...(below === undefined ? [] : [problems.below(shown(below))]),
    ...(atMost === undefined ? [] : [problems.atMost(shown(atMost))]),
  ];
}
