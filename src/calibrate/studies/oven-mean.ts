import { DomainError } from "../../core/errors";
import { ovenMean } from "../../core/moisture/oven-mean";
import { counted, share } from "../columns";
import type { Random } from "../random";
import type { Situation, Study } from "../study";

const limit = 0.003;
/** The limit is what two good readings pass in 5 of 100 cases: 1.96 times the scatter of a difference. */
const scatter = limit / (1.959_964 * Math.SQRT2);

const readings = (random: Random, count: number): number[] =>
  Array.from({ length: count }, () => 0.05 + scatter * random.normal());

function isRefused(moistures: readonly number[]): boolean {
  try {
    ovenMean.calculate(moistures, limit);
    return false;
  } catch (problem) {
    if (problem instanceof DomainError) return true;
    throw problem;
  }
}

const good = (count: number): Situation => ({
  label: String(count),
  trial: (random) => [counted(isRefused(readings(random, count)))],
});

const offs = [1, 1.5, 2, 3] as const;

const oneOff = (count: number): Situation => ({
  label: String(count),
  trial: (random) => {
    const [one = 0, ...rest] = readings(random, count);
    return offs.map((times) => counted(isRefused([one + times * limit, ...rest])));
  },
});

/** Pairs that were refused, with two more readings: good pairs, and pairs of which one is off. */
const twoMore = (label: string, off: number): Situation => ({
  label,
  trial: (random) => {
    for (;;) {
      const [one = 0, other = 0] = readings(random, 2);
      const pair = [one + off * limit, other];
      if (isRefused(pair)) return [counted(!isRefused([...pair, ...readings(random, 2)]))];
    }
  },
});

const counts = [2, 3, 4, 5, 6, 10, 20] as const;

export const ovenMeanStudy: Study = {
  functions: ["OVENMEAN"],
  seed: 20_261_203,
  says: [
    "Oven moistures of one leaf that scatter normally, by as much as lets two of them differ by more than the limit in 5 of 100 cases: 0.108 points for the limit of 0.3 points. The shares are the same for any limit whose scatter is in the same proportion.",
    "Then one of them is wrong by so many limits: 0.3, 0.45, 0.6 or 0.9 points where the limit is 0.3.",
  ],
  tables: [
    {
      title: "Good readings",
      rowsAre: "readings",
      columns: [share("refused")],
      trials: 20_000,
      situations: counts.map(good),
    },
    {
      title: "One reading wrong",
      rowsAre: "readings",
      columns: offs.map((times) => share(`by ${times} × limit: refused`)),
      trials: 20_000,
      situations: [2, 3, 4, 6].map(oneOff),
    },
    {
      title: "A pair that was refused, and two more readings",
      rowsAre: "the pair",
      columns: [share("all four agree")],
      trials: 2_000,
      situations: [twoMore("both good", 0), twoMore("one wrong by 2 × limit", 2), twoMore("one wrong by 3 × limit", 3)],
    },
  ],
  picture: {
    title: "One reading wrong: how often the readings are refused",
    table: 1,
    columns: offs.map((times) => `by ${times} × limit: refused`),
  },
  quotes: (at) => {
    const found = (times: number) => Math.round(at(1, "2", `by ${times} × limit: refused`));
    const good = counts.map((count) => Math.round(at(0, String(count), "refused")));
    const [least, most] = [Math.min(...good), Math.max(...good)];
    return [
      { on: "OVENMEAN", words: `good ones differ by more ${Math.round(at(0, "2", "refused"))} times in 100` },
      {
        on: "OVENMEAN",
        words: `good sets of any size are refused in ${least === most ? most : `${least} to ${most}`} of 100`,
      },
      {
        on: "OVENMEAN",
        words: `a pair of which one is wrong by 1.5 times the limit is refused in ${found(1.5)} of 100, by twice the limit in ${found(2)}`,
      },
      {
        on: "OVENMEAN",
        words: `two more readings bring a good pair that was refused to agree in ${Math.round(at(2, "both good", "all four agree"))} of 100`,
      },
    ];
  },
};
