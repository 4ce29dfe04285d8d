import { balanceFit } from "../../core/balance/balance-fit";
import { stageFit } from "../../core/balance/stage-fit";
import { DomainError } from "../../core/errors";
import { counted, share } from "../columns";
import type { Random } from "../random";
import type { Situation, Study } from "../study";

interface Row {
  readonly name: string;
  readonly weight: number;
  readonly moisture: number;
  readonly weightError: number;
  readonly moistureError: number;
}

const first = { name: "fresh", moistureError: 0.01 };
const last = { name: "finished", moistureError: 0.003 };
const between = [
  { name: "withered", moistureError: 0.01 },
  { name: "fired", moistureError: 0.015 },
  { name: "fired again", moistureError: 0.015 },
  { name: "wrapped", moistureError: 0.015 },
];
const fourStages = ["fresh", "withered", "fired", "finished"] as const;

/** What is read of a lot in which nothing is lost. */
function lot(random: Random, rows: number): Row[] {
  const dry = random.between(150, 300);
  const inside = Array.from({ length: rows - 2 }, () => random.between(0.15, 0.72)).sort((one, other) => other - one);
  const moistures = [random.between(0.74, 0.78), ...inside, random.between(0.03, 0.06)];
  const kinds = [first, ...between.slice(0, rows - 2), last];
  return moistures.map((moisture, row) => {
    const { name, moistureError } = kinds[row] as typeof first;
    const weightError = 0.5;
    return {
      name,
      weight: dry / (1 - moisture) + weightError * random.normal(),
      moisture: Math.min(0.999, Math.max(0, moisture + moistureError * random.normal())),
      weightError,
      moistureError,
    };
  });
}

type Says = { readonly agrees: boolean; readonly named: string | undefined; readonly settled: boolean };

/** What BALANCEFIT says: that the rows agree, or which of them it names. */
function says(rows: readonly Row[]): Says {
  try {
    const table = balanceFit.calculate(
      rows.map(({ name }) => name),
      rows.map(({ weight }) => weight),
      rows.map(({ moisture }) => moisture),
      rows.map(({ weightError }) => weightError),
      rows.map(({ moistureError }) => moistureError),
      undefined,
      undefined,
      rows.map(() => 0),
      0.95,
    ) as (string | number)[][];
    const verdict = String(table[rows.length]?.[0]);
    return { agrees: verdict === "agrees", named: /suspect "([^"]*)"/.exec(verdict)?.[1], settled: true };
  } catch (problem) {
    const found = problem instanceof DomainError ? problem.refusal.found : undefined;
    const named = typeof found === "object" && found.kind === "misfit" ? found.stage : undefined;
    return { agrees: false, named, settled: false };
  }
}

/** Where the fit itself went wrong, which is what the function named before. */
function whereItWentWrong(rows: readonly Row[]): string | undefined {
  try {
    stageFit(rows.map((row) => ({ ...row, removed: 0, removedMoisture: null, dryLoss: 0 })));
  } catch (problem) {
    const found = problem instanceof DomainError ? problem.refusal.found : undefined;
    if (typeof found === "object" && found.kind === "put at") return found.stage;
  }
  return undefined;
}

const honest = (rows: number): Situation => ({
  label: `${rows} rows`,
  trial: (random) => {
    const { agrees, named } = says(lot(random, rows));
    return [counted(!agrees), counted(named !== undefined)];
  },
});

type Slip = (row: Row) => Row;

const weightTimes =
  (factor: number): Slip =>
  (row) => ({ ...row, weight: row.weight * factor });
const moisturePlus =
  (points: number): Slip =>
  (row) => ({ ...row, moisture: Math.min(0.99, Math.max(0, row.moisture + points)) });

const slips: readonly (readonly [string, Slip])[] = [
  ["weight 2 % too high", weightTimes(1.02)],
  ["weight 5 % too high", weightTimes(1.05)],
  ["weight 10 % too high", weightTimes(1.1)],
  ["weight 20 % too high", weightTimes(1.2)],
  ["weight 20 % too low", weightTimes(0.8)],
  ["weight half", weightTimes(0.5)],
  ["weight a tenth", weightTimes(0.1)],
  ["weight ten times", weightTimes(10)],
  ["kilograms for grams", weightTimes(0.001)],
  ["moisture 5 points too high", moisturePlus(0.05)],
  ["moisture 10 points too high", moisturePlus(0.1)],
];

/** The slip in each of four rows in turn. */
const slipped = ([label, slip]: (typeof slips)[number]): Situation => ({
  label,
  trial: (random) => {
    const rows = lot(random, 4);
    const answers = rows.map((_, place) => says(rows.map((row, at) => (at === place ? slip(row) : row))));
    return [
      ...answers.map(({ named }, place) => counted(named === rows[place]?.name)),
      answers.filter(({ named }, place) => named !== undefined && named !== rows[place]?.name).length / answers.length,
      answers.filter(({ agrees }) => agrees).length / answers.length,
    ];
  },
});

/** Among gross slips, only where no fit settles: the row left out that serves best, and where the fit went wrong. */
const unsettled = (rows: number): Situation => ({
  label: `${rows} rows`,
  trial: (random) => {
    for (;;) {
      const honestRows = lot(random, rows);
      const place = Math.floor(rows * random.uniform());
      const factor = [0.001, 0.1, 0.5, 2, 10][Math.floor(5 * random.uniform())] as number;
      const wrong = honestRows.map((row, at) => (at === place ? weightTimes(factor)(row) : row));
      const { settled, named } = says(wrong);
      if (settled) continue;
      const before = whereItWentWrong(wrong);
      const name = wrong[place]?.name;
      return [
        counted(named === name),
        counted(named !== undefined && named !== name),
        counted(before === name),
        counted(before !== undefined && before !== name),
      ];
    }
  },
});

export const balanceFitStudy: Study = {
  functions: ["BALANCEFIT"],
  seed: 20_261_202,
  says: [
    "Lots of 150 to 300 g of dry matter in which nothing is lost: fresh leaf at 74 to 78 %, finished tea at 3 to 6 %, and weighings in between at any moisture from 72 down to 15 %. Weights are read with an error of 0.5 g, moistures with one point, one and a half where the leaf was fired, and 0.3 points for finished tea; the same errors are stated, and confidence is 0.95.",
    "Then one weight or one moisture of four rows is misread, each in turn. The row that was misread may be named, or another, or none; what is left are lots that are said not to balance without a row being named.",
    "Where no fit settles, the function names the row without which the others fit best. Beside it stands the rule before: to name the row where the fit itself went wrong.",
  ],
  tables: [
    {
      title: "Honest readings",
      rowsAre: "weighings",
      columns: [share("does not balance"), share("a row is named")],
      trials: 5_000,
      situations: [2, 3, 4, 6].map(honest),
    },
    {
      title: "One of four rows misread: which row is named",
      rowsAre: "slip",
      columns: [
        ...fourStages.map((stage) => share(`in ${stage}: named`)),
        share("in any: another named"),
        share("in any: agrees"),
      ],
      trials: 1_000,
      situations: slips.map(slipped),
    },
    {
      title: "A weight ten times, twice, half, a tenth or a thousandth, where no fit settles",
      rowsAre: "weighings",
      columns: [
        share("right row, by leaving one out"),
        share("another row, by leaving one out"),
        share("right row, where the fit went wrong"),
        share("another row, where the fit went wrong"),
      ],
      trials: 500,
      situations: [3, 4, 6].map(unsettled),
    },
  ],
  picture: {
    title: "One of four rows misread: how often that row is named",
    table: 1,
    columns: fourStages.map((stage) => `in ${stage}: named`),
  },
  quotes: (at) => {
    const named = (slip: string) => fourStages.map((stage) => Math.round(at(1, slip, `in ${stage}: named`)));
    const range = (slip: string) => `${Math.min(...named(slip))} to ${Math.max(...named(slip))} of 100`;
    return [
      {
        on: "BALANCEFIT",
        words: `of four honest rows ${Math.round(at(0, "4 rows", "does not balance"))} of 100 lots are said not to balance; a weight 20 % too high has its row named in ${range("weight 20 % too high")} lots, by the place of the row, one 5 % too high in ${range("weight 5 % too high")}`,
      },
    ];
  },
};
