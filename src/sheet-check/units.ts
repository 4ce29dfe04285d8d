import { convertWeight } from "../core/units/convert-weight";

/** Units of the regions, which the functions refuse as they differ from place to place; here a name says which. In grams. */
const regional = { 台斤: 600, 台两: 37.5, 司马斤: 604.79, 司马两: 37.8 } as const;

/** How much a 斤 or a 两 without a name of its own may weigh above the 500 g and 50 g that it is taken for. */
const heaviestCatty = 604.79 / 500;

type OfFunctions = Parameters<typeof convertWeight.calculate>[1];
export type WeightUnit = OfFunctions | keyof typeof regional;

/** Units as headings and formats write them. */
const words: readonly (readonly [WeightUnit, RegExp])[] = [
  ["台斤", /[台臺]斤/],
  ["台两", /[台臺][两兩]/],
  ["司马斤", /司[马馬]斤|(?<!\p{L})catt(y|ies)(?!\p{L})/iu],
  ["司马两", /司[马馬][两兩]|(?<!\p{L})taels?(?!\p{L})/iu],
  ["kg", /(?<![\p{L}\d])(kgs?|kilos?|kilograms?)(?!\p{L})|公斤|千克/iu],
  ["t", /(?<![\p{L}\d])tonnes?(?!\p{L})|吨/iu],
  ["mg", /(?<![\p{L}\d])mg(?!\p{L})|毫克/iu],
  ["g", /(?<![\p{L}\d])(g|grams?)(?!\p{L})|克/iu],
  ["lb", /(?<![\p{L}\d])(lbs?|pounds?)(?!\p{L})|磅/iu],
  ["oz", /(?<![\p{L}\d])(oz|ounces?)(?!\p{L})|盎司/iu],
  ["liang", /(?<!\p{L})liang(?!\p{L})|[两兩]/iu],
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
  return [(one.value * gramsIn(one.unit)) / gramsIn(other.unit), other.value];
}

/** The same, with as much leaf before as units that differ from place to place allow. */
export function withMostBefore(before: InUnit, after: InUnit): readonly [number, number] {
  const [leaf, tea] = inOneUnit(before, after);
  const isVague = [before.unit, after.unit].some((unit) => unit === "jin" || unit === "liang");
  return [isVague && before.unit !== after.unit ? leaf * heaviestCatty : leaf, tea];
}

export const gramsIn = (unit: WeightUnit): number =>
  unit in regional ? regional[unit as keyof typeof regional] : convertWeight.calculate(1, unit as OfFunctions, "g");
