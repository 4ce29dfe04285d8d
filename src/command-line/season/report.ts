/** What a screen is told of a season. */
import { CellError, type Grid } from "../../cells/values";
import type { SeasonCommandWords, TakenHeading, WhyNotCounted } from "../../words/commands";
import { few } from "../../xlsx/remarks";
import { writtenAnswer } from "../written-answer";
import type { NotCounted, Season } from "./season";
import { namesPlots, plotOf, tableBy, tableColumns } from "./tables";

/** So many lines about one thing are read; the workbook and --json have them all. */
const mostLines = 25;

export function report(season: Season, files: number, words: SeasonCommandWords): string {
  const { notCounted, alike } = season;
  const part = (title: string, lines: readonly string[]): string[] => {
    if (lines.length === 0) return [];
    const more = lines.length - mostLines;
    const rest = more > 0 ? [`  ${words.more(more)}`] : [];
    return [title, ...lines.slice(0, mostLines).map((line) => `  ${line}`), ...rest, ""];
  };
  return [
    summary(season, files, words),
    "",
    ...part(words.taken, takenLines(season, words)),
    ...part(words.notCounted, notCountedLines(notCounted, words)),
    ...part(
      words.countedTwice,
      alike.map(({ file, as, lots }) => words.alike(file, lots, as)),
    ),
    ...(season.lots.length === 0 ? [] : tables(season, words)),
  ].join("\n");
}

function summary({ lots, unit }: Season, files: number, words: SeasonCommandWords): string {
  if (lots.length === 0) return words.noLots(files);
  return words.summary({
    lots: lots.length,
    books: new Set(lots.map(({ file }) => file)).size,
    files,
    open: lots.filter(({ finished }) => finished === undefined).length,
    unit,
  });
}

function tables({ lots, unit }: Season, words: SeasonCommandWords): string[] {
  const byBook = tableBy(lots, ({ file }) => file);
  const shown = (grid: Grid, by: "plot" | "file") => rounded(inWords(grid, by, unit, words));
  return [
    ...(namesPlots(lots) ? [shown(tableBy(lots, plotOf(words.noPlot)), "plot"), ""] : []),
    // A total of one book is that book.
    ...(namesPlots(lots) && byBook.length === 3 ? [] : [shown(byBook, "file"), ""]),
  ];
}

/** With the headings, and the name of the last row, in the language that is spoken. */
function inWords(grid: Grid, by: "plot" | "file", unit: Season["unit"], words: SeasonCommandWords): Grid {
  const heading = ({ name }: (typeof tableColumns)[number], column: number): string => {
    const said = words.table && column === 0 ? words.workbook.columns[by] : (words.table?.heading(name) ?? name);
    const isWeight = name === "fresh" || name === "finished";
    return isWeight && unit !== undefined ? words.workbook.weight(name, unit) : said;
  };
  const [, ...rows] = grid;
  const last = rows.pop() ?? [];
  return [tableColumns.map(heading), ...rows, [words.table?.total ?? last[0] ?? "", ...last.slice(1)]];
}

/** Without the columns of land, which no book gives, and in the decimals that a screen has room for. */
function rounded(grid: Grid): string {
  const shown = tableColumns.flatMap(({ name }, column) => (/area/.test(name) ? [] : [column]));
  const isShare = (column: number) => tableColumns[column]?.quantity.format.includes("%") === true;
  const rows = grid.map((row) =>
    shown.map((column) => {
      const value = row[column] ?? "";
      if (typeof value !== "number") return value instanceof CellError ? value.code : value;
      return isShare(column) ? `${(value * 100).toFixed(1)}%` : Number(value.toFixed(3));
    }),
  );
  return writtenAnswer(rows).text;
}

/** Books with the same headings share a line. */
function takenLines({ columns }: Season, words: SeasonCommandWords): string[] {
  const ofFiles = new Map<string, TakenHeading[]>();
  for (const { file, ...heading } of columns) ofFiles.set(file, [...(ofFiles.get(file) ?? []), heading]);
  const byHeadings = new Map<string, { readonly headings: readonly TakenHeading[]; readonly files: string[] }>();
  for (const [file, headings] of ofFiles) {
    const key = JSON.stringify(headings);
    const alike = byHeadings.get(key) ?? { headings, files: [] };
    byHeadings.set(key, alike);
    alike.files.push(file);
  }
  return [...byHeadings.values()].map(({ headings, files }) => words.takenFrom(few(files), headings));
}

/** What has the same reason shares a line: the cells of a sheet, or else whole files. */
function notCountedLines(notCounted: readonly NotCounted[], words: SeasonCommandWords): string[] {
  const groups = new Map<string, { where?: { file: string; sheet: string }; named: string[]; why: WhyNotCounted }>();
  for (const { file, sheet, cell, why } of notCounted) {
    const where = sheet === undefined ? undefined : { file, sheet };
    const key = JSON.stringify([where, why]);
    const group = groups.get(key) ?? { ...(where && { where }), named: [], why };
    groups.set(key, group);
    if (sheet === undefined) group.named.push(file);
    else if (cell !== undefined) group.named.push(cell);
  }
  return [...groups.values()].map(({ where, named, why }) => words.places(where, few(named), words.why(why)));
}
