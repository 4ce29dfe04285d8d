/** One season over the books of many: see the usage. */
import { createHash } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import { dirname, relative, resolve } from "node:path";
import type { SeasonCommandWords } from "../words/commands";
import { commandWordsIn } from "../words/in-every-language/commands";
import { readWorkbook } from "../xlsx/read-workbook";
import { Refusal } from "../xlsx/refusal";
import { few } from "../xlsx/remarks";
import { writeWorkbook } from "../xlsx/write-workbook";
import { booksAt } from "./files-in";
import { stampOf, writeInPlace, writeWhole } from "./recalc/in-place";
import { csvOf } from "./season/csv";
import { type Options, optionsIn, usage } from "./season/options";
import { report } from "./season/report";
import { type Season, SeasonOfBooks } from "./season/season";
import { mostLots, seasonWorkbook } from "./season/season-workbook";
import { namesPlots, plotOf, tableBy } from "./season/tables";
import { withOptions } from "./with-options";

const main = async (given: readonly string[]): Promise<number> => withOptions(optionsIn(given), usage, work);

async function work(options: Options): Promise<number> {
  const found = booksAt(options.paths);
  const files = typeof found === "string" ? [] : onceEach(found, options);
  if (files.length === 0) {
    console.error(typeof found === "string" ? found : "there is no .xlsx file there but the one to be written");
    return 2;
  }
  const words = commandWordsIn[options.language].season;
  const books = read(files, options, words);
  const unknown = books.unknownHeadings();
  if (unknown.length > 0) {
    for (const { as, heading, alike } of unknown) console.error(words.unknownHeading(heading, as, few(alike, 5)));
    return 2;
  }
  const season = books.season();
  if (season.lots.length > mostLots) {
    console.error(words.tooMany(season.lots.length));
    return 2;
  }
  console.log(options.json ? asJson(season, words) : report(season, files.length, words));
  const isWritten = season.lots.length === 0 || (await write(season, options, words));
  const isWhole = season.notCounted.every(({ isMeant }) => isMeant);
  return isWritten && season.lots.length > 0 && isWhole ? 0 : 1;
}

/** The books, once each, without the one that is to be written. */
function onceEach(found: readonly string[], { out }: Options): string[] {
  const target = out === undefined ? undefined : resolve(out);
  const files = new Map(found.map((file) => [resolve(file), file]));
  return [...files].flatMap(([path, file]) => (path === target ? [] : [file]));
}

function read(files: readonly string[], options: Options, words: SeasonCommandWords): SeasonOfBooks {
  const books = new SeasonOfBooks(options);
  const names = shortNames(files);
  const contents = new Map<string, string>();
  let saidAt = Date.now();
  for (const [index, file] of files.entries()) {
    const name = names[index] ?? file;
    if (Date.now() - saidAt > 5000) {
      saidAt = Date.now();
      process.stderr.write(`${words.readSoFar(index, files.length)}\n`);
    }
    try {
      const bytes = readFileSync(file);
      const hash = createHash("sha256").update(bytes).digest("hex");
      const same = contents.get(hash);
      if (same === undefined) {
        contents.set(hash, name);
        books.add(name, readWorkbook(bytes));
      } else books.refuse(name, { kind: "same file", as: same });
    } catch (problem) {
      if (problem instanceof Refusal) books.refuse(name, { kind: "refused", why: problem.why });
      else books.refuse(name, { kind: "not read", problem: said(problem) });
    }
  }
  return books;
}

/** Paths from the folder that holds all of them, with slashes everywhere. */
function shortNames(files: readonly string[]): string[] {
  const whole = files.map((file) => resolve(file));
  let common = dirname(whole[0] ?? "");
  while (!whole.every((file) => !relative(common, file).startsWith(".."))) common = dirname(common);
  return whole.map((file) => relative(common, file).replaceAll("\\", "/"));
}

/** Whether all was written that was asked for; says what, and where it went. */
async function write(season: Season, { out, csv, json }: Options, words: SeasonCommandWords): Promise<boolean> {
  const say = json ? console.error : console.log;
  if (out === undefined && csv === undefined) {
    if (!json) say(words.nothingWritten);
    return true;
  }
  try {
    if (out !== undefined) {
      writeOver(out, await writeWorkbook(seasonWorkbook(season, words)));
      say(words.written(out, season.lots.length));
    }
    if (csv !== undefined) {
      writeOver(csv, new TextEncoder().encode(csvOf(season)));
      say(words.written(csv));
    }
    return true;
  } catch (problem) {
    console.error(words.notWritten(said(problem)));
    return false;
  }
}

const said = (problem: unknown): string => (problem instanceof Error ? problem.message : String(problem));

/** What was there under that name is kept beside it. */
function writeOver(path: string, bytes: Uint8Array): void {
  if (existsSync(path)) writeInPlace(path, bytes, stampOf(path), true);
  else writeWhole(path, bytes);
}

function asJson(season: Season, words: SeasonCommandWords): string {
  const byPlot = namesPlots(season.lots) ? { byPlot: tableBy(season.lots, plotOf(words.noPlot)) } : {};
  const notCounted = season.notCounted.map((each) => ({ ...each, why: words.why(each.why) }));
  return JSON.stringify(
    { ...season, notCounted, ...byPlot, byBook: tableBy(season.lots, ({ file }) => file) },
    null,
    1,
  );
}

main(process.argv.slice(2)).then((status) => {
  process.exitCode = status;
});
