import { wordsGiven } from "../words-given";

export const usage = `Puts the functions into workbooks themselves, as named formulas, so that they work without the add-in.

  npm run names -- book.xlsx                    in place: TEA.X( becomes TEA_X(; the file before is kept as book.xlsx.bak
  npm run names -- book.xlsx --out new.xlsx     into another file
  npm run names -- book.xlsx --back             TEA_X( becomes TEA.X( again, and the names go
  npm run names -- FOLDER                       every .xlsx and .xlsm in it
  npm run names -- book.xlsx --no-backup        keeps no .bak

Only the names that are called are put in, with those that they call. Every other part of the file keeps its bytes; the
next spreadsheet program that opens it is asked to work everything out. Functions without a named formula stay as they
are and are listed: they still need the add-in. docs/without-the-add-in.md says more.`;

export interface Options {
  readonly help: boolean;
  readonly paths: readonly string[];
  readonly out: string | undefined;
  readonly back: boolean;
  readonly backup: boolean;
}

/** What is wrong with the words that were given, or what they say. */
export function optionsIn(given: readonly string[]): Options | string {
  const words = wordsGiven(given, { flags: ["--back", "--no-backup"], valued: { "--out": "a file" } });
  if (typeof words === "string") return words;
  const { help, paths, flags, values } = words;
  if (paths.length === 0 && !help) return usage;
  return { help, paths, out: values["--out"]?.at(-1), back: flags.has("--back"), backup: !flags.has("--no-backup") };
}
