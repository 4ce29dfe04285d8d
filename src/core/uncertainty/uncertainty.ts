import { isInside } from "../bounds";
import {
  type Answer,
  defineFunction,
  exactly,
  type FunctionPage,
  type FunctionSpec,
  headers,
  measuredList,
  type Parameter,
  setting,
  settingList,
} from "../define";
import { must, mustBe } from "../errors";
import { namespace } from "../namespace";
import { Phrase } from "../phrases";
import { anyNumber, moisture, moistureError, share, standardError, text } from "../quantities";
import { gum, nistTn1297, quam } from "../sources";
import { step, sumOf, workingNumber } from "../working";
import { combinedError } from "./combined-error";
import { slope } from "./slope";

type SmoothFunction = (...values: number[]) => number;

/** A value with its error. */
interface Input {
  readonly parameter: Parameter;
  readonly value: number;
  readonly error: number;
}

/**
 * How errors of the inputs carry through to a result: u² = Σ(cᵢuᵢ)², cᵢ the slope of the result along input i, inputs
 * independent. `functions` gives the catalogue when a call comes, since the catalogue holds this function too.
 * Source: GUM (JCGM 100:2008), the law of propagation of uncertainty.
 */
export const uncertaintyOf = (functions: () => readonly FunctionSpec[]) =>
  defineFunction({
    id: "UNCERTAINTY",
    group: "uncertainty",
    parameters: [
      setting("functionName", text),
      { ...measuredList("values", anyNumber), gaps: true },
      { ...settingList("valueErrors", standardError), gaps: true },
      headers,
    ],
    result: {
      shape: "table",
      columns: [
        { name: "input", quantity: text },
        { name: "value", quantity: anyNumber },
        { name: "error", quantity: standardError },
        { name: "share of variance", quantity: share },
      ],
    },
    calculate: (
      functionName: string,
      values: readonly (number | null)[],
      valueErrors: readonly (number | null)[],
    ): Answer | Answer[][] => {
      const spec = smoothFunction(functions(), functionName);
      const inputs = inputsOf(spec, values, valueErrors);
      if (inputs === "waits") return "";
      const calculate = spec.calculate as SmoothFunction;
      const given = inputs.map(({ value }) => value);
      const result = calculate(...given);
      const parts = inputs.map(({ parameter, value, error }, place) => {
        if (error === 0) return 0;
        const along = (x: number): number => calculate(...given.slice(0, place), x, ...given.slice(place + 1));
        const steepness = slope(along, value, error, parameter.quantity.bounds);
        if (steepness === undefined) {
          throw must("values", { do: { kind: "room to change", argument: parameter.name } }, { kind: "value", value });
        }
        return Math.abs(steepness) * error;
      });
      const total = combinedError(parts);
      const shareOf = (part: number): number => (total === 0 ? 0 : (part / total) ** 2);
      const rows = inputs.flatMap(({ parameter, value, error }, place): Answer[][] =>
        value === undefined ? [] : [[parameter.name, value, error, shareOf(parts[place] as number)]],
      );
      return [[new Phrase("result"), result, total, total === 0 ? 0 : 1], ...rows];
    },
  });

function smoothFunction(functions: readonly FunctionSpec[], functionName: string): FunctionSpec {
  const name = functionName.trim().toUpperCase();
  const id = name.startsWith(`${namespace}.`) ? name.slice(namespace.length + 1) : name;
  const found = functions.find((spec) => spec.id === id);
  if (found?.smooth === true) return found;
  const ids = functions.flatMap((spec) => (spec.smooth === true ? [spec.id] : []));
  throw mustBe("functionName", { kind: "smooth", ids }, functionName);
}

/** The values as the function's own arguments, judged by its own bounds; "waits" while a reading is missing. */
function inputsOf(
  { id, parameters }: FunctionSpec,
  values: readonly (number | null)[],
  valueErrors: readonly (number | null)[],
): Input[] | "waits" {
  for (const [name, list] of Object.entries({ values, valueErrors })) {
    const length = list.reduce<number>((last, value, place) => (value === null ? last : place + 1), 0);
    if (length > parameters.length) {
      throw mustBe(name, { kind: "few arguments", most: parameters.length, id }, length);
    }
  }
  let waits = false;
  const inputs = parameters.map((parameter, place): Input => {
    const given = reading(parameter, values[place] ?? null);
    const value = given ?? (parameter.fallback as number | undefined);
    const error = valueErrors[place] ?? 0;
    refuseError(parameter, given, valueErrors[place] ?? null);
    // What may be left out and has no fallback is for the function to know.
    if (value === undefined && !parameter.optional) {
      if (parameter.blank === "is refused") {
        throw mustBe(parameter.name, parameter.quantity.requirement, null);
      }
      waits = true;
    }
    if (given !== null && !isInside(given, parameter.quantity.bounds)) {
      throw mustBe(parameter.name, parameter.quantity.requirement, given);
    }
    return { parameter, value: value as number, error };
  });
  return waits ? "waits" : inputs;
}

/** Older hosts send 0 for a blank cell: where 0 can be no reading, it is one. */
const reading = ({ quantity }: Parameter, value: number | null): number | null =>
  value === 0 && !isInside(0, quantity.bounds) ? null : value;

function refuseError({ name, quantity }: Parameter, given: number | null, error: number | null): void {
  if (given !== null && error === null) {
    throw must(
      "valueErrors",
      { be: "filled beside each value (0 for an exact one)" },
      { kind: "blank error", argument: name },
    );
  }
  if (quantity === moisture && !isInside(error ?? 0, moistureError.bounds)) {
    throw mustBe("valueErrors", { kind: "error of", being: moistureError.requirement, name }, error);
  }
}

const headings = ["input", "value", "error", "share of variance"];

/** The page of the function; its working asks the function itself, which knows the catalogue. */
export const uncertaintyPage = ({ calculate }: ReturnType<typeof uncertaintyOf>) =>
  ({
    summary: "How sure the result of another function is, and which input to measure better.",
    parameters: {
      functionName: 'the function to look at, such as "FINISHEDWEIGHT"; TEA. may stand before it',
      values: "its arguments in their order, a row or a column; a blank leaves an optional one out",
      valueErrors: "the standard uncertainty of each, in the same unit; 0 for an exact one",
    },
    formula: "u² = Σ(cᵢ × uᵢ)², with cᵢ the slope of the result along input i; share of variance = (cᵢ × uᵢ)² / u²",
    working: (functionName: string, values: readonly (number | null)[], errors: readonly (number | null)[]) => {
      const rows = calculate(functionName, values, errors);
      if (!Array.isArray(rows)) return [step("a reading is still to come", "—", "—", rows, text)];
      const [[, result, total], ...inputs] = rows as [[string, number, number], ...[string, number, number, number][]];
      const parts = inputs.map(([, , , part]) => Math.sqrt(part) * total);
      return [
        step(
          "the result of the function with these values",
          "f(values)",
          `f(${inputs.map(([, x]) => workingNumber(x)).join(", ")})`,
          result,
          anyNumber,
        ),
        step(
          "its error: what each input adds, squared and added up",
          "√(Σ(c × u)²)",
          `√(${sumOf(parts.map((part) => `${workingNumber(part)}²`))})`,
          total,
          standardError,
        ),
        step("what each input has of it", "(c × u)² / u²", "each input’s part of the whole", rows),
      ];
    },
    guide: [
      "Use it before you trust a decimal. You give the function, the numbers that you put into it and how good each of them is; the first row answers with the result and its own standard uncertainty. With simulated readings, 67 to 70 of 100 results lie within one such error of the truth, 95 to 96 within two.",
      "The last column says where the doubt comes from: the shares add up to 1, and the largest one is the reading that is worth measuring better. For finished weight it was the moisture of the fresh leaf in 100 of 100 kitchens where that is read to half a point or one, and in 97 where it is read more finely: a better scale changes next to nothing.",
      "An error is one standard uncertainty. SCALEERROR gives it for a weight. One point of moisture is 0.01; above 0.2 it is refused, because 0.5 points are 0.005.",
      "Inputs count as independent of each other. Two weights from one scale that is off by the same share are not: for their ratio the true error is smaller than the one shown.",
      "It works for every function that takes single numbers and gives one smooth number. Counts, tables, lists and texts have no slope and are refused, with the names of the functions that can be used. Errors so large that the function bends within them need more than this rule.",
      "A value is judged by the bounds of the function that is named, and the message names its argument there. While a reading is still blank the answer waits. A blank optional argument counts as its default; it may have an error of its own.",
      'The answer spills. For the one number in a worksheet table, ask for INDEX(TEA.UNCERTAINTY("FINISHEDWEIGHT", B2:B5, C2:C5, FALSE), 1, 3).',
    ],
    sources: [
      { work: gum, place: "law of propagation of uncertainty, independent inputs" },
      { work: nistTn1297, place: "the root of the sum of squares" },
      { work: quam, place: "example A1" },
    ],
    cautions: [],
    examples: [
      {
        given: ["DRYMATTER", [[500], [0.6]], [[3], [0.008]], false],
        gives: [
          ["result", 200, Math.sqrt(17.44), 1],
          ["weight", 500, 3, 1.44 / 17.44],
          ["moisture", 0.6, 0.008, 16 / 17.44],
        ],
        shows: "500 g ± 3 g at 60 % ± 0.8 points: 200 g of dry matter ± 4.2 g, nearly all of it from the moisture",
      },
      {
        given: ["tea.outturn", [[500, 100]], [[1, 0]], false],
        gives: [
          ["result", 0.2, 0.0004, 1],
          ["freshWeight", 500, 1, 1],
          ["finishedWeight", 100, 0, 0],
        ],
        shows: "in a row, with TEA. before the name: an outturn of 20 % ± 0.04 points",
      },
    ],
    checks: [
      {
        status: "published",
        exercises: "calculation",
        given: ["LEAFCOST", [[999.9], [100.28], [100]], [[0.058], [0.05], [0.07]], false],
        expected: [
          ["result", 1002.7, 0.9, 1],
          ["leafPrice", 999.9, 0.058, 0.0],
          ["freshWeight", 100.28, 0.05, 0.34],
          ["finishedWeight", 100, 0.07, 0.66],
          ["otherCost", 0, 0, 0],
        ],
        source: {
          work: quam,
          place: "example A1: c = 1000·m·P/V, 1002.7 mg/L with u = 0.9; 1000·P taken as the price",
        },
        tolerance: { absolute: 0.05 },
        because: "published to one decimal; the shares follow from its table of errors",
      },
      {
        status: "exact",
        exercises: "calculation",
        given: ["LEAFCOST", [[999.9], [100.28], [100]], [[0.058], [0.05], [0.07]]],
        expected: [
          headings,
          ["result", 1002.69972, 0.863702590150637, 1],
          ["leafPrice", 999.9, 0.058, 0.00453477969843762],
          ["freshWeight", 100.28, 0.05, 0.335061633486934],
          ["finishedWeight", 100, 0.07, 0.660403586814628],
          ["otherCost", 0, 0, 0],
        ],
        working:
          "c = 999.9 × 100.28 / 100 = 1002.69972; relative errors 0.058/999.9, 0.05/100.28, 0.07/100; u = c × √(5.80058e-5² + 4.98604e-4² + 7e-4²) = 0.8637025902",
        tolerance: { relative: 1e-9 },
        because: "slopes are taken from five points",
      },
      {
        status: "exact",
        exercises: "calculation",
        given: ["FINISHEDWEIGHT", [[640], [0.77], [0.05], [0.05]], [[0.5], [0.01], [0.003], [0.02]]],
        expected: [
          headings,
          ["result", 147.2, 7.12690521720819, 1],
          ["freshWeight", 640, 0.5, 0.000260371661626605],
          ["freshMoisture", 0.77, 0.01, 0.806413857105916],
          ["finishedMoisture", 0.05, 0.003, 0.0042541123254086],
          ["dryLoss", 0.05, 0.02, 0.189071658907049],
        ],
        working:
          "P = 640 × 0.23 × 0.95 / 0.95 = 147.2; parts: 0.5 × 0.23 = 0.115, 0.01 × 640 = 6.4, 0.003 × 147.2/0.95 = 0.4648421053, 0.02 × 147.2/0.95 = 3.0989473684; the root of the sum of their squares",
        tolerance: { relative: 1e-9 },
        because: "slopes are taken from five points",
      },
      {
        status: "common practice",
        exercises: "calculation",
        given: ["FINISHEDWEIGHT", [[710], [0.76], [0.05], [0.05]], [[0.5], [0.01], [0.003], [0.02]], false],
        expected: [
          ["result", 170.4, 7.973905533839981, 1],
          ["freshWeight", 710, 0.5, 0.000226475027],
          ["freshMoisture", 0.76, 0.01, 0.79281986768],
          ["finishedMoisture", 0.05, 0.003, 0.004553992459],
          ["dryLoss", 0.05, 0.02, 0.202399664835],
        ],
        fact: "a sifted lot may weigh 710 g; the errors are assumed, and the answer is arithmetic on them",
        tolerance: { relative: 3e-9 },
        because: "shares were written down to twelve decimals",
      },
      {
        status: "exact",
        given: ["DRYMATTER", [[500], [60]], [[3], [0.01]]],
        expected: {
          error: "#VALUE!",
          message: "moisture must be from 0 up to, not including, 1 (76% or 0.76); got 60",
        },
        working: "60 is 6000 %; the message names the argument of DRYMATTER",
        ...exactly,
      },
      {
        status: "exact",
        given: ["DRYMATTER", [[500], [0.6]], [[3], [0.5]]],
        expected: {
          error: "#VALUE!",
          message: "valueErrors must be from 0 to 0.2 (0.5 points is 0.005) for moisture; got 0.5",
        },
        working: "0.5 is an error of 50 points",
        ...exactly,
      },
      {
        status: "exact",
        exercises: "calculation",
        given: ["OVENMOISTURE", [[500.5], [500.02], [500]], [[0.01], [0.01], [0.01]], false],
        expected: [
          ["result", 0.96, 0.01 * Math.sqrt(7.6928), 1],
          ["weightBefore", 500.5, 0.01, 0.0064 / 7.6928],
          ["weightAfter", 500.02, 0.01, 4 / 7.6928],
          ["dishWeight", 500, 0.01, 3.6864 / 7.6928],
        ],
        working:
          "half a gram in a dish of 500 g: slopes 0.02/0.25 = 0.08, −1/0.5 = −2 and 0.48/0.25 = 1.92, whose squares add up to 7.6928",
        tolerance: { relative: 1e-7 },
        because: "differences of weights a thousand times larger lose digits of doubles",
      },
      {
        status: "exact",
        given: ["DRYMATTER", [[500], [null]], [[3], [0.01]]],
        expected: "",
        working: "the moisture is still to be measured",
        ...exactly,
      },
    ],
  }) as const satisfies FunctionPage;
