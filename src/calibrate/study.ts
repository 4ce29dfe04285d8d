/** What a study of how sure a function is says of itself. A new one is a file in studies/ and a line in studies.ts. */
import type { Column, PictureOf } from "../generate/measured";
import type { Random } from "./random";

/** A situation that is tried again and again. */
export interface Situation {
  /** What stands at the left of its row. */
  readonly label: string;
  /** One trial: for each column 1 or 0 where it counts, or a number where it is averaged. */
  readonly trial: (random: Random) => readonly number[];
}

export interface StudyTable {
  readonly title: string;
  /** What the labels of the rows are. */
  readonly rowsAre: string;
  readonly columns: readonly Column[];
  /** How often each situation is tried. A tenth of it has to be a whole number. */
  readonly trials: number;
  readonly situations: readonly Situation[];
}

export interface Study {
  /** The functions that it is about. */
  readonly functions: readonly string[];
  readonly seed: number;
  /** What was simulated, and how to read it: paragraphs. */
  readonly says: readonly string[];
  readonly tables: readonly StudyTable[];
  readonly picture: PictureOf;
  /**
   * Words that stand on the pages of the functions, made of what was measured. `at` gives what a cell of a table shows.
   */
  readonly quotes: (at: Measurement) => readonly Quote[];
}

export interface Quote {
  /** The function on whose page the words stand. */
  readonly on: string;
  readonly words: string;
}

/** What was measured: table by its place, row by its label, column by its name. */
export type Measurement = (table: number, row: string, column: string) => number;
