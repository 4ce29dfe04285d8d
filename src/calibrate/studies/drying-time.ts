import { dryingTime } from "../../core/time/drying-time";
import { counted, share } from "../columns";
import type { Situation, Study } from "../study";

/** A charge of the last drying: what it weighs, what it should weigh, where it would end, and its dry matter. */
const [start, target, end, dry] = [420, 265.3, 258.5, 252] as const;
const minutesInDay = 1440;
/** How a weighing scatters, in grams: a basket that swings, a scale of half a gram. */
const scatter = 0.5;

interface Drying {
  /** How much more than in step it slows: below 1 more, above 1 less. */
  readonly exponent: number;
  /** The end weight that is typed. */
  readonly typedEnd: number;
  /** The pace after the last reading, as a share of the pace before. */
  readonly fire: number;
}

function trialOf({ exponent, typedEnd, fire }: Drying): Situation["trial"] {
  return (random) => {
    const rate = random.between(0.012, 0.022);
    const n = exponent * random.between(0.95, 1.05);
    const weightAt = (minutes: number): number => end + (start - end) * Math.exp(-((rate * minutes) ** n));
    const minutesTo = (weight: number): number => (-Math.log((weight - end) / (start - end))) ** (1 / n) / rate;
    const count = Math.floor(random.between(4, 10));
    const last = minutesTo(target) * random.between(0.3, 0.8);
    const times = Array.from({ length: count }, (_, index) => (index * last) / (count - 1));
    let least = start;
    const weights = times.map((minutes) => {
      // Whoever reads a weight above the last one weighs again.
      least = Math.min(least, weightAt(minutes) + scatter * random.normal());
      return least;
    });
    const truth = last + (minutesTo(target) - last) / fire;
    const row = dryingTime.calculate(
      times.map((minutes) => minutes / minutesInDay),
      weights,
      target,
      typedEnd,
    );
    const [early, , late] = row;
    if (typeof early !== "number" || typeof late !== "number") return [0, 0, 0, 1];
    const moment = truth / minutesInDay;
    return [counted(moment < early), counted(early <= moment && moment <= late), counted(moment > late), 0];
  };
}

const steady = { exponent: 1, typedEnd: end, fire: 1 } as const;
const cases: readonly (readonly [label: string, drying: Drying])[] = [
  ["slows in step", steady],
  ["slows more, n 0.85", { ...steady, exponent: 0.85 }],
  ["slows less, n 1.15", { ...steady, exponent: 1.15 }],
  ["in step, dry weight typed", { ...steady, typedEnd: dry }],
  ["slows more, dry weight typed", { ...steady, exponent: 0.85, typedEnd: dry }],
  ["in step, fire at 85 %", { ...steady, fire: 0.85 }],
  ["in step, fire at 70 %", { ...steady, fire: 0.7 }],
  ["in step, fire at 50 %", { ...steady, fire: 0.5 }],
  ["in step, fire at 120 %", { ...steady, fire: 1.2 }],
];

const columns = ["sooner than early", "in the range", "later than late", "no range given"] as const;

export const dryingTimeStudy: Study = {
  functions: ["DRYINGTIME"],
  seed: 20_261_128,
  says: [
    "An invented charge of 420 g on its way to 265.3 g, which would end at 258.5 g: four to nine readings that scatter by half a gram, the last of them after 30 to 80 % of the whole time, and the time at which it really reaches the target. How fast it dries is drawn by chance, and n within a twentieth. It slows in step with what is left to lose, or more, or less, as n in Page's law says; the end weight typed is the true one, or the dry weight.",
    "Then the fire changes after the last reading: at 70 % everything that is still to come takes 1/0.7 as long. The range knows nothing of that.",
  ],
  tables: [
    {
      title: "When it was ready",
      rowsAre: "the drying",
      columns: columns.map(share),
      trials: 2_000,
      situations: cases.map(([label, drying]) => ({ label, trial: trialOf(drying) })),
    },
  ],
  picture: {
    title: "How often the moment lies between early and late",
    table: 0,
    columns: ["in the range"],
  },
  quotes: () => [],
};
