/** The lots of many books as one season: in one unit, each with the place it came from. */
import { gramsIn, type WeightUnit } from "../../sheet-check/units";
import type { Taken, TakenHeading, WhyNotCounted } from "../../words/commands";
import { commandWordsIn } from "../../words/in-every-language/commands";
import type { Workbook } from "../../workbook/workbook";
import type { NamedColumns } from "./columns";
import { type LotsOfBook, lotsIn, type Weight } from "./lots-in";

export interface SeasonLot {
  readonly file: string;
  readonly sheet: string;
  readonly row: number;
  readonly lot: string | number;
  readonly date: string | number;
  readonly plot: string;
  readonly fresh: number;
  readonly finished: number | undefined;
}

/** A lot, a sheet or a whole file that is not counted. */
export interface NotCounted {
  readonly file: string;
  readonly sheet?: string;
  readonly cell?: string;
  readonly why: WhyNotCounted;
  /** Nothing is missing by it. */
  readonly isMeant?: true;
}

export interface Season {
  readonly lots: readonly SeasonLot[];
  /** Of all weights; undefined where no heading names one. */
  readonly unit: WeightUnit | undefined;
  readonly notCounted: readonly NotCounted[];
  readonly columns: readonly (TakenHeading & { readonly file: string })[];
  /** Files with most of their lots in another one too. */
  readonly alike: readonly { readonly file: string; readonly as: string; readonly lots: number }[];
}

export interface Wanted {
  readonly columns: NamedColumns;
  /** What the season is to be in; undefined for the unit of most weights. */
  readonly unit: WeightUnit | undefined;
  /** What weights are in whose heading names no unit. */
  readonly unnamed: WeightUnit | undefined;
}

/** Titles of written seasons, by which they are known when they lie among the books. */
const titles = new Set(Object.values(commandWordsIn).map(({ season }) => season.workbook.title));

/** Takes books one by one, so that no two of them have to be in memory. */
export class SeasonOfBooks {
  readonly #wanted: Wanted;
  readonly #found: { readonly file: string; readonly book: LotsOfBook }[] = [];
  readonly #notCounted: NotCounted[] = [];
  readonly #texts = new Set<string>();

  constructor(wanted: Wanted) {
    this.#wanted = wanted;
  }

  add(file: string, workbook: Workbook): void {
    if (titles.has(workbook.name)) {
      this.#notCounted.push({ file, why: "own season", isMeant: true });
      return;
    }
    const book = lotsIn(workbook, this.#wanted.columns);
    // They are many, and asked for only where headings are named.
    if (Object.keys(this.#wanted.columns).length > 0) for (const text of book.texts) this.#texts.add(text);
    if (book.lots.length + book.leftOut.length === 0) {
      this.refuse(file, "no headings");
      return;
    }
    this.#found.push({ file, book: { ...book, texts: new Set() } });
  }

  /** A file that is not read. */
  refuse(file: string, why: WhyNotCounted): void {
    this.#notCounted.push({ file, why });
  }

  /** Headings that were named and stand in no book, with texts that share a word with them. */
  unknownHeadings(): { as: Taken; heading: string; alike: string[] }[] {
    return Object.entries(this.#wanted.columns).flatMap(([as, headings]) =>
      headings.flatMap((heading) =>
        this.#texts.has(heading) ? [] : [{ as: as as Taken, heading, alike: textsLike(heading, this.#texts) }],
      ),
    );
  }

  season(): Season {
    const { unnamed } = this.#wanted;
    const weights = this.#found.flatMap(({ book }) => book.lots.flatMap(weightsOf));
    const unit = this.#wanted.unit ?? unitOfMost(weights, unnamed);
    const notCounted = [...this.#notCounted];
    const lots: SeasonLot[] = [];
    for (const { file, book } of this.#found) {
      notCounted.push(...book.leftOut.map((each) => ({ file, ...each })));
      for (const { sheet, row, cell, lot, date, plot, ...own } of book.lots) {
        const namesNone = weightsOf(own).some((weight) => weight.unit === undefined && unnamed === undefined);
        if (namesNone && unit !== undefined) notCounted.push({ file, sheet, cell, why: "no unit" });
        else {
          const inUnit = ({ value, unit: from = unnamed }: Weight) => converted(value, from, unit);
          const [fresh, finished] = [inUnit(own.fresh), own.finished && inUnit(own.finished)];
          lots.push({ file, sheet, row, lot, date, plot, fresh, finished });
        }
      }
    }
    const columns = this.#found.flatMap(({ file, book }) => book.columns.map((column) => ({ file, ...column })));
    return { lots, unit, notCounted, columns, alike: alikeIn(lots) };
  }
}

const longestHeading = 60;
const mostAlike = 5;

function textsLike(heading: string, texts: ReadonlySet<string>): string[] {
  const words = (text: string) => text.split(/[^\p{L}\p{N}]+/u).filter((word) => word.length > 1);
  const wanted = new Set(words(heading));
  const isAlike = (text: string) => text.length <= longestHeading && words(text).some((word) => wanted.has(word));
  return [...texts].filter(isAlike).slice(0, mostAlike);
}

const weightsOf = ({ fresh, finished }: { readonly fresh: Weight; readonly finished: Weight | undefined }) =>
  finished ? [fresh, finished] : [fresh];

function unitOfMost(weights: readonly Weight[], unnamed: WeightUnit | undefined): WeightUnit | undefined {
  const counts = new Map<WeightUnit, number>();
  for (const { unit = unnamed } of weights) if (unit !== undefined) counts.set(unit, (counts.get(unit) ?? 0) + 1);
  return [...counts].sort(([, one], [, other]) => other - one)[0]?.[0];
}

/** In so few digits that a factor of a thousand leaves no trace. */
function converted(value: number, from: WeightUnit | undefined, to: WeightUnit | undefined): number {
  if (from === undefined || to === undefined || from === to) return value;
  return Number(((value * gramsIn(from)) / gramsIn(to)).toPrecision(15));
}

/** Lots that a file must share with another before that is said, and the part of its lots. */
const fewestAlike = 3;
const partAlike = 0.5;

/** A copy with some lots more is no copy of the file, but of its lots. */
function alikeIn(lots: readonly SeasonLot[]): Season["alike"] {
  const firstWith = new Map<string, string>();
  const counts = new Map<string, { lots: number; shared: Map<string, number> }>();
  for (const { file, lot, date, plot, fresh, finished } of lots) {
    const own = counts.get(file) ?? { lots: 0, shared: new Map<string, number>() };
    counts.set(file, own);
    own.lots += 1;
    if (lot === "" && date === "") continue;
    const key = JSON.stringify([lot, date, plot, fresh, finished]);
    const first = firstWith.get(key);
    if (first === undefined) firstWith.set(key, file);
    else if (first !== file) own.shared.set(first, (own.shared.get(first) ?? 0) + 1);
  }
  return [...counts].flatMap(([file, { lots: all, shared }]) =>
    [...shared].flatMap(([as, count]) =>
      count >= fewestAlike && count >= all * partAlike ? [{ file, as, lots: count }] : [],
    ),
  );
}
