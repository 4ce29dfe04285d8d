import { leastAmount } from "../bounds";
import {
  type Answer,
  defineFunction,
  exactly,
  explained,
  type FunctionPage,
  headers,
  measuredList,
  optional,
  optionalList,
  settingList,
} from "../define";
import { DomainError, must, mustBe, noAnswer } from "../errors";
import { chiSquareTail } from "../numeric/chi-square";
import { Phrase } from "../phrases";
import {
  chiSquare,
  confidence,
  dryLoss,
  looseWeight,
  moisture,
  moistureError,
  plainNumber,
  share,
  tally,
  text,
  weight,
  weightError,
} from "../quantities";
import { brittLuecke, knepperGorman, narasimhanJordache, weightedMean } from "../sources";
import { percent, step, sumOf, workingNumber } from "../working";
import { stagesOf } from "./stage";
import { type FittedStage, type StageFit, stageFit, type UncertainStage } from "./stage-fit";
import { misfit, verdict } from "./verdict";

/** No lot is weighed so often. The work grows with the square of the rows: here it still takes a blink. */
const mostStages = 500;

/**
 * The weights and moistures nearest to those read, each weighed by its error, that balance in dry matter; and whether
 * the errors explain the differences. Errors are one standard uncertainty. The arithmetic is in stage-fit.ts.
 */
export const balanceFit = defineFunction({
  id: "BALANCEFIT",
  group: "balance",
  parameters: [
    settingList("stages", text),
    measuredList("weights", weight),
    { ...measuredList("moistures", moisture), gaps: true },
    { ...settingList("weightErrors", weightError), oneForAll: true },
    { ...settingList("moistureErrors", moistureError), oneForAll: true },
    optionalList("removed", looseWeight, { gaps: true }),
    optionalList("removedMoistures", moisture, { gaps: true }),
    optionalList("dryLosses", dryLoss, { gaps: true, oneForAll: true, fallback: 0 }),
    optional("confidence", confidence, 0.95),
    headers,
  ],
  result: {
    shape: "table",
    columns: [
      { name: "stage", quantity: text },
      { name: "weight", quantity: weight },
      { name: "fitted weight", quantity: weight },
      { name: "moisture", quantity: moisture },
      { name: "fitted moisture", quantity: moisture },
      { name: "z", quantity: plainNumber },
    ],
    lastRow: explained({
      is: "verdict",
      columns: [
        { name: "verdict", quantity: text },
        { name: "chi-square", quantity: chiSquare },
        { name: "degrees of freedom", quantity: tally },
        { name: "probability", quantity: plainNumber },
      ],
    }),
    picture: explained({ shows: "stages", name: "stage", weight: "fitted weight", moisture: "fitted moisture" }),
  },
  calculate: (
    names,
    weights,
    moistures,
    weightErrors,
    moistureErrors,
    removed,
    removedMoistures,
    dryLosses,
    confidence,
  ): Answer | Answer[][] => {
    if (weights.length > mostStages) {
      throw mustBe("weights", { kind: "few stages", most: mostStages }, weights.length);
    }
    const stages = stagesOf(names, weights, moistures, removed, removedMoistures).map(
      (stage, row): UncertainStage => ({
        ...stage,
        weightError: withoutSpecks(weightErrors[row] as number),
        moistureError: withoutSpecks(moistureErrors[row] as number),
        dryLoss: dryLosses[row] as number,
      }),
    );
    // Without any moisture there is nothing to balance yet.
    if (stages.every(({ moisture }) => moisture === null)) return "";
    refuseUnlike(stages);
    const fit = fitOf(stages);
    const tail = chiSquareTail(fit.gamma, fit.degreesOfFreedom);
    const rows = stages.map((stage, row): Answer[] => {
      const fitted = fit.stages[row] as FittedStage;
      return [
        stage.name,
        stage.weight,
        fitted.weight,
        stage.moisture ?? "",
        fittedMoisture(stage, fitted),
        fitted.score ?? "",
      ];
    });
    return [
      ...rows,
      [new Phrase(verdict(stages, fit, tail, confidence)), fit.gamma, fit.degreesOfFreedom, tail, "", ""],
    ];
  },
});

/** Where no fit settles, the row that does not belong is to blame, if there is one. */
function fitOf(stages: readonly UncertainStage[]): StageFit {
  try {
    return stageFit(stages);
  } catch (problem) {
    throw isUnsettled(problem) ? (misfit(stages) ?? problem) : problem;
  }
}

/** Rows that are said to be exact and contradict each other are no matter of the fit. */
const isUnsettled = (problem: unknown): boolean =>
  problem instanceof DomainError &&
  !(typeof problem.refusal.found === "object" && problem.refusal.found.kind === "unbalanced");

/** An error too small to calculate with is none. */
const withoutSpecks = (error: number): number => (error < leastAmount ? 0 : error);

/** Beside an error this many times smaller, a row's own dry matter is lost among the digits of doubles. */
const mostUnlike = 1e5;

/** The errors of the rows, in dry matter, have to be near enough to each other to be weighed against each other. */
function refuseUnlike(stages: readonly UncertainStage[]): void {
  const errors = stages.flatMap((stage) => {
    const { weight, moisture, weightError, moistureError, removed, removedMoisture } = stage;
    if (moisture === null) return [];
    const whole = weight + (removedMoisture === null ? removed : 0);
    const error = Math.hypot((1 - moisture) * weightError, whole * moistureError);
    return error === 0 ? [] : [{ stage, error }];
  });
  const bySize = errors.sort((one, other) => one.error - other.error);
  const [least, most] = [bySize[0], bySize[bySize.length - 1]];
  if (least === undefined || most === undefined || most.error <= mostUnlike * least.error) return;
  throw must(
    "weightErrors",
    { be: { kind: "within times", times: mostUnlike } },
    { kind: "unlike", one: errorOf(least), other: errorOf(most) },
    { hint: "0 makes a reading exact" },
  );
}

const errorOf = ({ stage, error }: { readonly stage: UncertainStage; readonly error: number }) => ({
  stage: stage.name,
  error,
});

/** A moisture solved from the rest may be none: then the cell says so, and the other rows keep their answer. */
function fittedMoisture(stage: UncertainStage, { moisture }: FittedStage): Answer {
  if (moisture >= 0 && moisture < 1) return moisture;
  const left = stage.weight * (1 - moisture);
  const be = { kind: "above dry matter left", stage: stage.name, weight: left } as const;
  return noAnswer("weights", { be }, { kind: "value", value: stage.weight });
}

/** What a reading adds to the sum of squares, written out; an exact one adds nothing. */
const move = (read: Answer | undefined, fitted: Answer | undefined, error: number): readonly string[] =>
  withoutSpecks(error) === 0 || typeof read !== "number" || typeof fitted !== "number"
    ? []
    : [`(${workingNumber(fitted - read)} / ${workingNumber(error)})²`];

const headings = ["stage", "weight", "fitted weight", "moisture", "fitted moisture", "z"];
const stages = [["fresh"], ["withered"], ["fired"], ["finished"]];
const moistures = [[0.765], [0.725], [0.575], [0.045]];
const weightErrors = [[0.5], [0.5], [0.5], [0.2]];
const moistureErrors = [[0.01], [0.01], [0.015], [0.003]];

const solvedOutside =
  "the conditions of the least sum of squares (no slope left along the balances, and every balance closed) solved by Newton's method at 40 digits in a separate program, without the iteration used here";

const asPrinted = { tolerance: { relative: 1e-9 }, because: "ten digits were written down" } as const;

export const balanceFitPage = {
  summary: "A lot's weights and moistures fitted so that they balance, and which row to suspect.",
  parameters: {
    stages: "what each weighing is called, in the order of the work",
    weights: "weight on the scale when the stage closed",
    moistures: "moisture of the leaf at that weighing, wet basis; blank where none was measured",
    weightErrors: "standard uncertainty of each weight, or one for all; 0 for an exact weight",
    moistureErrors: "standard uncertainty of each moisture, or one for all (one point is 0.01); 0 for an exact one",
    removed: "leaf weight taken out just before that weighing, taken as exact; blank or 0 in the first row",
    removedMoistures: "moisture of the leaf taken out, taken as exact; left out, it is the fitted moisture of its row",
    dryLosses: "share of the dry matter lost since the row before, taken as exact, or one for all; left out, 0",
    confidence: "how sure the test should be before it speaks up",
  },
  formula:
    "minimise γ = Σ(fitted − read)² / error², where (1 − ℓ)·W₁(1 − M₁) = W₂(1 − M₂) + r(1 − m) from each row to the next; z = |fitted − read| / its standard deviation; p = probability that χ² with as many degrees of freedom as balances passes γ",
  working: (...given: Parameters<typeof balanceFit.calculate>) => {
    const [names, weights, moistures, weightErrors, moistureErrors] = given;
    const rows = balanceFit.calculate(...given);
    if (!Array.isArray(rows)) return [step("without a moisture there is nothing to balance yet", "—", "—", rows, text)];
    const dry = names.flatMap((_, row) => {
      const moisture = moistures[row] ?? null;
      const weight = weights[row] as number;
      return moisture === null
        ? []
        : [`${workingNumber(weight)} × (1 − ${percent(moisture)}) = ${workingNumber(weight * (1 - moisture))}`];
    });
    const moves = names.flatMap((_, row) => {
      const [, weight, fittedWeight, moisture, fittedMoisture] = rows[row] as readonly Answer[];
      if (moisture === "") return [];
      return [
        ...move(weight, fittedWeight, weightErrors[row] as number),
        ...move(moisture, fittedMoisture, moistureErrors[row] as number),
      ];
    });
    const [, γ, degrees, p] = rows[rows.length - 1] as [string, number, number, number];
    return [
      step("dry matter as it was read, row by row", "W × (1 − M)", dry.join("; "), "", text),
      step(
        "how far the fit had to move, in units of the errors",
        "Σ((fitted − read) / error)²",
        moves.length === 0 ? "0" : sumOf(moves),
        γ,
        plainNumber,
      ),
      step(
        "how often honest readings would differ by as much or more",
        "P(χ² ≥ γ; ν)",
        `P(χ² ≥ ${workingNumber(γ)}; ${degrees})`,
        p,
        share,
      ),
      step(
        "the fit, and its verdict in the last row",
        "W₁(1 − M₁)(1 − ℓ) = W₂(1 − M₂) + r(1 − m)",
        "each row against the next",
        rows,
      ),
    ];
  },
  guide: [
    "Use it when STAGEBALANCE shows dry matter that comes or goes and you ask whether that is only the scale and the moisture guess, or a wrong reading. You say how good each reading is; the answer is the lot's most likely book, with every balance closed.",
    'Read the last row first. "agrees" means that the errors you stated explain the differences: use the fitted weights and moistures. p is the probability that honest readings would differ by as much or more. Below 1 − confidence the readings do not balance, and the row to suspect is named when one stands out.',
    "z says how far a row had to move, in units of what it should move. A weight and a moisture of the same row move together: the balance sees only their dry matter, so it can name the row, never which of the two readings is wrong. It gives both cures: the weight that would fit if the moisture is right, and the moisture that would fit if the weight is right, worked out from the other rows alone. Look at the scale's note and at the leaf, and decide.",
    "Measured with simulated lots: of four honest rows 5 of 100 lots are said not to balance; a weight 20 % too high has its row named in 92 to 100 of 100 lots, by the place of the row, one 5 % too high in 8 to 62 of 100. What counts is the mistake against the errors that you state; docs/how-sure.md has more of them.",
    "Two rows alone always move alike, so with two rows no answer can tell which is wrong. A third weighing with a moisture is what tells them apart.",
    "An error is one standard uncertainty: SCALEERROR gives it for a scale. For a moisture taken from a table or guessed by hand, one to three points is honest. An error of 0 says that a reading is exact: it does not move, and its z is blank when both readings of the row are exact. Two exact rows that contradict each other have no fit, and the answer is #N/A. Refused: errors more than 100000 times apart in dry matter; type 0 for a reading that is as good as exact beside the others.",
    "A blank moisture is worked out: the row takes no part in the fit, its weight stays as read, and its fitted moisture follows from the rows around it.",
    "Where leaf was taken out at the row's own moisture, the z of its weight and of its moisture differ a little, and the larger one is shown.",
    "When a fit would need a moisture below 0 or of 1 and more, or does not settle, the answer is #N/A. It names the row that does not belong, the one without which the others fit best, with the weight that would fit: look for kilograms among grams or a slipped decimal. With two rows, or when two readings are wrong, there may be no such row. A lot has at most 500 rows; only in one of at most 50 is such a row looked for.",
    "The last row holds, from the left: the verdict, γ, the degrees of freedom, and p. The answer spills; inside a worksheet table ask for one cell: INDEX(TEA.BALANCEFIT(A2:A5, B2:B5, C2:C5, 0.5, 0.01, , , , , FALSE), 5, 1) is the verdict on a lot of four weighings.",
  ],
  sources: [
    { work: brittLuecke, place: "the iteration, without parameters" },
    { work: knepperGorman, place: "the iteration, for balances" },
    { work: narasimhanJordache, place: "the linear case, its global test and its test of single adjustments" },
  ],
  cautions: [],
  examples: [
    {
      given: [
        [["first scale"], ["second scale"], ["third scale"]],
        [[100], [101], [102]],
        [[0], [0], [0]],
        1,
        0,
        null,
        null,
        null,
        null,
        false,
      ],
      gives: [
        ["first scale", 100, 101, 0, 0, 1.5 ** 0.5],
        ["second scale", 101, 101, 0, 0, 0],
        ["third scale", 102, 101, 0, 0, 1.5 ** 0.5],
        ["agrees", 2, 2, /* @__PURE__ */ Math.exp(-1), "", ""],
      ],
      shows: "the same dry tea on three scales, each good to 1 g: the fit is their mean, and they agree",
    },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [
        [["a"], ["b"], ["c"]],
        [[44], [48], [32]],
        [[0.5], [0.75], [0.75]],
        [[4], [0], [12]],
        [[0], [1 / 48], [0]],
        [[null], [null], [4]],
        [[null], [null], [0.5]],
        [[null], [0.5], [null]],
        null,
        false,
      ],
      expected: [
        ["a", 44, 4 * 11.42105, 0.5, 0.5, (64 / 361 / (10 / 19)) ** 0.5],
        ["b", 48, 48, 0.75, 1 - 11.42105 / 48, (121 / 361 / (10 / 19)) ** 0.5],
        ["c", 32, 4 * (11.42105 - 2), 0.75, 0.75, (729 / 361 / (162 / 19)) ** 0.5],
        ["agrees", 14 / 19, 2, /* @__PURE__ */ Math.exp(-7 / 19), "", ""],
      ],
      source: {
        work: weightedMean,
        place:
          "the same three readings as dry matter of a lot: 44 ± 4 at 50 %, of which half is lost, are 11 ± 1; 48 at 75 ± 2.08 % are 12 ± 1; 32 ± 12 at 75 % and 4 at 50 % taken out are 10 ± 3. Each row moves to the mean of 11.42105; γ, p and z as in the check of the mean alone",
      },
      tolerance: { absolute: 0.00002 },
      because: "published to five decimals, four times which is a weight",
    },
    {
      status: "published",
      exercises: "calculation",
      idle: ["moistureErrors"],
      degenerate: "no water, no losses: a mean of readings of one thing",
      given: [
        [["a"], ["b"], ["c"]],
        [[11], [12], [10]],
        [[0], [0], [0]],
        [[1], [1], [3]],
        0,
        null,
        null,
        null,
        null,
        false,
      ],
      expected: [
        ["a", 11, 11.42105, 0, 0, (64 / 361 / (10 / 19)) ** 0.5],
        ["b", 12, 11.42105, 0, 0, (121 / 361 / (10 / 19)) ** 0.5],
        ["c", 10, 11.42105, 0, 0, (729 / 361 / (162 / 19)) ** 0.5],
        ["agrees", 14 / 19, 2, /* @__PURE__ */ Math.exp(-7 / 19), "", ""],
      ],
      source: {
        work: weightedMean,
        place:
          "the mean, taken for dry leaf weighed thrice. By hand: it is 217/19 with the variance 9/19; γ = 64/361 + 121/361 + 81/361 = 14/19, p = exp(−γ/2), z² = the square of each move over its variance less 9/19",
      },
      tolerance: { absolute: 0.00001 },
      because: "published to five decimals",
    },
    {
      status: "exact",
      exercises: "calculation",
      idle: ["moistureErrors"],
      degenerate: "no water, no losses: a mean of readings of one thing",
      given: [[["a"], ["b"]], [[100], [104]], [[0], [0]], [[1], [2]], 0],
      expected: [
        headings,
        ["a", 100, 100.8, 0, 0, 4 / 5 ** 0.5],
        ["b", 104, 100.8, 0, 0, 4 / 5 ** 0.5],
        ["agrees", 3.2, 1, 0.07363827012030266, "", ""],
      ],
      working:
        "dry leaf weighed twice is the mean weighed by 1/u²: (100/1 + 104/4) / (1 + 1/4) = 126/1.25 = 100.8; γ = 0.8² + (3.2/2)² = 3.2; z = |100 − 104|/√(1² + 2²) for both; p = erfc(√1.6)",
      tolerance: { relative: 1e-10 },
      because: "exact arithmetic; p of the tail is good to twelve digits",
    },
    {
      status: "exact",
      exercises: "calculation",
      idle: ["moistureErrors"],
      degenerate: "no water, no losses: a mean of readings of one thing",
      given: [[["a"], ["b"], ["c"]], [[100], [101], [105]], [[0], [0], [0]], 1, 0],
      expected: [
        headings,
        ["a", 100, 102, 0, 0, 6 ** 0.5],
        ["b", 101, 102, 0, 0, 1.5 ** 0.5],
        ["c", 105, 102, 0, 0, 13.5 ** 0.5],
        [
          'does not balance: suspect "c"; weight 100.5 would fit if its moisture is right, moisture 0.04285714286 if its weight is right',
          14,
          2,
          /* @__PURE__ */ Math.exp(-7),
          "",
          "",
        ],
      ],
      working:
        "mean 102; γ = 4 + 1 + 9 = 14; p = exp(−14/2) for two degrees of freedom; z = 2, 1, 3 over √(1 − 1/3); critical z for three rows 2.388; without c the mean is 100.5, and 1 − 100.5/105 = 0.04285714286",
      tolerance: { relative: 1e-10 },
      because: "exact arithmetic; rounding of doubles only",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [stages, [[900], [780], [505], [218]], moistures, weightErrors, moistureErrors],
      expected: [
        headings,
        ["fresh", 900, 899.997719158034, 0.765, 0.768547602161424, 0.3557890277],
        ["withered", 780, 779.993205357464, 0.725, 0.732937891359052, 0.7968869065],
        ["fired", 505, 504.98865278816, 0.575, 0.587502354759325, 0.8371190041],
        ["finished", 218, 218.009601588703, 0.045, 0.044507083034959, 1.1813650171],
        ["agrees", 1.480683737657, 3, 0.6867356355582, "", ""],
      ],
      working: solvedOutside,
      ...asPrinted,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [stages, [[900], [780], [565], [218]], moistures, weightErrors, moistureErrors],
      expected: [
        headings,
        ["fresh", 900, 899.997825810967, 0.765, 0.76837925762976, 0.338907515],
        ["withered", 780, 779.993366787009, 0.725, 0.73274367011013, 0.7773944129],
        ["fired", 565, 564.959347013694, 0.575, 0.63102094752867, 3.7475084877],
        ["finished", 218, 218.022087972765, 0.045, 0.043866763756631, 2.8226590386],
        [
          'does not balance: suspect "fired"; weight 490.0146268 would fit if its moisture is right, moisture 0.6314049267 if its weight is right',
          14.823739160591,
          3,
          0.001973642465803,
          "",
          "",
        ],
      ],
      working: `the same lot with 60 g added to one weight; ${solvedOutside}`,
      ...asPrinted,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [stages, [[900], [755], [480], [204]], moistures, weightErrors, moistureErrors, [[0], [25], [0], [3]]],
      expected: [
        headings,
        ["fresh", 900, 899.995021903769, 0.765, 0.772890943487379, 0.7913156322],
        ["withered", 755, 754.988573788697, 0.725, 0.737948699302365, 1.3215111083],
        ["fired", 480, 479.987776294091, 0.575, 0.587810882808901, 0.8578341637],
        ["finished", 204, 204.014553991198, 0.045, 0.044290684114935, 1.7206708492],
        ["agrees", 3.091192279817, 3, 0.3777777087491, "", ""],
      ],
      working: `the readings of STAGEBALANCE's check, leaf taken out included; ${solvedOutside}`,
      ...asPrinted,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [[["a"], ["b"], ["c"]], [[100], [150], [100]], [[0], [null], [0]], 1, 0, null, null, null, null, false],
      expected: [
        ["a", 100, 100, 0, 0, 0],
        ["b", 150, 150, "", 1 / 3, ""],
        ["c", 100, 100, 0, 0, 0],
        ["agrees", 0, 1, 1, "", ""],
      ],
      working: "100 g dry before and after, so 150 g of wetted leaf hold 50 g of water: 1/3",
      ...exactly,
    },
    {
      status: "exact",
      given: [stages, [[900], [780], [0.505], [218]], moistures, weightErrors, moistureErrors],
      expected: {
        error: "#N/A",
        message:
          'weights must come near a balance; "fired" at 0.505 does not belong, 490.0146268 would fit (are all in the same unit?)',
      },
      working: `505 g written in kilograms; ${solvedOutside}: without it the dry matter of the others fits 208.2562164, and 208.2562164/(1 − 0.575) = 490.0146268, as in the check above, where 565 stood there`,
      ...exactly,
    },
    {
      status: "exact",
      given: [[["a"], ["b"]], [[100], [90]], [[0], [0]], 0, 0],
      expected: {
        error: "#N/A",
        message: 'weights must agree where they are exact; "b" and an exact row before it do not balance',
      },
      working: "100 g dry cannot be 90 g dry, and neither may move",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [
        [["fresh"], ["fired"]],
        [[100], [50]],
        [[0.75], [0.58]],
        0,
        0.01,
        [[0], [10]],
        [[null], [0.5]],
        null,
        null,
        false,
      ],
      expected: [
        ["fresh", 100, 100, 0.75, 0.742, 0.8 ** 0.5],
        ["fired", 50, 50, 0.58, 0.584, 0.8 ** 0.5],
        ["agrees", 0.8, 1, 0.3710933695226963, "", ""],
      ],
      working:
        "weights are exact: 25 − 21 − 5 = −1 is missing; slopes −100 and 50, 0.01² × 12500 = 1.25; the moistures move by 0.01² × 100/1.25 = 0.008 and half of that the other way; 25.8 − 20.8 − 5 = 0; γ = 0.8² + 0.4² = 0.8 = z²; p = erfc(√0.4)",
      tolerance: { relative: 1e-9 },
      because: "exact arithmetic; differences lose digits of doubles",
    },
    {
      status: "exact",
      given: [[["a"], ["b"], ["c"]], [[100], [101], [100.2]], [[0], [0], [0]], [[0.0001], [500], [0.0001]], 0],
      expected: {
        error: "#VALUE!",
        message:
          'weightErrors must be within 100000 times of each other in dry matter; got "a" at 0.0001 and "b" at 500 (0 makes a reading exact)',
      },
      working: "500 / 0.0001 = 5000000",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;
