import { minutesInDay } from "../../core/days";
import { dryingTime } from "../../core/time/drying-time";
import { counted, inWords, mean, share } from "../columns";
import type { Situation, Study } from "../study";

/** A charge of the last drying: what it weighs, what it should weigh, where it would end, and its dry matter. */
const [start, target, end, dry] = [420, 265.3, 258.5, 252] as const;
/** How a weighing scatters, in grams: a basket that swings, a scale of half a gram. */
const scatter = 0.5;

interface Drying {
  /** How much more than in step it slows: below 1 more, above 1 less. */
  readonly exponent: number;
  /** The end weight that is typed. */
  readonly typedEnd: number;
  /** The pace that the fire comes down to, as a share of the pace at first; above 1 where it flares up. */
  readonly fire: number;
  /** At once after the last reading, or evenly from the first reading to when the target would have been reached. */
  readonly changes: "after" | "evenly";
}

/** How long a full fire would take for as much as was dried in these minutes, while it sinks evenly over `whole` of them. */
function underSinkingFire(minutes: number, fire: number, whole: number): number {
  const sinking = Math.min(minutes, whole);
  return sinking - ((1 - fire) * sinking ** 2) / (2 * whole) + fire * (minutes - sinking);
}

function trialOf({ exponent, typedEnd, fire, changes }: Drying): Situation["trial"] {
  return (random) => {
    const rate = random.between(0.012, 0.022);
    const n = exponent * random.between(0.95, 1.05);
    const weightAt = (minutes: number): number => end + (start - end) * Math.exp(-((rate * minutes) ** n));
    const minutesTo = (weight: number): number => (-Math.log((weight - end) / (start - end))) ** (1 / n) / rate;
    const count = Math.floor(random.between(4, 10));
    const whole = minutesTo(target);
    const last = whole * random.between(0.3, 0.8);
    const dried = (minutes: number): number =>
      changes === "evenly" ? underSinkingFire(minutes, fire, whole) : minutes;
    const times = Array.from({ length: count }, (_, index) => (index * last) / (count - 1));
    let least: number = start;
    const weights = times.map((minutes) => {
      // Whoever reads a weight above the last one weighs again.
      least = Math.min(least, weightAt(dried(minutes)) + scatter * random.normal());
      return least;
    });
    const truth = changes === "evenly" ? whole + (whole - dried(whole)) / fire : last + (whole - last) / fire;
    const row = dryingTime.calculate(
      times.map((minutes) => minutes / minutesInDay),
      weights,
      target,
      typedEnd,
    );
    const [early, likely, late] = row;
    if (typeof early !== "number" || typeof likely !== "number" || typeof late !== "number") return [0, 0, 0, 1, 0];
    const moment = truth / minutesInDay;
    const tooSoon = (100 * (moment - likely)) / moment;
    return [counted(moment < early), counted(early <= moment && moment <= late), counted(moment > late), 0, tooSoon];
  };
}

const steady = { exponent: 1, typedEnd: end, fire: 1, changes: "after" } as const;
const cases: readonly (readonly [label: string, drying: Drying])[] = [
  ["slows in step", steady],
  ["slows more, n 0.85", { ...steady, exponent: 0.85 }],
  ["slows less, n 1.15", { ...steady, exponent: 1.15 }],
  ["in step, dry weight typed", { ...steady, typedEnd: dry }],
  ["slows more, dry weight typed", { ...steady, exponent: 0.85, typedEnd: dry }],
  ["fire sinks evenly to 85 %", { ...steady, fire: 0.85, changes: "evenly" }],
  ["fire sinks evenly to 70 %", { ...steady, fire: 0.7, changes: "evenly" }],
  ["fire sinks evenly to 50 %", { ...steady, fire: 0.5, changes: "evenly" }],
  ["fire at 85 % after the last", { ...steady, fire: 0.85 }],
  ["fire at 70 % after the last", { ...steady, fire: 0.7 }],
  ["fire at 50 % after the last", { ...steady, fire: 0.5 }],
  ["fire at 120 % after the last", { ...steady, fire: 1.2 }],
];

const shares = ["sooner than early", "in the range", "later than late", "no range given"] as const;
const tooSoon = "likely too soon, % of the whole time";

export const dryingTimeStudy: Study = {
  functions: ["DRYINGTIME"],
  seed: 20_261_128,
  says: [
    "An invented charge of 420 g on its way to 265.3 g, which would end at 258.5 g: four to nine readings that scatter by half a gram, the last of them after 30 to 80 % of the whole time, and the time at which it really reaches the target. How fast it dries is drawn by chance, and n within a twentieth. It slows in step with what is left to lose, or more, or less, as n in Page's law says; the end weight typed is the true one, or the dry weight.",
    "Then the fire changes, while the leaf slows in step. It sinks evenly, from the first reading to the moment at which a full fire would have reached the target, and stays there: the readings show some of that. Or it changes at once after the last reading: at 70 % everything that is still to come takes 1/0.7 as long, and the range knows nothing of it.",
  ],
  tables: [
    {
      title: "When it was ready",
      rowsAre: "the drying",
      columns: [...shares.map(share), mean(tooSoon)],
      trials: 2_000,
      situations: cases.map(([label, drying]) => ({ label, trial: trialOf(drying) })),
    },
  ],
  picture: {
    title: "How often the moment lies between early and late",
    table: 0,
    columns: ["in the range"],
  },
  quotes: (at) => {
    const held = (row: string) => inWords(at(0, row, "in the range"));
    const late = (row: string) => inWords(at(0, row, "later than late"));
    return [
      {
        on: "DRYINGTIME",
        words: `the moment lay in the range in ${held("slows in step")} of 100 where drying slowed in step, in ${held("slows more, n 0.85")} where it slowed more, and in ${held("in step, dry weight typed")} where the dry weight was typed for the end weight`,
      },
      {
        on: "DRYINGTIME",
        words: `likely came ${Math.round(at(0, "in step, dry weight typed", tooSoon))} % of the whole time too soon`,
      },
      {
        on: "DRYINGTIME",
        words: `the leaf was ready later than late in ${late("fire sinks evenly to 85 %")} of 100 where the fire sank evenly to 85 % of its pace, and in ${late("fire sinks evenly to 70 %")} where it sank to 70 %; where it fell to 85 or 70 % at once after the last reading, in ${late("fire at 85 % after the last")} and ${late("fire at 70 % after the last")}`,
      },
    ];
  },
};
