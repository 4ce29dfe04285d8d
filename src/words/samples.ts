/**
 * What the sample workbooks say. English is written down first, and every other language says as much: what it lacks
 * does not compile.
 */
import type { Phrase } from "../core/phrases";
import type { englishBench } from "./en/samples/bench";
import type { englishDay } from "./en/samples/day";
import type { englishOneLot } from "./en/samples/one-lot";
import type { englishParts } from "./en/samples/parts";
import type { englishSeason } from "./en/samples/season";
import type { Messages } from "./messages";

export type OneLotWords = typeof englishOneLot;
export type SeasonWords = typeof englishSeason;
export type DayWords = typeof englishDay;
export type BenchWords = typeof englishBench;
export type PartsWords = typeof englishParts;

/** What functions say in cells, in a language that is not theirs. */
interface CellWords {
  /** The headings of tables, by those that the functions give. */
  readonly columns: Messages["columns"];
  /** Of lots that are unusual. */
  readonly flags: Messages["picture"]["flags"];
  readonly phrase: (saying: Phrase["saying"]) => string;
}

export interface SampleWords {
  readonly oneLot: OneLotWords;
  readonly season: SeasonWords;
  readonly day: DayWords;
  readonly bench: BenchWords;
  readonly parts: PartsWords;
  readonly cautions: Messages["cautions"];
  readonly deferral: string;
  /** What something says, behind its name. */
  readonly told: Messages["joined"]["told"];
  /** Units of weight and area, as functions read them in this language; those that are missing are the same in all. */
  readonly units: Readonly<Record<string, string>>;
  /** The kinds of a target, as functions read them in this language. */
  readonly choices: Messages["sheet"]["choices"];
  /** undefined where cells speak this language by themselves. */
  readonly inCells: CellWords | undefined;
}
