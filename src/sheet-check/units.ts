import { convertWeight } from "../core/units/convert-weight";

export type WeightUnit = Parameters<typeof convertWeight.calculate>[1];

/** Units as headings and formats write them. A unit that differs from place to place is none. */
const words: readonly (readonly [WeightUnit | undefined, RegExp])[] = [
  [undefined, /台斤|司马斤|台两|司马两/],
  ["kg", /(?<![\p{L}\d])(kgs?|kilos?|kilograms?)(?!\p{L})|公斤|千克/iu],
  ["mg", /(?<![\p{L}\d])mg(?!\p{L})|毫克/iu],
  ["g", /(?<![\p{L}\d])(g|grams?)(?!\p{L})|克/iu],
  ["lb", /(?<![\p{L}\d])(lbs?|pounds?)(?!\p{L})|磅/iu],
  ["oz", /(?<![\p{L}\d])(oz|ounces?)(?!\p{L})|盎司/iu],
  ["liang", /(?<!\p{L})liang(?!\p{L})|两/iu],
  ["jin", /(?<!\p{L})jin(?!\p{L})|斤/iu],
];

/** The unit of weight that a text names first of all; undefined where it names none. */
export const unitIn = (text: string): WeightUnit | undefined => words.find(([, word]) => word.test(text))?.[0];

/** Whether a text is a unit and nothing else, such as the second line of a heading. */
export const isUnitAlone = (text: string): boolean => {
  const word = words.find(([, each]) => each.test(text));
  return word !== undefined && text.replace(word[1], "").replace(/[\s()（）[\],.]/g, "") === "";
};

/** The unit that a number format such as `0.0" g"` writes behind the number. */
export const unitInFormat = (format: string): WeightUnit | undefined => {
  const quoted = /"([^"]*)"[^"]*$/.exec(format)?.[1];
  return quoted === undefined ? undefined : unitIn(quoted);
};

export interface InUnit {
  readonly value: number;
  readonly unit: WeightUnit | undefined;
}

/** Both numbers in one unit, where both units are known and differ; otherwise as they stand. */
export function inOneUnit(one: InUnit, other: InUnit): readonly [number, number] {
  if (one.unit === undefined || other.unit === undefined || one.unit === other.unit) return [one.value, other.value];
  return [convertWeight.calculate(one.value, one.unit, other.unit), other.value];
}
