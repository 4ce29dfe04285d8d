import { wordsGiven } from "../words-given";

export const usage = `Works out every formula of workbooks that can be worked out here, and writes the results into the files.

  npm run recalc -- book.xlsx                         in place; the file before is kept as book.xlsx.bak
  npm run recalc -- book.xlsx --out new.xlsx          into another file
  npm run recalc -- book.xlsx --set "Lot!B9=820"      changes cells first; several --set may stand there
  npm run recalc -- FOLDER                            every .xlsx and .xlsm in it
  npm run recalc -- book.xlsx --check                 writes nothing: lists the cells whose stored value differs
  npm run recalc -- book.xlsx --no-backup             keeps no .bak

Only results that differ are written, in the cells where they stand: every other part of the file keeps its bytes.
A formula that cannot be worked out here keeps the result that it has and is listed; the next spreadsheet program
that opens the file is then asked to work everything out. With --check, today's date and the like are left alone.
The exit status is 1 when --check finds a difference, or a file could not be worked out.`;

export interface Options {
  readonly help: boolean;
  readonly paths: readonly string[];
  readonly set: readonly string[];
  readonly out: string | undefined;
  readonly check: boolean;
  readonly backup: boolean;
}

/** What is wrong with the words that were given, or what they say. */
export function optionsIn(given: readonly string[]): Options | string {
  const words = wordsGiven(given, {
    flags: ["--check", "--no-backup"],
    valued: { "--set": '"Lot!B9=820"', "--out": "a file" },
  });
  if (typeof words === "string") return words;
  const { help, paths, flags, values } = words;
  if (paths.length === 0 && !help) return usage;
  const [check, out] = [flags.has("--check"), values["--out"]?.at(-1)];
  if (check && out !== undefined) return "--check writes nothing: it goes with no --out";
  return { help, paths, set: values["--set"] ?? [], out, check, backup: !flags.has("--no-backup") };
}
