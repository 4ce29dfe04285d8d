/** One season over the books of many: see the usage. */
import { createHash } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import { dirname, relative, resolve } from "node:path";
import { englishFew } from "../xlsx/english-remarks";
import { readWorkbook } from "../xlsx/read-workbook";
import { Refusal } from "../xlsx/refusal";
import { few } from "../xlsx/remarks";
import { writeWorkbook } from "../xlsx/write-workbook";
import { booksAt } from "./files-in";
import { stampOf, writeInPlace, writeWhole } from "./recalc/in-place";
import { csvOf } from "./season/csv";
import { type Options, optionsIn, usage } from "./season/options";
import { counted, report } from "./season/report";
import { type Season, SeasonOfBooks } from "./season/season";
import { mostLots, seasonWorkbook } from "./season/season-workbook";
import { namesPlots, plotOf, tableBy } from "./season/tables";

async function main(given: readonly string[]): Promise<number> {
  const options = optionsIn(given);
  if (typeof options === "string") {
    console.error(options);
    return 2;
  }
  if (options.help) {
    console.log(usage);
    return 0;
  }
  const found = booksAt(options.paths);
  const files = typeof found === "string" ? [] : onceEach(found, options);
  if (files.length === 0) {
    console.error(typeof found === "string" ? found : "there is no .xlsx file there but the one to be written");
    return 2;
  }
  const books = read(files, options);
  const unknown = books.unknownHeadings();
  if (unknown.length > 0) {
    for (const { as, heading, alike } of unknown) {
      const found = few(
        alike.map((each) => `"${each}"`),
        5,
      );
      const hint = alike.length > 0 ? `; there is ${englishFew(found)}` : "";
      console.error(`no book has the heading "${heading}" (--columns, ${as})${hint}`);
    }
    return 2;
  }
  const season = books.season();
  if (season.lots.length > mostLots) {
    console.error(
      `${season.lots.length.toLocaleString("en")} lots are more than a sheet has room for: take fewer books`,
    );
    return 2;
  }
  console.log(options.json ? asJson(season) : report(season, files.length));
  const isWritten = season.lots.length === 0 || (await write(season, options));
  const isWhole = season.notCounted.every(({ isMeant }) => isMeant);
  return isWritten && season.lots.length > 0 && isWhole ? 0 : 1;
}

/** The books, once each, without the one that is to be written. */
function onceEach(found: readonly string[], { out }: Options): string[] {
  const target = out === undefined ? undefined : resolve(out);
  const files = new Map(found.map((file) => [resolve(file), file]));
  return [...files].flatMap(([path, file]) => (path === target ? [] : [file]));
}

function read(files: readonly string[], options: Options): SeasonOfBooks {
  const books = new SeasonOfBooks(options);
  const names = shortNames(files);
  const contents = new Map<string, string>();
  let saidAt = Date.now();
  for (const [index, file] of files.entries()) {
    const name = names[index] ?? file;
    if (Date.now() - saidAt > 5000) {
      saidAt = Date.now();
      process.stderr.write(`${index} of ${files.length} files read\n`);
    }
    try {
      const bytes = readFileSync(file);
      const hash = createHash("sha256").update(bytes).digest("hex");
      const same = contents.get(hash);
      if (same === undefined) {
        contents.set(hash, name);
        books.add(name, readWorkbook(bytes));
      } else books.refuse(name, `it is the same file as ${same}`);
    } catch (problem) {
      const reason = problem instanceof Error ? problem.message : String(problem);
      books.refuse(name, problem instanceof Refusal ? reason : `it could not be read: ${reason}`);
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
async function write(season: Season, { out, csv, json }: Options): Promise<boolean> {
  const say = json ? console.error : console.log;
  if (out === undefined && csv === undefined) {
    if (!json)
      say("Nothing was written: --out season.xlsx writes a workbook with live formulas, --csv season.csv the lots.");
    return true;
  }
  try {
    if (out !== undefined) {
      writeOver(out, await writeWorkbook(seasonWorkbook(season)));
      say(`Written to ${out}, with ${counted(season.lots.length, "lot", "lots")}`);
    }
    if (csv !== undefined) {
      writeOver(csv, new TextEncoder().encode(csvOf(season)));
      say(`Written to ${csv}`);
    }
    return true;
  } catch (problem) {
    console.error(`it could not be written: ${problem instanceof Error ? problem.message : String(problem)}`);
    return false;
  }
}

/** What was there under that name is kept beside it. */
function writeOver(path: string, bytes: Uint8Array): void {
  if (existsSync(path)) writeInPlace(path, bytes, stampOf(path), true);
  else writeWhole(path, bytes);
}

function asJson(season: Season): string {
  const byPlot = namesPlots(season.lots) ? { byPlot: tableBy(season.lots, plotOf) } : {};
  return JSON.stringify({ ...season, ...byPlot, byBook: tableBy(season.lots, ({ file }) => file) }, null, 1);
}

main(process.argv.slice(2)).then((status) => {
  process.exitCode = status;
});
