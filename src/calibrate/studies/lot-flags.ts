import { lotFlag } from "../../core/season/lot-flag";
import { lotFlags } from "../../core/season/lot-flags";
import { counted, inWords, share } from "../columns";
import type { Random } from "../random";
import type { Situation, Study } from "../study";

type Pair = readonly [fresh: number, finished: number];

const lot = (random: Random): Pair => {
  const fresh = random.between(700, 1300);
  return [fresh, fresh * 0.21 * Math.exp(0.03 * random.normal())];
};

const bookOf = (random: Random, lots: number): Pair[] => Array.from({ length: lots }, () => lot(random));

const columnOf = (book: readonly Pair[], place: 0 | 1): number[][] => book.map((pair) => [pair[place]]);

const rowsOf = (book: readonly Pair[], limit?: number) =>
  lotFlags.calculate(columnOf(book, 0), columnOf(book, 1), limit) as unknown[][];

const flags = (book: readonly Pair[], limit?: number): string[] => rowsOf(book, limit).map((row) => row[2] as string);

const flagBeside = (book: readonly Pair[], [fresh, finished]: Pair, limit?: number): string =>
  lotFlag.calculate(fresh, finished, columnOf(book, 0), columnOf(book, 1), limit) as string;

const clean = (lots: number): Situation => ({
  label: `${lots}`,
  trial: (random) => {
    const book = bookOf(random, lots);
    const today = lot(random);
    return [
      counted(flags(book).some((flag) => flag !== "")),
      counted(flags(book, 3.5).some((flag) => flag !== "")),
      counted(flagBeside(book, today) !== ""),
      counted(flagBeside(book, today, 3.5) !== ""),
    ];
  },
});

const shares = [0.05, 0.1, 0.15, 0.2, 0.3, 0.5] as const;

const wrongLot = (lots: number): Situation => ({
  label: `${lots}`,
  trial: (random) => {
    const book = bookOf(random, lots);
    const [fresh, finished] = lot(random);
    return shares.map((less) => counted(flagBeside(book, [fresh, finished * (1 - less)]) === "low"));
  },
});

const wrongInBook = (lots: number): Situation => ({
  label: `${lots}`,
  trial: (random) => {
    const [[fresh, finished], ...rest] = bookOf(random, lots) as [Pair, ...Pair[]];
    return shares.map((less) => counted(flags([[fresh, finished * (1 - less)], ...rest])[0] === "low"));
  },
});

/** z of the lots of a clean book. */
const withinOne = (lots: number): Situation => ({
  label: `${lots}`,
  trial: (random) => {
    const zs = rowsOf(bookOf(random, lots)).map((row) => Math.abs(row[1] as number));
    return [1, 2].map((within) => zs.filter((z) => z <= within).length / lots);
  },
});

const counts = [5, 6, 10, 20, 40, 80];

export const lotFlagsStudy: Study = {
  functions: ["LOTFLAG", "LOTFLAGS"],
  seed: 20_261_205,
  says: [
    "Lots of 700 to 1300 g of fresh leaf whose outturns scatter by 3 % about 21 %, normally on the scale of logarithms. The limit is left out, so that it follows the size of the book; beside it stands a limit of 3.5 for every book.",
    "Then the finished weight of one lot is too low by so much: a new lot beside a book of good ones (LOTFLAG), or one lot in a book of so many (LOTFLAGS). What counts is the size of the mistake against the scatter of the outturns: 10 % is a little over three of its standard deviations here.",
  ],
  tables: [
    {
      title: "Good lots",
      rowsAre: "lots of the book",
      columns: [
        share("a clean book has a flag"),
        share("the same, limit 3.5"),
        share("a good new lot is flagged"),
        share("the same for it, limit 3.5"),
      ],
      trials: 20_000,
      situations: counts.map(clean),
    },
    {
      title: "LOTFLAG: a new lot too low",
      rowsAre: "past lots",
      columns: shares.map((less) => share(`by ${Math.round(100 * less)} %: flagged`)),
      trials: 5_000,
      situations: counts.map(wrongLot),
    },
    {
      title: "LOTFLAGS: one lot of the book too low",
      rowsAre: "lots of the book",
      columns: shares.map((less) => share(`by ${Math.round(100 * less)} %: flagged`)),
      trials: 5_000,
      situations: counts.map(wrongInBook),
    },
    {
      title: "Good lots of a book",
      rowsAre: "lots of the book",
      columns: [share("z within 1"), share("z within 2")],
      trials: 2_000,
      situations: counts.map(withinOne),
    },
  ],
  picture: {
    title: "LOTFLAG: a new lot that is too low, how often it is flagged",
    table: 1,
    columns: [0.1, 0.15, 0.2, 0.3].map((less) => `by ${Math.round(100 * less)} %: flagged`),
  },
  quotes: (at) => {
    const rounded = (table: number, row: string, column: string) => inWords(at(table, row, column));
    const found = (table: number, less: number, lots: number) => rounded(table, `${lots}`, `by ${less} %: flagged`);
    const typed = (lots: number) => rounded(0, `${lots}`, "the same for it, limit 3.5");
    /** The same for books of every size, or no sentence fits. */
    const about = (of: number, column: string) =>
      [...new Set(counts.map((lots) => Math.round((of / 100) * at(0, `${lots}`, column))))]
        .map((count) => (count === 1 ? "one" : `${count}`))
        .join(" or ");
    return [
      {
        on: "LOTFLAG",
        words: `of a hundred good new lots about ${about(100, "a good new lot is flagged")} is flagged`,
      },
      {
        on: "LOTFLAG",
        words: `of a hundred good lots it flags ${typed(5)} beside five past ones, ${typed(10)} beside ten, ${typed(20)} beside twenty`,
      },
      {
        on: "LOTFLAGS",
        words: `of twenty clean books about ${about(20, "a clean book has a flag")} has a flag`,
      },
      {
        on: "LOTFLAGS",
        words: `flags a lot in ${rounded(0, "5", "the same, limit 3.5")} of a hundred clean books of five lots, in ${rounded(0, "10", "the same, limit 3.5")} of those of ten, and in ${rounded(0, "40", "the same, limit 3.5")} of those of forty`,
      },
      {
        on: "LOTFLAGS",
        words: `a lot that is 20 % too low was flagged in ${found(2, 20, 10)} of 100 books of ten lots and in ${found(2, 20, 40)} of those of forty`,
      },
      {
        on: "LOTFLAGS",
        words: `of the lots of a good book of twenty ${rounded(3, "20", "z within 1")} in 100 lie within 1`,
      },
      {
        on: "LOTFLAG",
        words: `a lot that is 20 % too low was flagged in ${found(1, 20, 5)} of 100 beside five past lots, in ${found(1, 20, 10)} beside ten and in ${found(1, 20, 20)} beside twenty`,
      },
    ];
  },
};
