import { isInHundredths, isInPercent, isTime, isWeight, type Quantity } from "../core/quantities";
import { shownTime } from "../core/shown";
import { convertWeight } from "../core/units/convert-weight";
import type { Messages } from "../words/messages";

export const weightUnits = ["g", "kg", "jin", "liang", "oz", "lb"] as const;
export type WeightUnit = (typeof weightUnits)[number];

type UnitWords = Pick<Messages, "units" | "unitWords">;

/** Decimals that show a farm's lot to about the gram, by unit. */
const decimals: Readonly<Record<WeightUnit, number>> = { g: 1, kg: 3, jin: 2, liang: 2, oz: 2, lb: 3 };

/** The number format of a quantity, for weights in this unit, with so many decimals at least. */
export function formatOf(quantity: Quantity, unit: WeightUnit, least = 0): string {
  if (quantity.holds !== "number") return "General";
  const usual = isWeight(quantity)
    ? `0.${"0".repeat(decimals[unit] + (quantity.kind === "weight error" ? 1 : 0))}`
    : quantity.format;
  const [, before, places, behind] = /^(0\.)(0+)(%?)$/.exec(usual) ?? [];
  return places === undefined ? usual : `${before}${"0".repeat(Math.max(places.length, least))}${behind}`;
}

/** More than this many decimals are noise. */
const mostDecimals = 9;

/** How many decimals a number needs to be shown as it is; a share as a percentage. */
export function decimalsOf(value: number, quantity: Quantity): number {
  const shown = Number((isInHundredths(quantity) ? value * 100 : value).toPrecision(12));
  const [, digits = "", exponent = "0"] = /^-?\d+(?:\.(\d+))?(?:e(-\d+))?$/.exec(String(shown)) ?? [];
  return Math.min(digits.length - Number(exponent), mostDecimals);
}

/** What stands behind the number; "" where nothing does. */
export function unitOf(quantity: Quantity, unit: WeightUnit, { units, unitWords }: UnitWords): string {
  if (isWeight(quantity)) return units[unit];
  if (isInPercent(quantity)) return "%";
  switch (quantity.kind) {
    case "moisture error":
      return unitWords.points;
    case "area":
      return unitWords.area;
    case "weight for area":
      return `${units[unit]} ${unitWords.perArea}`;
    case "time of day":
      return unitWords.clock;
    case "span":
      return unitWords.span;
    default:
      return "";
  }
}

/** A number as the sheet will show it, with its unit when `words` are given. */
export function shownNumber(
  value: number,
  quantity: Quantity,
  unit: WeightUnit,
  words?: UnitWords,
  least?: number,
): string {
  if (isTime(quantity)) return shownTime(value, quantity);
  const places = /\.(0+)/.exec(formatOf(quantity, unit, least))?.[1]?.length ?? 0;
  const number = fixed(isInHundredths(quantity) ? value * 100 : value, places);
  const behind = words === undefined ? "" : unitOf(quantity, unit, words);
  return behind === "" ? number : `${number} ${behind}`;
}

/** A number that someone typed, with all its decimals: it is theirs and not rounded. */
export function typedNumber(value: number, quantity: Quantity, unit: WeightUnit, words: UnitWords): string {
  if (isTime(quantity)) return shownTime(value, quantity);
  const number = String(Number((isInHundredths(quantity) ? value * 100 : value).toPrecision(10)));
  const behind = unitOf(quantity, unit, words);
  return behind === "" ? number : `${number} ${behind}`;
}

/** A number of grams to start with, in another unit. */
export function startingWeight(text: string, quantity: Quantity, unit: WeightUnit): string {
  if (unit === "g" || !isWeight(quantity) || text === "") return text;
  return String(Number(convertWeight.calculate(Number(text), "g", unit).toPrecision(3)));
}

/** Without a minus sign in front of nothing. */
function fixed(value: number, places: number): string {
  const text = value.toFixed(places);
  return Number(text) === 0 ? text.replace("-", "") : text;
}
