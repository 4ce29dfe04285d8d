import { paidWeight } from "../cautions";
import { defineFunction, exactly, type FunctionPage, measured, setting } from "../define";
import { choice, plainNumber } from "../quantities";
import { mommeDefinition, yardAndPound } from "../sources";
import { step } from "../working";
import { converted } from "./converted";

/** Milligrams in one unit: every factor is exact by definition, and the metric ones are whole numbers. */
export const milligramsIn = {
  mg: 1,
  g: 1e3,
  kg: 1e6,
  t: 1e9,
  oz: 28_349.523125,
  lb: 453_592.37,
  ozt: 31_103.4768,
  jin: 500e3,
  liang: 50e3,
  kan: 3.75e6,
  momme: 3.75e3,
} as const;

type WeightUnit = keyof typeof milligramsIn;

const catty =
  "a catty is 500 g on the mainland of China, 600 g in Taiwan and others elsewhere: type 市斤 for 500 g, 公斤 for 1 kg, or the one you mean in g";
const tael = "a tael is 50 g on the mainland of China, 37.5 g and others elsewhere: type the one you mean in g";
const ton = "a ton may be 1000 kg or an American or British one: type t for 1000 kg";

export const weightUnit = choice(
  "unit of weight",
  {
    mg: ["milligram", "milligrams", "毫克"],
    g: ["gram", "grams", "克"],
    kg: ["kilogram", "kilograms", "kilo", "kilos", "公斤", "千克"],
    t: ["tonne", "tonnes", "吨", "公吨"],
    oz: ["ounce", "ounces", "盎司"],
    lb: ["lbs", "pound", "pounds", "磅"],
    ozt: ["troy ounce", "troy ounces", "金衡盎司"],
    jin: ["斤", "市斤"],
    liang: ["两", "市两"],
    kan: ["贯", "貫"],
    momme: ["匁"],
  } satisfies Record<WeightUnit, readonly string[]>,
  { catty, catties: catty, tael, taels: tael, ton, tons: ton, 台斤: catty, 司马斤: catty, 台两: tael, 司马两: tael },
);

/** A weight in another unit. The result is in the unit named last. Source: definitions of the units. */
export const convertWeight = defineFunction({
  id: "CONVERTWEIGHT",
  group: "units",
  parameters: [measured("value", plainNumber), setting("from", weightUnit), setting("to", weightUnit)],
  result: { shape: "cell", quantity: plainNumber },
  calculate: (value, from, to): number => converted(value, milligramsIn[from], milligramsIn[to]),
});

export const convertWeightPage = {
  summary: "A weight in another unit: metric, pounds and ounces, jin and liang, kan and momme.",
  parameters: {
    value: "amount in the unit it has now",
    from: "unit it has now, such as g, kg, lb, jin (克, 公斤, 斤 and others are read too)",
    to: "unit it is wanted in",
  },
  formula: "value × (grams in one from) / (grams in one to)",
  working: (value: number, from: WeightUnit, to: WeightUnit) => [
    step(
      "by the grams in one of each unit",
      "value × from / to",
      { value, from: milligramsIn[from] / 1000, to: milligramsIn[to] / 1000 },
      convertWeight.calculate(value, from, to),
      plainNumber,
    ),
  ],
  guide: [
    "Use it where leaf is bought in one unit and tea is sold in another. All other functions take any unit, as long as it stays the same through the call, so convert before you mix.",
    "jin and liang are the market units of the mainland of China, 500 g and 50 g. In Taiwan 斤 is 600 g, and 斤 here is not that one: multiply by 600 and type g. 市斤 (500 g) and 公斤 (1 kg) are the same everywhere. “catty” and “tael” are refused: they are 500 g and 50 g in one place, and 600 g and 37.5 g or other weights in another. Find out which one is meant and type it in grams. “ton” is refused for the same reason; t is 1000 kg.",
    "oz is the ounce of the kitchen (28.35 g); ozt is the troy ounce of precious metals (31.10 g), a tenth heavier. kan and momme are 3.75 kg and 3.75 g.",
  ],
  sources: [
    { work: yardAndPound, place: "definition of the pound" },
    { work: mommeDefinition, place: "momme and kan" },
  ],
  cautions: [paidWeight],
  examples: [
    { given: [2.4, "kg", "jin"], gives: 4.8, shows: "2.4 kg are 4.8 jin" },
    { given: [3, "斤", "克"], gives: 1500, shows: "units may be typed in Chinese" },
  ],
  checks: [
    {
      status: "exact",
      exercises: "calculation",
      given: [1, "lb", "g"],
      expected: 453.59237,
      working: "the pound is 0.45359237 kg by definition",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [1, "oz", "g"],
      expected: 28.349523125,
      working: "a sixteenth of a pound: 453.59237 / 16 = 28.349523125",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [1, "ozt", "g"],
      expected: 31.1034768,
      working: "480 grains, 7000 of which are a pound: 453.59237 × 480 / 7000 = 31.1034768",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [16, "oz", "lb"],
      expected: 1,
      working: "16 ounces are a pound",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [1, "jin", "g"],
      expected: 500,
      working: "1 jin = 500 g",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [1, "liang", "g"],
      expected: 50,
      working: "1 liang = 50 g",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "input",
      given: [10, "两", "斤"],
      expected: 1,
      working: "10 liang = 500 g = 1 jin",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "input",
      given: [1.5, "T", " Kg "],
      expected: 1500,
      working: "1 t = 1000 kg; case and outer spaces do not matter",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "input",
      given: [2, "公斤", "毫克"],
      expected: 2e6,
      working: "1 kg = 1 000 000 mg",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "input",
      given: [7, "千克", "克"],
      expected: 7000,
      working: "1 kg = 1000 g",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "input",
      given: [250, "公斤", "吨"],
      expected: 0.25,
      working: "1 t = 1000 kg",
      ...exactly,
    },
    {
      status: "published",
      exercises: "calculation",
      given: [1, "kan", "kg"],
      expected: 3.75,
      source: { work: mommeDefinition, place: "1 momme = 1/1000 kan = 3.750 g" },
      tolerance: { absolute: 0.0005 },
      because: "published to three decimals",
    },
    {
      status: "published",
      exercises: "calculation",
      given: [1, "momme", "g"],
      expected: 3.75,
      source: { work: mommeDefinition, place: "1 momme = 1/1000 kan = 3.750 g" },
      tolerance: { absolute: 0.0005 },
      because: "published to three decimals",
    },
    {
      status: "exact",
      exercises: "edge",
      given: [0, "lb", "g"],
      expected: 0,
      working: "nothing is nothing in any unit",
      ...exactly,
    },
    {
      status: "exact",
      given: [null, "lb", "g"],
      expected: "",
      working: "not weighed yet",
      ...exactly,
    },
    {
      status: "exact",
      given: [2, "catty", "g"],
      expected: {
        error: "#VALUE!",
        message:
          'from must be one of "mg", "g", "kg", "t", "oz", "lb", "ozt", "jin", "liang", "kan", "momme"; got the text "catty" (a catty is 500 g on the mainland of China, 600 g in Taiwan and others elsewhere: type 市斤 for 500 g, 公斤 for 1 kg, or the one you mean in g)',
      },
      working: "two weights of one name",
      ...exactly,
    },
    {
      status: "exact",
      given: [2, "g", "Tael"],
      expected: {
        error: "#VALUE!",
        message:
          'to must be one of "mg", "g", "kg", "t", "oz", "lb", "ozt", "jin", "liang", "kan", "momme"; got the text "Tael" (a tael is 50 g on the mainland of China, 37.5 g and others elsewhere: type the one you mean in g)',
      },
      working: "two weights of one name",
      ...exactly,
    },
    {
      status: "exact",
      given: [-2, "g", "kg"],
      expected: { error: "#VALUE!", message: "value must be a number of 0 or more; got -2" },
      working: "−2 < 0",
      ...exactly,
    },
    {
      status: "exact",
      given: [2, null, "kg"],
      expected: {
        error: "#VALUE!",
        message:
          'from must be one of "mg", "g", "kg", "t", "oz", "lb", "ozt", "jin", "liang", "kan", "momme"; got a blank',
      },
      working: "a unit is never guessed",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;
