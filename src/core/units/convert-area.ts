import { defineFunction, exactly, type FunctionPage, measured, setting } from "../define";
import { choice, plainNumber } from "../quantities";
import { hectareAndAcre, muOfLand, yardAndPound } from "../sources";
import { step } from "../working";
import { converted } from "./converted";

/** Fifteenths of a square metre in one unit: a mu is 10 000 of them, so that every factor is an exact decimal. */
export const fifteenthsOfSquareMetreIn = {
  m2: 15,
  a: 1500,
  ha: 150e3,
  km2: 15e6,
  acre: 60_702.846336,
  mu: 10e3,
} as const;

type AreaUnit = keyof typeof fifteenthsOfSquareMetreIn;

export const areaUnit = choice("unit of area", {
  m2: ["m²", "square metre", "square metres", "square meter", "square meters", "平方米"],
  a: ["are", "ares", "公亩"],
  ha: ["hectare", "hectares", "公顷"],
  km2: [
    "km²",
    "square kilometre",
    "square kilometres",
    "square kilometer",
    "square kilometers",
    "平方公里",
    "平方千米",
  ],
  acre: ["acres", "英亩"],
  mu: ["亩", "市亩"],
} satisfies Record<AreaUnit, readonly string[]>);

/** An area in another unit. The result is in the unit named last. Source: definitions of the units. */
export const convertArea = defineFunction({
  id: "CONVERTAREA",
  group: "units",
  parameters: [measured("value", plainNumber), setting("from", areaUnit), setting("to", areaUnit)],
  result: { shape: "cell", quantity: plainNumber },
  calculate: (value, from, to): number =>
    converted(value, fifteenthsOfSquareMetreIn[from], fifteenthsOfSquareMetreIn[to]),
});

const choices = '"m2", "a", "ha", "km2", "acre", "mu"';

export const convertAreaPage = {
  summary: "An area in another unit: square metres, ares, hectares, acres, mu.",
  parameters: {
    value: "amount in the unit it has now",
    from: "unit it has now, such as m2, ha, acre, mu (公顷, 亩 and others are read too)",
    to: "unit it is wanted in",
  },
  formula: "value × (square metres in one from) / (square metres in one to)",
  working: (value: number, from: AreaUnit, to: AreaUnit) => {
    const [one, other] = [fifteenthsOfSquareMetreIn[from] / 15, fifteenthsOfSquareMetreIn[to] / 15];
    return [
      step(
        "by the square metres in one of each unit",
        "value × from / to",
        { value, from: one, to: other },
        convertArea.calculate(value, from, to),
        plainNumber,
      ),
    ];
  },
  guide: [
    "Use it to compare gardens whose papers are in different units, and before you work out a yield for an area.",
    "acre is the international acre, 4046.8564224 m², built on the yard of 0.9144 m. Old American survey papers mean an acre that is larger by four millionths of it, which no garden notices, but a figure copied from a table may differ in the last digits.",
    "mu is the market unit of the mainland of China: 15 of them are a hectare, 666.67 m² each. A mu elsewhere is another area (about 761 m² in Hong Kong), and old deeds may mean a local one: type such an area in m2. 公亩 is the are, 100 m², and no mu.",
  ],
  sources: [{ work: yardAndPound, place: "definition of the yard" }],
  cautions: [],
  examples: [
    { given: [45, "mu", "ha"], gives: 3, shows: "45 mu are 3 hectares" },
    { given: [0.6, "公顷", "亩"], gives: 9, shows: "units may be typed in Chinese" },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [1, "mu", "m2"],
      expected: 666.67,
      source: { work: muOfLand, place: "mainland" },
      tolerance: { absolute: 0.005 },
      because: "published to two decimals",
    },
    {
      status: "published",
      exercises: "calculation",
      given: [1, "ha", "acre"],
      expected: 2.471054,
      source: { work: hectareAndAcre, place: "definition of the hectare" },
      tolerance: { absolute: 5e-7 },
      because: "published to six decimals",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [1, "acre", "m2"],
      expected: 4046.8564224,
      working: "4840 square yards of 0.9144 m: 4840 × 0.83612736 = 4046.8564224",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [1, "ha", "m2"],
      expected: 10000,
      working: "100 m × 100 m",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [15, "mu", "ha"],
      expected: 1,
      working: "15 mu = 1 ha",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "input",
      given: [1, "亩", "平方米"],
      expected: 10000 / 15,
      working: "10 000 / 15 = 666.6666667",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [2.5, "a", "m2"],
      expected: 250,
      working: "1 a = 100 m²",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "input",
      given: [0.3, "km2", "HA"],
      expected: 30,
      working: "1 km² = 100 ha",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [1, "acre", "mu"],
      expected: 6.0702846336,
      working: "4046.8564224 × 15 / 10 000 = 6.0702846336",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [0, "acre", "ha"],
      expected: 0,
      working: "nothing is nothing in any unit",
      ...exactly,
    },
    {
      status: "exact",
      given: [1, "acre", "rai"],
      expected: { error: "#VALUE!", message: `to must be one of ${choices}; got the text "rai"` },
      working: "a unit that is not in the list",
      ...exactly,
    },
    {
      status: "exact",
      given: [1, 5, "ha"],
      expected: { error: "#VALUE!", message: `from must be one of ${choices}; got 5` },
      working: "a number is no unit",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;
