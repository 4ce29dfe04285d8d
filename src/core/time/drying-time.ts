import { carbonMonoxide, dust, hotPan } from "../cautions";
import { minutesInDay, secondsInDay, wholeSeconds } from "../days";
import {
  type Answer,
  defineFunction,
  exactly,
  explained,
  type FunctionPage,
  measured,
  measuredList,
  optional,
  parameter,
} from "../define";
import { DomainError, inPlace, must, mustBe, noAnswer } from "../errors";
import { approachFit } from "../numeric/approach-fit";
import { clock, plainNumber, weight } from "../quantities";
import { geankoplisDrying, golubPereyra, nistBoxBod, pageThesis, panchariyaDrying, sharmaWithering } from "../sources";
import { step, workingNumber } from "../working";

/** More readings than this are no list of a day; the refusal says so. */
const mostReadings = 500;

/** From so many readings on their course is fitted. */
const fewestForFit = 4;

/** How many times the span of the readings a forecast may reach; the refusal says so. */
const farthest = 10;

interface Reading {
  readonly time: number;
  readonly weight: number;
}

/** Another cell of the row: a moment, no answer, or `""` while it needs more readings. */
type Moment = number | DomainError | "";

/**
 * When leaf in drying reaches a weight, from timed weights. Early: at the pace of the last two readings. With an end
 * weight E, likely by Page's law, (W − E)/(W₁ − E) = e^(−c·xⁿ), fitted through the first and the last reading, and late
 * as slowing in step with what is left above a rest half as far below the target as E. Without one, likely and E from
 * W₁ − b(1 − e^(−kx)) by least squares.
 * Sources: G. E. Page, thesis, Purdue 1949; Panchariya, Popovic and Sharma, J. Food Eng. (2001).
 */
export const dryingTime = defineFunction({
  id: "DRYINGTIME",
  group: "time",
  parameters: [
    measuredList("times", clock),
    // With gaps: a card is ruled ahead of the readings.
    parameter("weights", weight, { takes: "list", blank: "waits", gaps: true }),
    measured("targetWeight", weight),
    optional("endWeight", weight),
  ],
  result: {
    shape: "row",
    columns: [
      explained({ name: "early", quantity: clock }),
      explained({ name: "likely", quantity: clock }),
      explained({ name: "late", quantity: clock }),
      explained({ name: "end weight", quantity: weight }),
    ],
    picture: explained({
      shows: "drying",
      times: "times",
      weights: "weights",
      target: "targetWeight",
      early: "early",
      likely: "likely",
      late: "late",
    }),
  },
  calculate: (times, weights, targetWeight, endWeight): Answer[] => {
    if (endWeight !== undefined && endWeight >= targetWeight) {
      throw mustBe(
        "endWeight",
        { kind: "limit", is: "below", limit: targetWeight, what: "the target weight" },
        endWeight,
      );
    }
    const readings = readingsOf(times, weights);
    const [first] = readings;
    if (first === undefined) return ["", "", "", ""];
    if (targetWeight > first.weight) {
      throw mustBe(
        "targetWeight",
        { kind: "limit", is: "at most", limit: first.weight, what: "the first weight" },
        targetWeight,
      );
    }
    const rest = endWeight ?? restOf(readings);
    const end = isRest(rest) ? rest.weight : rest;
    const reached = momentReached(readings, targetWeight);
    if (reached !== undefined) return [reached, reached, reached, end];
    const [before, last] = readings.slice(-2) as [Reading, Reading | undefined];
    if (last === undefined) return ["", "", "", end];
    if (last.weight === before.weight) {
      const still = noAnswer("weights", { do: "still fall at the end" }, { kind: "value", value: last.weight });
      return [still, still, still, end];
    }
    const pace = atLastPace(before, last, targetWeight);
    const within = (moment: number): Moment => inReach(Math.max(last.time, moment), first, last, targetWeight);
    if (endWeight !== undefined) {
      // Never before the pace, but for the last bits of weights that hardly differ.
      const slowing = Math.max(pace, inStep(before, last, targetWeight, (endWeight + targetWeight) / 2));
      const likely = readings.length < fewestForFit ? undefined : byPage(readings, targetWeight, endWeight);
      if (likely === undefined) return [within(pace), "", within(slowing), end];
      return [within(Math.min(pace, likely)), within(likely), within(Math.max(slowing, likely)), end];
    }
    if (!isRest(rest)) return [within(pace), rest, "", end];
    if (rest.weight >= targetWeight) {
      const above = noAnswer(
        "targetWeight",
        { be: { kind: "limit", is: "above", limit: rest.weight, what: "where these readings come to rest" } },
        { kind: "value", value: targetWeight },
      );
      return [within(pace), above, "", end];
    }
    const likely = last.time + Math.log((last.weight - rest.weight) / (targetWeight - rest.weight)) / rest.rate;
    return [within(Math.min(pace, likely)), within(likely), "", end];
  },
});

/** The rows that are weighed, in time and never heavier than before. */
function readingsOf(times: readonly number[], weights: readonly (number | null)[]): readonly Reading[] {
  times.forEach((time, place) => {
    const before = times[place - 1];
    if (before === undefined || time > before) return;
    const found = { kind: "time", seconds: wholeSeconds(time) % secondsInDay } as const;
    throw inPlace(must("times", { do: "rise" }, found, { hint: "past midnight type the date with the time" }), place);
  });
  const readings = times.flatMap((time, place) => {
    const weight = weights[place];
    return weight ? [{ time, weight, place }] : [];
  });
  if (readings.length > mostReadings) {
    throw mustBe("weights", "500 at most", readings.length);
  }
  readings.forEach(({ weight, place }, index) => {
    const before = readings[index - 1];
    if (before === undefined || weight <= before.weight) return;
    throw noAnswer("weights", { do: "not rise" }, { kind: "goes", place: place + 1, from: before.weight, to: weight });
  });
  return readings;
}

/** When the target was reached, on the straight line between the two readings around it. */
function momentReached(readings: readonly Reading[], target: number): number | undefined {
  const index = readings.findIndex(({ weight }) => weight <= target);
  if (index < 0) return undefined;
  const after = readings[index] as Reading;
  const before = readings[index - 1];
  if (before === undefined) return after.time;
  return before.time + ((after.time - before.time) * (before.weight - target)) / (before.weight - after.weight);
}

const atLastPace = (before: Reading, last: Reading, target: number): number =>
  last.time + ((last.time - before.time) * (last.weight - target)) / (before.weight - last.weight);

/** Slowing in step with what is left above a rest. */
const inStep = (before: Reading, last: Reading, target: number, rest: number): number =>
  last.time +
  ((last.time - before.time) * Math.log((last.weight - rest) / (target - rest))) /
    Math.log((before.weight - rest) / (last.weight - rest));

/** The exponent of Page's law, from how the logarithm of what is left grows with time; undefined of too few readings. */
function pageExponent(readings: readonly Reading[], end: number): number | undefined {
  const first = readings[0] as Reading;
  const points = readings.slice(1).flatMap(({ time, weight }) => {
    const left = (weight - end) / (first.weight - end);
    if (left >= 1) return [];
    const log = Math.log(left);
    return [{ x: Math.log(time - first.time), y: Math.log(-log), importance: (left * log) ** 2 }];
  });
  if (points.length < 2) return undefined;
  const sum = (term: (point: (typeof points)[number]) => number): number =>
    points.reduce((total, point) => total + point.importance * term(point), 0);
  const all = sum(() => 1);
  const [x, y] = [sum((point) => point.x) / all, sum((point) => point.y) / all];
  return sum((point) => (point.x - x) * (point.y - y)) / sum((point) => (point.x - x) ** 2);
}

function byPage(readings: readonly Reading[], target: number, end: number): number | undefined {
  const exponent = pageExponent(readings, end);
  if (exponent === undefined) return undefined;
  const [first, last] = [readings[0], readings[readings.length - 1]] as [Reading, Reading];
  const left = (weight: number): number => Math.log((weight - end) / (first.weight - end));
  return first.time + (last.time - first.time) * (left(target) / left(last.weight)) ** (1 / exponent);
}

interface Rest {
  readonly weight: number;
  readonly rate: number;
}

const isRest = (rest: number | Rest | DomainError | ""): rest is Rest =>
  typeof rest === "object" && !(rest instanceof DomainError);

/** Where readings come to rest by themselves: from the fit, `""` of too few, or that they do not slow down. */
function restOf(readings: readonly Reading[]): Rest | DomainError | "" {
  if (readings.length < fewestForFit) return "";
  const first = readings[0] as Reading;
  const fit = approachFit(
    readings.map(({ time }) => time - first.time),
    readings.map(({ weight }) => first.weight - weight),
  );
  const weight = fit === undefined ? 0 : first.weight - fit.depth;
  if (fit !== undefined && weight > 0) return { weight, rate: fit.rate };
  return noAnswer("endWeight", { be: "typed while the weights do not slow down" }, { kind: "value", value: null });
}

function inReach(moment: number, first: Reading, last: Reading, target: number): Moment {
  if (moment <= first.time + farthest * (last.time - first.time)) return moment;
  return noAnswer(
    "targetWeight",
    { be: "near enough to be reached within ten times the time so far" },
    { kind: "value", value: target },
  );
}

const minutes = (days: number): number => days * minutesInDay;

const afternoon = [[13 / 24], [13.25 / 24], [13.5 / 24], [13.75 / 24], [14 / 24]];
const column = (values: readonly (number | null)[]) => values.map((value) => [value]);
const inMinutes = (values: readonly number[]) => column(values.map((minute) => minute / minutesInDay));
const fromNine = (values: readonly number[]) => column(values.map((minute) => (540 + minute) / minutesInDay));
const slowingWeights = [400, 250, 175, 137.5];
const steadyWeights = [400, 380, 360, 340];
const inventedTimes = [0, 20, 40, 60, 80];
const inventedWeights = [420, 381.5, 351, 327.5, 309.5];
const geankoplisTimes = [0, 0.4, 0.8, 1.4, 2.2, 3, 4.2];
const geankoplisWeights = [4.944, 4.885, 4.808, 4.699, 4.554, 4.404, 4.241];

/** Steps for a target that has been reached, or for too few readings. */
function shortWorking(readings: readonly Reading[], target: number, row: readonly Answer[]) {
  const index = readings.findIndex(({ weight }) => weight <= target);
  const [before, after] = [readings[index - 1], readings[index]];
  if (before === undefined || after === undefined) {
    return [step("one reading tells nothing of the pace, unless it is the target", "—", "—", row)];
  }
  const values = { x: minutes(after.time - before.time), "W₁": before.weight, "W₂": after.weight, τ: target };
  const taken = minutes(momentReached(readings, target) as number) - minutes(before.time);
  return [
    step("minutes from the reading before to the target", "x × (W₁ − τ) / (W₁ − W₂)", values, taken, plainNumber),
    step("it has been reached", "t₁ + minutes", `… + ${workingNumber(taken)}`, row),
  ];
}

/** Late and likely, from where drying would end. */
function stepsWithEnd(readings: readonly Reading[], τ: number, E: number) {
  const [before, last] = readings.slice(-2) as [Reading, Reading];
  const first = readings[0] as Reading;
  const half = (E + τ) / 2;
  const exponent = readings.length < fewestForFit ? undefined : pageExponent(readings, E);
  const share = (of: number): number => (of - E) / (first.weight - E);
  return [
    step("a rest half as far below the target as the end weight", "(E + τ) / 2", { E, τ }, half, weight),
    step(
      "minutes more when it slows in step with what is left above that rest",
      "x × ln((W − E′) / (τ − E′)) / ln((W₋ − E′) / (W − E′))",
      { x: minutes(last.time - before.time), W: last.weight, "W₋": before.weight, τ, "E′": half },
      minutes(inStep(before, last, τ, half) - last.time),
      plainNumber,
    ),
    ...(exponent === undefined
      ? []
      : [
          step(
            "minutes from the first reading by all of them, n from how the logarithm of what is left grows",
            "x × (ln(Rτ) / ln(R))^(1 / n)",
            { x: minutes(last.time - first.time), Rτ: share(τ), R: share(last.weight), n: exponent },
            minutes((byPage(readings, τ, E) as number) - first.time),
            plainNumber,
          ),
        ]),
  ];
}

/** Where drying would end, when the readings have to say it themselves. */
function stepsToRest(readings: readonly Reading[]) {
  const first = readings[0] as Reading;
  const rest = restOf(readings);
  if (!isRest(rest)) return [];
  return [
    step(
      "where the readings come to rest, by least squares",
      "W₁ − b",
      { "W₁": first.weight, b: first.weight - rest.weight },
      rest.weight,
      weight,
    ),
  ];
}

const unslowed = {
  error: "#N/A",
  message: "endWeight must be typed while the weights do not slow down; got a blank",
};
const atRest = { error: "#N/A", message: "weights must still fall at the end; got 380" };

export const dryingTimePage = {
  summary: "When leaf in drying will reach a weight, from timed weights: early, likely and late.",
  parameters: {
    times: "times of the readings, or dates with times; they rise",
    weights: "weights at these times; a row that is not weighed yet is passed over",
    targetWeight: "weight to be reached: TARGETWEIGHT gives it",
    endWeight:
      "weight at which drying would come to rest, below the target and not below the dry matter; without it, it is sought in the readings",
  },
  formula:
    "early = t + x × (W − τ) / (W₋ − W); late = t + x × ln((W − E′) / (τ − E′)) / ln((W₋ − E′) / (W − E′)), E′ = (E + τ) / 2; likely = t₁ + (t − t₁) × (ln Rτ / ln R)^(1/n), R = (W − E) / (W₁ − E); without E, W = W₁ − b × (1 − e^(−k(t − t₁)))",
  working: (times: readonly number[], weights: readonly (number | null)[], τ: number, E?: number) => {
    const row = dryingTime.calculate(times, weights, τ, E);
    const readings = readingsOf(times, weights);
    const [last, before] = [readings[readings.length - 1], readings[readings.length - 2]];
    if (last === undefined || before === undefined || last.weight <= τ) return shortWorking(readings, τ, row);
    const toLose = step("still to lose", "W − τ", { W: last.weight, τ }, last.weight - τ, weight);
    if (last.weight === before.weight) {
      return [toLose, step("the last two readings are alike: there is no pace", "W₋ − W", "0", row)];
    }
    const values = { x: minutes(last.time - before.time), W: last.weight, "W₋": before.weight, τ };
    const pace = minutes(atLastPace(before, last, τ) - last.time);
    return [
      toLose,
      step("minutes more at the pace of the last two readings", "x × (W − τ) / (W₋ − W)", values, pace, plainNumber),
      ...(E === undefined ? stepsToRest(readings) : stepsWithEnd(readings, τ, E)),
      step("the moments, the likely one never outside the others", "t + minutes", `… + ${workingNumber(pace)}`, row),
    ];
  },
  guide: [
    "Use it in the last drying: type the time and the weight each time you weigh, and read when to look again. Early is the time at the pace of the last two readings, likely the time to expect, late the time if it slows down as far as it may. A card may be ruled ahead: rows without a weight are passed over, and a cell that needs more readings waits.",
    "It is a forecast and no bound. It holds while heat, depth and turning stay as they are. Measured with simulated charges, the moment lay in the range in 99 of 100 where drying slowed in step, in 93 where it slowed more, and in 53 where the dry weight was typed for the end weight. When the fire sinks, leaf comes later: the leaf was ready later than late in 2 of 100 where the fire sank evenly to 85 % of its pace, and in 15 where it sank to 70 %; where it fell to 85 or 70 % at once after the last reading, in 23 and 91. docs/how-sure.md has the rest. While the leaf still warms up, it comes sooner than early: begin the list once the weight falls steadily.",
    "The end weight decides. TARGETWEIGHT(weight, moisture, 2.5%) gives one, with your own figure for 2.5 %. With the dry weight in its place, likely came 10 % of the whole time too soon, measured likewise.",
    "Without an end weight trust early only, unless the weight slowed down from the first reading on. If the end weight that is found lies below DRYMATTER, it is wrong. While the weights do not slow down, likely and end weight are #N/A.",
    "Likely and late take four readings with an end weight, early two; without one the fit takes four. Weights that rise make the whole answer #N/A, with the place named: leaf takes up no water in a warm dryer, so look at the scale. Two equal weights at the end leave no pace. A time more than ten times as far as the readings reach is #N/A in its cell.",
    "The answers are clocks, for cells of the format hh:mm. It is a row of four, and a spill cannot stand inside a worksheet table: there ask for one of them, =INDEX(TEA.DRYINGTIME(A2:A13, B2:B13, E2, E3), 1, 2) is the likely time.",
    "Refused: times that do not rise (past midnight type the date with the time), a target above the first weight, an end weight that is not below the target, and more than 500 readings.",
  ],
  sources: [
    {
      work: panchariyaDrying,
      place: "abstract: black tea at 80 to 120 °C dries in a falling rate only; an exponential predicts it best",
    },
    { work: sharmaWithering, place: "abstract: the law named after Page fits the withering of tea, R² 0.9989" },
    { work: pageThesis, place: "the law e^(−c·xⁿ) for what is left" },
    { work: golubPereyra, place: "variable projection" },
    { work: nistBoxBod, place: "certified parameters and sum of squares of the fit" },
    { work: geankoplisDrying, place: "a foodstuff dried on a tray, weighed eleven times in 12 hours" },
  ],
  cautions: [dust, hotPan, carbonMonoxide],
  examples: [
    {
      given: [afternoon, column([240, 222, 207.5, 196, 187]), 166, 160],
      gives: [[0.6076388888888891, 0.6371449226140615, 0.651352160798212, 160]],
      shows: "an invented lot on its way to 166 g: between 14:35 and 15:38, likely at 15:17",
    },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [column([0, 1, 2, 3, 5, 7, 10]), column([300, 191, 151, 151, 109, 87, 76]), 80],
      expected: [[98 / 11, 98 / 11, 98 / 11, 86.19059111]],
      source: {
        work: nistBoxBod,
        place:
          "certified b1 213.80940889 and b2 0.54723748542: weights that fall from 300 by BoxBOD's readings come to rest at 300 − b1; the target was reached at 7 + 3 · 7/11",
      },
      tolerance: { absolute: 5e-9 },
      because: "certified to eight decimals",
    },
    {
      status: "published",
      exercises: "calculation",
      given: [column(geankoplisTimes), column(geankoplisWeights), 4.15, 3.955],
      expected: [[5, 5, 5, 3.955]],
      source: {
        work: geankoplisDrying,
        place: "4.150 kg were read at 5.0 h; the forecast is made from the seven readings before, the last at 4.2 h",
      },
      tolerance: { absolute: 0.5 },
      because: "a forecast, not a reading: early is 0.13 before, likely 0.15 and late 0.47 after it",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [column(geankoplisTimes), column(geankoplisWeights), 4.15, 3.955],
      expected: [[4.8699386503, 5.1529943959, 5.4695873775, 3.955]],
      working:
        "4.2 + 1.2 · 0.091/0.163 = 4.8699386503; E′ = 4.0525: 4.2 + 1.2 · ln(0.1885/0.0975)/ln(0.3515/0.1885); the exponent of six points by a second program at 40 digits",
      tolerance: { relative: 1e-10 },
      because: "ten decimals were written down",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [column(geankoplisTimes), column(geankoplisWeights), 4.019, 3.955],
      expected: [[5.8343558282, 7.665334097, 9.2144392031, 3.955]],
      working: "the same readings, to the weight that was read at 7 h: 4.2 + 1.2 · 0.222/0.163 = 5.8343558282",
      tolerance: { relative: 1e-10 },
      because: "ten decimals were written down",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [column([0, 1, 2, 3]), column(slowingWeights), 109.375, 100],
      expected: [[3.75, 5, 3 + Math.log(7) / Math.log(15 / 7), 100]],
      working:
        "above 100 every day halves what is left: 300, 150, 75, 37.5; the target leaves 9.375 = 300/32, five halvings; early 3 + 28.125/37.5; E′ = 104.6875: ln(32.8125/4.6875)/ln(70.3125/32.8125) = ln 7/ln(15/7)",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [column([0, 1, 2, 3]), column(slowingWeights), 109.375],
      expected: [[3.75, 5, "", 100]],
      working: "the same without the end weight, which is found",
      tolerance: { relative: 1e-9 },
      because: "exact arithmetic; a fit leaves a few digits of doubles",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [column([0, 1, 2, 3]), column(steadyWeights), 300, 100],
      expected: [[5, 5.2293740588, 5.519798753, 100]],
      working:
        "20 each day: early 3 + 40/20; E′ = 200: 3 + ln(140/100)/ln(160/140); R = 14/15, 13/15, 12/15, the exponent by a second program at 40 digits",
      tolerance: { relative: 1e-10 },
      because: "ten decimals were written down",
    },
    {
      status: "exact",
      exercises: "edge",
      given: [column([0, 1, 2, 3]), column(steadyWeights), 300],
      expected: [[5, unslowed, "", unslowed]],
      working: "without slowing there is no rest to be found",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [inMinutes(inventedTimes), column(inventedWeights), 265.3, 258.5],
      expected: [[129.1111111111 / 1440, 211.0947215931 / 1440, 244.5590311743 / 1440, 258.5]],
      working:
        "minutes 0 to 80: 80 + 20 · 44.2/18 = 129.1111; n = 1.0418426833: 211.0947; E′ = 261.9: 80 + 20 · ln(47.6/3.4)/ln(65.6/47.6) = 244.5590",
      tolerance: { relative: 1e-10 },
      because: "ten decimals were written down",
    },
    {
      status: "exact",
      exercises: "input",
      given: [fromNine(inventedTimes), column(inventedWeights), 265.3, 258.5],
      expected: [[0.4646604938, 0.5215935567, 0.5448326605, 258.5]],
      working: "the same from 9:00: 11:09, 12:31 and 13:05",
      tolerance: { absolute: 1e-10 },
      because: "ten decimals were written down",
    },
    {
      status: "exact",
      exercises: "input",
      given: [inMinutes([0, 20, 40, 60, 80, 100]), column([...inventedWeights.slice(0, 4), null, null]), 265.3, 258.5],
      expected: [[112.9361702128 / 1440, 213.2408724617 / 1440, 253.3349723434 / 1440, 258.5]],
      working: "the first four readings on a card that is ruled ahead: 60 + 20 · 62.2/23.5 = 112.9361702128",
      tolerance: { relative: 1e-10 },
      because: "ten decimals were written down",
    },
    {
      status: "exact",
      exercises: "edge",
      given: [inMinutes(inventedTimes.slice(0, 3)), column(inventedWeights.slice(0, 3)), 265.3, 258.5],
      expected: [[96.1967213115 / 1440, "", 261.8787999569 / 1440, 258.5]],
      working: "three: 40 + 20 · 85.7/30.5 = 96.1967213115, likely waits for the fourth",
      tolerance: { relative: 1e-10 },
      because: "ten decimals were written down",
    },
    {
      status: "exact",
      exercises: "edge",
      given: [inMinutes(inventedTimes.slice(0, 2)), column(inventedWeights.slice(0, 2)), 265.3, 258.5],
      expected: [
        [
          80.3636363636 / 1440,
          "",
          {
            error: "#N/A",
            message: "targetWeight must be near enough to be reached within ten times the time so far; got 265.3",
          },
          258.5,
        ],
      ],
      working:
        "two: 20 + 20 · 116.2/38.5 = 80.3636; 20 + 20 · ln(119.6/3.4)/ln(158.1/119.6) = 275 minutes, more than ten times the 20 that the readings reach",
      tolerance: { relative: 1e-10 },
      because: "ten decimals were written down",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [inMinutes(inventedTimes), column(inventedWeights), 265.3],
      expected: [[129.1111111111 / 1440, 172.9762255265 / 1440, "", 245.2664820713]],
      working: "all five without an end weight: the least squares by a second program at 40 digits",
      tolerance: { relative: 1e-9 },
      because: "a fit leaves a few digits of doubles",
    },
    {
      status: "exact",
      exercises: "edge",
      given: [column([0, 1, 2, 3]), column(slowingWeights), 95],
      expected: [
        [
          3 + 42.5 / 37.5,
          { error: "#N/A", message: "targetWeight must be above 100, where these readings come to rest; got 95" },
          "",
          100,
        ],
      ],
      working: "95 lies below 100, where the readings come to rest; at the last pace it would be 42.5/37.5 of a day",
      tolerance: { relative: 1e-9 },
      because: "a fit leaves a few digits of doubles",
    },
    {
      status: "exact",
      exercises: "edge",
      given: [column([0, 1, 2]), column([400, 380, 380]), 300, 200],
      expected: [[atRest, atRest, atRest, 200]],
      working: "the last two are alike: there is no pace to go on with",
      ...exactly,
    },
    {
      status: "exact",
      given: [0.4, 420, 265.3],
      expected: [["", "", "", ""]],
      working: "one reading: everything waits",
      ...exactly,
    },
    {
      status: "exact",
      given: [column([0, 1, 2]), column([420, 402, 410]), 300],
      expected: { error: "#N/A", message: "weights must not rise; place 3 goes from 402 to 410" },
      working: "410 > 402",
      ...exactly,
    },
    {
      status: "exact",
      given: [column([23 / 24, 23.75 / 24, 0.5 / 24]), column([420, 402, 390]), 300],
      expected: {
        error: "#VALUE!",
        message: "times must rise; got 0:30 (past midnight type the date with the time) in place 3 of the list",
      },
      working: "0:30 is 0.0208, below the 0.99 of 23:45",
      ...exactly,
    },
    {
      status: "exact",
      given: [column([0, 1]), column([420, 402]), 430],
      expected: { error: "#VALUE!", message: "targetWeight must be at most 420, the first weight; got 430" },
      working: "430 > 420",
      ...exactly,
    },
    {
      status: "exact",
      given: [column([0, 1]), column([420, 402]), 265.3, 270],
      expected: { error: "#VALUE!", message: "endWeight must be below 265.3, the target weight; got 270" },
      working: "270 > 265.3: drying would end above the target",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;
