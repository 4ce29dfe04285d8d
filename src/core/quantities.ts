/**
 * The quantities that functions take and give. Each carries its kind, bounds, unit, wording and number format once; the
 * same quantity has the same name in every function.
 */

import { explained } from "./entry";
import type { Being, Hint } from "./refusals";

/** What a number must keep to. Absent bounds do not bind. */
export interface Bounds {
  readonly above?: number;
  readonly atLeast?: number;
  readonly below?: number;
  readonly atMost?: number;
  readonly whole?: boolean;
}

/** The words that a choice accepts: the canonical word, then what else is read as that word. */
export type Choices = Readonly<Record<string, readonly string[]>>;

/** What a value is. How it is typed, shown and converted follows from this, and never from its format or name. */
type Kind =
  | "weight"
  | "weight error"
  | "moisture"
  /** In points: 0.5 is half a point to everyone. */
  | "moisture error"
  | "dry-basis moisture"
  /** Typed and shown in percent, as moistures are. */
  | "share"
  | "time of day"
  | "span"
  | "area"
  | "weight for area"
  | "count"
  | "money"
  /** Without a unit, or with one that the function states. */
  | "number"
  | "yes or no"
  | "word"
  | "text";

export interface Quantity {
  readonly name: string;
  /** The functions script knows only that of a moisture, which UNCERTAINTY asks for; the rest is for what shows numbers. */
  readonly kind: Kind;
  readonly holds: "number" | "yesNo" | "choice" | "text";
  readonly bounds: Bounds;
  /** Completes "<argument> must be …". */
  readonly requirement: Being;
  /** What one unit of the number is, in plain words; empty for text. */
  readonly unit: string;
  /** The number format that a workbook sets beside the number. */
  readonly format: string;
  /** For a choice: its words. */
  readonly choices?: Choices;
  /** For a choice: words that look right and are refused, each with the reason. */
  readonly refusedChoices?: Readonly<Record<string, Hint>>;
}

const weighed: readonly Kind[] = ["weight", "weight error"];
/** Whether a number has a unit of weight. */
export const isWeight = ({ kind }: Quantity): boolean => weighed.includes(kind);

const shares: readonly Kind[] = ["moisture", "dry-basis moisture", "share"];
/** Whether a number is typed and shown in percent. */
export const isInPercent = ({ kind }: Quantity): boolean => shares.includes(kind);

/** Whether it is shown a hundred times as large: in percent or in points. */
export const isInHundredths = (quantity: Quantity): boolean =>
  isInPercent(quantity) || quantity.kind === "moisture error";

/** Whether it is shown in hours and minutes. */
export const isTime = ({ kind }: Quantity): boolean => kind === "time of day" || kind === "span";

/** The value of a quantity, as a calculation is given it. */
export type ValueOf<Of extends Quantity> = Quantity extends Of
  ? number | boolean | string
  : Of extends { readonly holds: "number" }
    ? number
    : Of extends { readonly holds: "yesNo" }
      ? boolean
      : Of extends { readonly choices: infer Words }
        ? keyof Words & string
        : string;

type NumberQuantity = Quantity & { readonly holds: "number" };

const number = (quantity: Omit<Quantity, "holds">): NumberQuantity => ({ holds: "number", ...quantity });

/** The same quantity inside narrower bounds. */
export const within = <Of extends Quantity>(quantity: Of, bounds: Bounds, requirement: Being): Of => ({
  ...quantity,
  bounds,
  requirement,
});

const anyWeightUnit = "grams, or any weight unit kept through the whole call";

export const weight = number({
  name: "weight",
  kind: explained("weight"),
  bounds: { above: 0 },
  requirement: "a weight above 0",
  unit: explained(anyWeightUnit),
  format: explained("0.0"),
});

export const looseWeight = number({
  name: "loose weight",
  kind: explained("weight"),
  bounds: { atLeast: 0 },
  requirement: "a weight of 0 or more",
  unit: explained(anyWeightUnit),
  format: explained("0.0"),
});

/** What an unaccounted weight is: it may be negative. A result only. */
export const weightDifference = number({
  name: "weight difference",
  kind: explained("weight"),
  bounds: {},
  requirement: "a number",
  unit: explained(anyWeightUnit),
  format: explained("0.0"),
});

export const moisture = number({
  name: "moisture",
  kind: "moisture",
  bounds: { atLeast: 0, below: 1 },
  requirement: "from 0 up to, not including, 1 (76% or 0.76)",
  unit: explained("share of the whole weight that is water (wet basis)"),
  format: explained("0.0%"),
});

/** The largest moisture that there is: leaf that is all water holds no tea. */
export const mostMoisture = 1 - 2 ** -53;

export const dryBasisMoisture = number({
  name: "dry-basis moisture",
  kind: explained("dry-basis moisture"),
  bounds: { atLeast: 0, atMost: 1e6 },
  requirement: "0 or more (300% or 3)",
  unit: explained("water as a share of the dry matter (dry basis)"),
  format: explained("0.0%"),
});

export const share = number({
  name: "share",
  kind: explained("share"),
  bounds: { atLeast: 0, atMost: 1 },
  requirement: "from 0 to 1 (5% or 0.05)",
  unit: explained("share of one"),
  format: explained("0.0%"),
});

/** A share of dry matter lost, where losing all of it leaves nothing to divide by. */
export const dryLoss = within(share, { atLeast: 0, below: 1 }, "from 0 up to, not including, 1 (5% or 0.05)");

/** How sure an answer should be: never quite, and more than not at all. */
export const confidence = within(share, { above: 0, below: 1 }, "above 0 and below 1 (95% or 0.95)");

export const loss = number({
  name: "loss",
  kind: explained("share"),
  bounds: { atLeast: 0, atMost: 1 },
  requirement: "from 0 to 1 (30% or 0.3)",
  unit: explained("share of one, of what lossOf names"),
  format: explained("0.0%"),
});

export const content = number({
  name: "content",
  kind: explained("share"),
  bounds: { atLeast: 0 },
  requirement: "0 or more",
  unit: explained("any, kept the same in the answer"),
  format: explained("0.00%"),
});

export const money = number({
  name: "money",
  kind: explained("money"),
  bounds: { atLeast: 0 },
  requirement: "an amount of 0 or more",
  unit: explained("any currency kept through the whole call"),
  format: explained("0.00"),
});

export const area = number({
  name: "area",
  kind: explained("area"),
  bounds: { above: 0 },
  requirement: "an area above 0",
  unit: explained("any area unit kept through the whole call"),
  format: explained("0.00"),
});

export const count = number({
  name: "count",
  kind: explained("count"),
  bounds: { atLeast: 1, whole: true },
  requirement: "a whole number of 1 or more",
  unit: explained("pieces"),
  format: explained("0"),
});

/** Tea from one unit of leaf. */
export const outturn = number({
  name: "outturn",
  kind: explained("share"),
  bounds: { above: 0, atMost: 1 },
  requirement: "above 0 and at most 1 (21% or 0.21)",
  unit: explained("tea from one unit of leaf, a share of one"),
  format: explained("0.0%"),
});

/** A plain ratio, such as kilograms fresh for each kilogram finished. */
export const ratio = number({
  name: "ratio",
  kind: explained("number"),
  bounds: { atLeast: 0 },
  requirement: "0 or more",
  unit: explained("none: one weight for each of another"),
  format: explained("0.00"),
});

/** How many there are; also none. A result only. */
export const tally = number({
  name: "tally",
  kind: explained("count"),
  bounds: { atLeast: 0, whole: true },
  requirement: "a whole number of 0 or more",
  unit: explained("pieces"),
  format: explained("0"),
});

/** How many there would be: not rounded. A result only. */
export const pieces = number({
  name: "number of pieces",
  kind: explained("count"),
  bounds: { atLeast: 0 },
  requirement: "0 or more",
  unit: explained("pieces, not rounded"),
  format: explained("0"),
});

export const piecesAnHour = number({
  name: "picking rate",
  kind: explained("number"),
  bounds: { above: 0 },
  requirement: "a number above 0",
  unit: explained("pieces an hour"),
  format: explained("0"),
});

export const weightForArea = number({
  name: "weight for each unit of area",
  kind: explained("weight for area"),
  bounds: { atLeast: 0 },
  requirement: "0 or more",
  unit: explained("one of the weight unit for each of the area unit"),
  format: explained("0.00"),
});

/** A modified z-score. A result only. */
export const zScore = number({
  name: "z-score",
  kind: explained("number"),
  bounds: {},
  requirement: "a number",
  unit: explained("none: usual distances from the usual"),
  format: explained("0.0"),
});

/** How many usual distances from the usual are too many. */
export const zLimit = number({
  name: "z-score limit",
  kind: explained("number"),
  bounds: { above: 0 },
  requirement: "a number above 0, such as 3.5",
  unit: explained("none: usual distances from the usual"),
  format: explained("0.0"),
});

export const weightError = number({
  name: "weight error",
  kind: explained("weight error"),
  bounds: { atLeast: 0 },
  requirement: "a standard uncertainty of 0 or more",
  unit: explained("one standard uncertainty, in the unit of its weight"),
  format: explained("0.00"),
});

/** Above 20 points the writer meant 0.5 points and typed 0.5: nobody weighs that badly. */
export const moistureError = number({
  name: "moisture error",
  kind: explained("moisture error"),
  bounds: { atLeast: 0, atMost: 0.2 },
  requirement: "from 0 to 0.2 (0.5 points is 0.005)",
  unit: explained("one standard uncertainty, as a share (one point is 0.01)"),
  format: explained("0.0%"),
});

export const outturnError = number({
  name: "outturn error",
  kind: explained("share"),
  bounds: { atLeast: 0, atMost: 0.2 },
  requirement: "from 0 to 0.2 (0.5 points is 0.005)",
  unit: explained("one standard uncertainty, as a share (one point is 0.01)"),
  format: explained("0.0%"),
});

/** One standard uncertainty of whatever stands beside it. */
export const standardError = number({
  name: "standard error",
  kind: explained("number"),
  bounds: { atLeast: 0 },
  requirement: "a standard uncertainty of 0 or more",
  unit: explained("one standard uncertainty, in the unit of its quantity"),
  format: explained("0.0000"),
});

/** A time of day, or a date with a time, as the spreadsheet counts: days since its first day. */
export const clock = number({
  name: "clock time",
  kind: explained("time of day"),
  bounds: { atLeast: 0 },
  requirement: "a time such as 14:30",
  unit: explained("spreadsheet time (1 is a day)"),
  format: explained("hh:mm"),
});

export const timeSpan = number({
  name: "time span",
  kind: explained("span"),
  bounds: { above: 0 },
  requirement: "a time span above 0, such as 0:30 for half an hour",
  unit: explained("spreadsheet time (1 is a day; 5:00 is five hours)"),
  format: explained("[h]:mm"),
});

/** How long something lasts, or how late it is; also not at all. */
export const looseSpan = number({
  name: "loose time span",
  kind: explained("span"),
  bounds: { atLeast: 0 },
  requirement: "0 or more",
  unit: explained("spreadsheet time (1 is a day; 5:00 is five hours)"),
  format: explained("[h]:mm"),
});

export const timeOfDay = number({
  name: "time of day",
  kind: explained("time of day"),
  bounds: { atLeast: 0, below: 1 },
  requirement: "a time of day, such as 12:45",
  unit: explained("spreadsheet time (1 is a day)"),
  format: explained("hh:mm"),
});

/** A bare number whose unit the function states: a score, an amount in a unit given by name. */
export const plainNumber = number({
  name: "number",
  kind: explained("number"),
  bounds: { atLeast: 0, atMost: 1e30 },
  requirement: "a number of 0 or more",
  unit: explained("as the function says"),
  format: explained("0.0000"),
});

/** A number that another function judges: its bounds are that function's. */
export const anyNumber = number({
  name: "any number",
  kind: explained("number"),
  bounds: {},
  requirement: "a number",
  unit: explained("as the function named says"),
  format: explained("0.0000"),
});

/** Weighted squares of adjustments, summed up. A result only. */
export const chiSquare = number({
  name: "chi-square",
  kind: explained("number"),
  bounds: { atLeast: 0 },
  requirement: "0 or more",
  unit: explained("none: squares of distances in errors"),
  format: explained("0.000"),
});

/** How far single readings of one thing lie from each other. A result only. */
export const scatterOf = number({
  name: "scatter of readings",
  kind: explained("number"),
  bounds: { atLeast: 0 },
  requirement: "0 or more",
  unit: explained("one standard deviation of a single reading, in the unit of the readings"),
  format: explained("0.0000"),
});

/** How near a mean should be known, either way. */
export const halfWidth = number({
  name: "half-width",
  kind: explained("number"),
  bounds: { above: 0 },
  requirement: "a number above 0",
  unit: explained("the unit of the readings"),
  format: explained("0.0000"),
});

export const yesNo: Quantity & { readonly holds: "yesNo" } = {
  name: "yes or no",
  kind: explained("yes or no"),
  holds: "yesNo",
  bounds: {},
  requirement: "TRUE or FALSE (1 or 0)",
  unit: explained(""),
  format: explained("General"),
};

export const text: Quantity & { readonly holds: "text" } = {
  name: "text",
  kind: explained("text"),
  holds: "text",
  bounds: {},
  requirement: "text",
  unit: explained(""),
  format: explained("General"),
};

/** A word out of a list. Case and outer spaces do not matter; aliases may be added, never removed. */
export function choice<Word extends string>(
  name: string,
  choices: Readonly<Record<Word, readonly string[]>>,
  refusedChoices: NonNullable<Quantity["refusedChoices"]> = {},
) {
  const requirement: Being = { kind: "word", words: Object.keys(choices) };
  const fixed = { holds: "choice", kind: "word", bounds: {}, unit: "", format: "General" } as const;
  return { ...fixed, name, requirement, choices, refusedChoices };
}
