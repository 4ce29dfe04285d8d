import { type Answer, defineFunction, exactly, explained, type FunctionPage, measured } from "../define";
import { moisture, weight } from "../quantities";
import { gum, irriMoisture, quam } from "../sources";
import { step } from "../working";
import {
  aboutErrors,
  aboutLosses,
  aboutPower,
  finishedLimits,
  type LotDetails,
  lotDetails,
  lotDetailsExplained,
} from "./finished-limits";
import { limitsInLine, limitsSymbols, stepsToLimits } from "./limits-working";

/**
 * Between which finished weights a lot should come out: low, at no loss, high. Low is blank without highLoss.
 * Source: balance of dry matter; errors to first order as in the GUM.
 */
export const finishedBand = defineFunction({
  id: "FINISHEDBAND",
  group: "yields",
  parameters: [
    measured("freshWeight", weight),
    measured("freshMoisture", moisture),
    measured("finishedMoisture", moisture),
    ...lotDetails,
  ],
  result: {
    shape: "row",
    columns: [
      explained({ name: "low", quantity: weight }),
      explained({ name: "at no loss", quantity: weight }),
      explained({ name: "high", quantity: weight }),
    ],
  },
  calculate: (freshWeight, freshMoisture, finishedMoisture, ...details): Answer[] => {
    const { low, atNoLoss, high } = finishedLimits(freshWeight, freshMoisture, finishedMoisture, ...details);
    return [low ?? "", atNoLoss, high];
  },
});

export const finishedBandPage = {
  summary: "The finished weights that a lot can honestly come to: low, at no loss, high.",
  parameters: {
    freshWeight: "weight of the leaf as received",
    freshMoisture: "moisture of the fresh leaf, wet basis",
    finishedMoisture: "moisture of the finished tea, wet basis",
    ...lotDetailsExplained,
  },
  formula:
    "N = F(1 − Mf) − S(1 − Ms); P₀ = N / (1 − Mp); u_N² = ((1 − Mf)u_W)² + ((1 − Ms)u_S)² + (g u_Mf)², with u_S = u_W where leaf was removed, else 0, and g = F − S where Ms is left out, else F; r² = (u_N / N)² + (u_Mp / (1 − Mp))² + (u_W / P₀)²; high = P₀(1 − lowLoss)(1 + 2r); low = P₀(1 − highLoss)(1 − 2r)",
  working: (F: number, Mf: number, Mp: number, ...details: LotDetails) => [
    ...stepsToLimits(F, Mf, Mp, ...details),
    step(
      "low, at no loss and high, beside each other",
      limitsSymbols,
      limitsInLine(F, Mf, Mp, ...details),
      finishedBand.calculate(F, Mf, Mp, ...details),
    ),
  ],
  guide: [
    "Use it while the lot is on its way, to know between which weights it should come out. The middle number is the weight if no dry matter were lost; it is not the weight to expect, for which FINISHEDWEIGHT takes your usual loss. FINISHEDCHECK holds the weight in the book against the same limits.",
    "Weigh the sift-outs and samples and type them as removed, in the unit of the fresh weight. Type removedMoisture where they were weighed later and drier than the fresh leaf.",
    aboutLosses,
    aboutPower,
    aboutErrors,
    "The answer is three cells beside each other, and a spill cannot stand inside a worksheet table: there ask for one of them, =INDEX(TEA.FINISHEDBAND(A2, B2, C2, , , 0, 10%), 1) for low, 2 and 3 for the others. Without highLoss the first cell is empty text.",
    "Refused: removed leaf that holds as much dry matter as the fresh leaf or more, a highLoss below lowLoss, and a moisture error above 20 points. The band says what weights can be true. It says nothing about how good the tea is.",
  ],
  sources: [{ work: gum, place: "law of propagation of uncertainty, clause 5.1.2" }],
  cautions: [],
  examples: [
    {
      given: [950, 0.76, 0.05, null, null, 0, 0.1],
      gives: [[198, 240, 260]],
      shows: "950 g at 76 %, up to 10 % lost, one point of error in the fresh moisture",
    },
    {
      given: [950, 0.76, 0.05],
      gives: [["", 240, 260]],
      shows: "without highLoss there is no lower limit",
    },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      idle: ["lowLoss"],
      given: [1002.8, 0.0001, 0, null, null, 0, 0, Math.SQRT1_2 / 2, 0.000058, 0.0007],
      expected: [[1002.7 - 1.8, 1002.7, 1002.7 + 1.8]],
      source: {
        work: quam,
        place:
          "example A1, 1002.7 mg/L with u = 0.9: 1000·m·P/V with m 100.28 ± 0.05, P 0.9999 ± 0.000058, V 100 ± 0.07. Ten times m is taken for the leaf, 1 − P and the error of V for moistures; its one error of m is shared between two weighings, 0.5/√2 each. The limits stand two of u away",
      },
      tolerance: { absolute: 0.1 },
      because: "u is published to a tenth, and the band holds it twice",
    },
    {
      status: "published",
      exercises: "calculation",
      idle: ["lowLoss"],
      degenerate: "no loss and no error: a band of no width",
      given: [1000, 0.25, 0.14, null, null, 0, 0, 0, 0, 0],
      expected: [[872, 872, 872]],
      source: {
        work: irriMoisture,
        place: "worked example, 1000 kg from 25 % to 14 %, without loss or error; of a band the work says nothing",
      },
      tolerance: { absolute: 0.5 },
      because: "published to the whole kilogram",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [640, 0.77, 0.05, null, null, null, 0.1, null, 0, null],
      expected: [[132.48 / 0.95, 147.2 / 0.95, 147.2 / 0.95]],
      working: "640 × 0.23 = 147.2; / 0.95 = 154.9473684, the high end at no error; × 0.9 = 139.4526316, the low end",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [720, 0.77, 0.05, null, null, null, 0.1, null, 0, null],
      expected: [[149.04 / 0.95, 165.6 / 0.95, 165.6 / 0.95]],
      working: "720 × 0.23 = 165.6; / 0.95 = 174.3157895; × 0.9 = 156.8842105",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [720, 0.77, 0.05, 60, 0.75, null, 0.1, null, 0, null],
      expected: [[135.54 / 0.95, 150.6 / 0.95, 150.6 / 0.95]],
      working: "165.6 − 60 × 0.25 = 150.6; / 0.95 = 158.5263158; × 0.9 = 142.6736842",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [1000, 0.75, 0.04, 40, null, null, 0.1, null, 0.005],
      expected: [[216, 250, 260]],
      working:
        "removed at the moisture of the fresh leaf: N = 960 × 0.25 = 240; P₀ = 240 / 0.96 = 250; u_N = 960 × 0.005 = 4.8; r = 4.8 / 240 = 0.02; 250 × 1.04 = 260; 250 × 0.9 × 0.96 = 216",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [1000, 0.75, 0.04, 40, 0.75, null, 0.1, null, 0.005],
      expected: [[215.625, 250, 250 + 250 / 24]],
      working:
        "the same moisture typed for the removed leaf is a reading of its own: u_N = 1000 × 0.005 = 5; r = 5 / 240 = 1/48; 250 × (1 + 1/24) = 260.4166667; 250 × 0.9 × (1 − 1/24) = 215.625",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [1000, 0.75, 0.04, 50, 0.8, 0.02, 0.1, 2, 0.006, 0.0048],
      expected: [[212.91586137740882, 250, 258.1582842779326]],
      working:
        "N = 250 − 10 = 240; P₀ = 250; u_N² = (0.25 × 2)² + (0.2 × 2)² + (1000 × 0.006)² = 36.41; r² = 36.41/57600 + 0.005² + 0.008² = 0.000721118056, r = 0.0268536413835; 250 × 0.9 × (1 − 2r); 250 × 0.98 × (1 + 2r)",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "input",
      given: [[[640], [null]], 0.77, 0.05, null, null, null, null, null, 0],
      expected: [
        ["", 147.2 / 0.95, 147.2 / 0.95],
        ["", "", ""],
      ],
      working: "without highLoss low is blank; the second lot is not weighed yet",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [100, 0.98, 0, null, null, 0, 0],
      expected: [[0, 2, 4]],
      working: "100 × 0.02 = 2; r = 100 × 0.01 / 2 = 0.5; 2 × (1 − 1) = 0 and 2 × (1 + 1) = 4",
      tolerance: { absolute: 1e-12 },
      because: "0.98 is no exact double, and its rounding grows fifty times in 1 − 0.98",
    },
    {
      status: "exact",
      exercises: "edge",
      given: [100, 0.99, 0, null, null, 0, 0],
      expected: [[0, 1, 3]],
      working: "r = 100 × 0.01 / 1 = 1; 1 × (1 − 2) is below 0, and no tea weighs less than 0; 1 × (1 + 2) = 3",
      tolerance: { absolute: 1e-12 },
      because: "0.99 is no exact double, and its rounding grows a hundred times in 1 − 0.99",
    },
    {
      status: "exact",
      given: [500, 0.75, 0.05, 700, 0.8],
      expected: {
        error: "#VALUE!",
        message: "removed must be below 625, which holds all the dry matter of the fresh leaf; got 700",
      },
      working: "500 × 0.25 = 125 of dry matter; 125 / (1 − 0.8) = 625",
      ...exactly,
    },
    {
      status: "exact",
      given: [500, 0.75, 0.05, null, null, 0.05, 0.02],
      expected: { error: "#VALUE!", message: "highLoss must be at least 0.05, the lowLoss; got 0.02" },
      working: "0.02 < 0.05",
      ...exactly,
    },
    {
      status: "exact",
      given: [500, 0.75, 0.05, null, null, null, null, null, 0.5],
      expected: {
        error: "#VALUE!",
        message: "freshMoistureError must be from 0 to 0.2 (0.5 points is 0.005); got 0.5",
      },
      working: "0.5 is 50 points",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;
