import { scaleError } from "../../core/uncertainty/scale-error";
import { counted, share, usual } from "../columns";
import { type Random, randomFrom } from "../random";
import type { Situation, Study } from "../study";

/** The step of the display is 1. */
const shownBy = (random: Random, load: number, noise: number): number => Math.round(load + noise * random.normal());

/**
 * How far the shown readings of a load scatter, over all loads, for a noise before the display rounds: what a maker
 * who puts many loads on the scale ten times would find. Once for each noise, from numbers of its own.
 */
function scatterShown(noise: number, random: Random): number {
  const loads = 20_000;
  let variance = 0;
  for (let load = 0; load < loads; load += 1) {
    const at = random.between(-0.5, 0.5);
    variance += (shownBy(random, at, noise) - shownBy(random, at, noise)) ** 2 / 2;
  }
  return Math.sqrt(variance / loads);
}

const noises = [0, 0.1, 0.2, 0.3, 0.4, 0.5, 1, 2, 3];
const counts = [1, 5, 10];

const meanShown = (random: Random, load: number, noise: number, readings: number): number => {
  let sum = 0;
  for (let reading = 0; reading < readings; reading += 1) sum += shownBy(random, load, noise);
  return sum / readings;
};

const untared = (noise: number, scatter: number): Situation => ({
  label: label(noise, scatter),
  trial: (random) => {
    const load = random.between(99.5, 100.5);
    return counts.flatMap((readings) => {
      const error = Math.abs(meanShown(random, load, noise, readings) - load);
      const stated = scaleError.calculate(1, scatter, readings, false, 0);
      return [counted(error <= stated), counted(error <= 2 * stated), (error / stated) ** 2];
    });
  },
});

/** With a dish, on a scale that is off by up to so much, and a repeatability that ten readings of one load have told. */
const inPractice = (noise: number, scatter: number): Situation => ({
  label: label(noise, scatter),
  trial: (random) => {
    const accuracy = 1;
    const off = random.between(-accuracy, accuracy);
    const [load, dish, other] = [random.between(99.5, 100.5), random.between(49.5, 50.5), random.between(79.5, 80.5)];
    const tared = meanShown(random, load + dish + off, noise, 1) - meanShown(random, dish, noise, 1);
    const repeated = Array.from({ length: 10 }, () => shownBy(random, other, noise));
    const mean = repeated.reduce((sum, one) => sum + one, 0) / 10;
    const told = Math.sqrt(repeated.reduce((sum, one) => sum + (one - mean) ** 2, 0) / 9);
    const dishKnown = scaleError.calculate(1, scatter, 1, true, accuracy);
    const single = scaleError.calculate(1, told, 1, false, 0);
    const taredError = Math.abs(tared - load);
    const singleError = Math.abs(shownBy(random, load, noise) - load);
    return [
      counted(taredError <= dishKnown),
      counted(taredError <= 2 * dishKnown),
      counted(singleError <= single),
      counted(singleError <= 2 * single),
    ];
  },
});

const label = (noise: number, scatter: number): string => `${noise}, shown ${scatter.toFixed(2)}`;
const of = (readings: number): string => (readings === 1 ? "one reading" : `mean of ${readings}`);

const kinds = noises.map((noise, place) => [noise, scatterShown(noise, randomFrom(9_000 + place))] as const);
const labels = kinds.map(([noise, scatter]) => label(noise, scatter));

export const scaleErrorStudy: Study = {
  functions: ["SCALEERROR"],
  seed: 20_261_206,
  says: [
    "A scale that shows whole steps. The load lies anywhere between two steps, and each reading is the load with its noise, rounded. Each row gives the noise, in steps, and how far the readings that are shown then scatter, which is what a maker can find out and what the function is told as repeatability. What counts is the error of the mean of so many readings.",
    "The last table is nearer to a kitchen: a dish is weighed apart on a scale that may be off by up to a step, which is told as accuracy; and a repeatability that was found from ten readings of one other load.",
  ],
  tables: [
    {
      title: "How often the error of a weight lies within the answer",
      rowsAre: "noise in steps",
      columns: counts.flatMap((readings) => [
        share(`${of(readings)}: within it`),
        share(`${of(readings)}: within twice`),
        usual(`${of(readings)}: error, times the answer`),
      ]),
      trials: 20_000,
      situations: kinds.map(([noise, scatter]) => untared(noise, scatter)),
    },
    {
      title: "With a dish and an accuracy; and with a repeatability from ten readings",
      rowsAre: "noise in steps",
      columns: [
        share("dish, accuracy: within it"),
        share("dish, accuracy: within twice"),
        share("ten readings: within it"),
        share("ten readings: within twice"),
      ],
      trials: 20_000,
      situations: kinds.map(([noise, scatter]) => inPractice(noise, scatter)),
    },
  ],
  picture: {
    title: "How often an error lies within the answer, and within twice as much",
    table: 0,
    columns: [1, 10].flatMap((readings) => [`${of(readings)}: within it`, `${of(readings)}: within twice`]),
  },
  quotes: (at) => {
    const noisy = labels.filter((_, place) => (noises[place] as number) >= 0.4);
    const quiet = labels[0] as string;
    const range = (columns: readonly string[], table = 0): string => {
      const values = columns.flatMap((column) => noisy.map((row) => Math.round(at(table, row, column))));
      return `${Math.min(...values)} to ${Math.max(...values)}`;
    };
    const each = (end: string) => counts.map((readings) => `${of(readings)}: ${end}`);
    return [
      {
        on: "SCALEERROR",
        words: `Where readings scatter by half a step or more, ${range(each("within it"))} in 100 weights lie within it and ${range(each("within twice"))} within twice as much`,
      },
      {
        on: "SCALEERROR",
        words: `within twice the answer lie only ${range(["ten readings: within twice"], 1)} in 100`,
      },
      {
        on: "SCALEERROR",
        words: `Where the step of the display alone makes it, ${Math.round(at(0, quiet, `${of(1)}: within it`))} in 100 lie within it and all within twice as much`,
      },
    ];
  },
};
