import { expanded } from "../files-in";

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
  const paths: string[] = [];
  const set: string[] = [];
  let out: string | undefined;
  const flags = new Set<string>();
  for (let at = 0; at < given.length; at += 1) {
    const word = given[at] as string;
    if (word === "--set" || word === "--out") {
      at += 1;
      const value = given[at];
      if (value === undefined) return `${word} must be followed by ${word === "--set" ? '"Lot!B9=820"' : "a file"}`;
      if (word === "--set") set.push(value);
      else out = value;
    } else if (["--check", "--no-backup", "--help", "-h"].includes(word)) flags.add(word);
    else if (word.startsWith("-")) return `options must be --set, --out, --check or --no-backup; got ${word}`;
    else paths.push(word);
  }
  const help = flags.has("--help") || flags.has("-h");
  if (paths.length === 0 && !help) return usage;
  const check = flags.has("--check");
  if (check && out !== undefined) return "--check writes nothing: it goes with no --out";
  return { help, paths: expanded(paths), set, out, check, backup: !flags.has("--no-backup") };
}
