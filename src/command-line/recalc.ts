/** Works out workbooks in their files: results are written in place, and nothing else moves. */
import { readFileSync } from "node:fs";
import { Refusal } from "../xlsx/refusal";
import { booksAt } from "./files-in";
import { stampOf, writeInPlace, writeWhole } from "./recalc/in-place";
import { type Options, optionsIn, usage } from "./recalc/options";
import { type Recalculated, recalculated } from "./recalc/recalculated";
import { report } from "./recalc/report";
import { withOptions } from "./with-options";

const main = async (given: readonly string[]): Promise<number> => withOptions(optionsIn(given), usage, work);

async function work(options: Options): Promise<number> {
  const files = booksAt(options.paths);
  const why = typeof files === "string" ? files : whyNotTogether(files, options);
  if (typeof files === "string" || why !== undefined) {
    console.error(why);
    return 2;
  }
  let stands = true;
  for (const [index, file] of files.entries()) {
    const done = progress(`${file} (${index + 1} of ${files.length})`);
    const isFine = await oneFile(file, options, done);
    stands &&= isFine;
  }
  return stands ? 0 : 1;
}

function whyNotTogether(files: readonly string[], { out, set }: Options): string | undefined {
  if (files.length > 1 && out !== undefined) return "--out is for one file; got several";
  return files.length > 1 && set.length > 0 ? "--set is for one file; got several" : undefined;
}

/** Whether the file was worked out and, where that was asked, holds what it comes to. */
async function oneFile(file: string, options: Options, done: () => void): Promise<boolean> {
  try {
    const before = stampOf(file);
    const found = await recalculated(readFileSync(file), { set: options.set, keepsChanging: options.check });
    done();
    write(file, found, options, before);
    console.log(report(file, found, options));
    return !options.check || found.sheets.every(({ changed }) => changed.length === 0);
  } catch (problem) {
    done();
    const reason = problem instanceof Error ? problem.message : String(problem);
    console.error(`${file}: ${problem instanceof Refusal ? reason : `it was not worked out: ${reason}`}`);
    return false;
  }
}

function write(
  file: string,
  { bytes }: Recalculated,
  { check, out, backup }: Options,
  before: ReturnType<typeof stampOf>,
) {
  if (check) return;
  if (out !== undefined) writeWhole(out, bytes ?? readFileSync(file));
  else if (bytes) writeInPlace(file, bytes, before, backup);
}

/** Says what is being done when it takes longer than a moment; gives the way to say no more. */
function progress(what: string): () => void {
  const first = setTimeout(() => process.stderr.write(`working out ${what}\n`), 2000);
  return () => clearTimeout(first);
}

main(process.argv.slice(2)).then((status) => {
  // The engine keeps timers that would hold the process for a while.
  process.exit(status);
});
