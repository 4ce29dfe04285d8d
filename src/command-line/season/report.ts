/** What a screen is told of a season. */
import { CellError, type Grid } from "../../cells/values";
import { englishFew } from "../../xlsx/english-remarks";
import { few } from "../../xlsx/remarks";
import { writtenAnswer } from "../written-answer";
import type { NotCounted, Season } from "./season";
import { namesPlots, plotOf, tableBy, tableColumns } from "./tables";

/** So many lines about one thing are read; the workbook and --json have them all. */
const mostLines = 25;

export function report(season: Season, files: number): string {
  const { notCounted, alike } = season;
  return [
    summary(season, files),
    "",
    ...part("Taken from the headings", takenLines(season)),
    ...part("Not counted", notCountedLines(notCounted)),
    ...part(
      "Counted twice?",
      alike.map(({ file, as, lots }) => `${file}: ${counted(lots, "lot", "lots")} as in ${as}`),
    ),
    ...(season.lots.length === 0 ? [] : tables(season)),
  ].join("\n");
}

function summary({ lots, unit }: Season, files: number): string {
  if (lots.length === 0) {
    return `No lot was found in ${counted(files, "file", "files")}. If the books have lots, say what their headings are: --columns "fresh=Leaf kg, finished=Tea kg"`;
  }
  const books = new Set(lots.map(({ file }) => file)).size;
  const open = lots.filter(({ finished }) => finished === undefined).length;
  return [
    `${counted(lots.length, "lot", "lots")} of ${counted(books, "book", "books")} (${counted(files, "file", "files")} read)`,
    unit === undefined
      ? "weights as they stand, since no heading names a unit"
      : `in ${unit}${unit === "jin" ? " of 500 g" : ""}`,
    open === 0 ? "all finished" : `${counted(open, "is", "are")} still open`,
  ].join(", ");
}

function tables({ lots, unit }: Season): string[] {
  const byBook = tableBy(lots, ({ file }) => file);
  const shown = (grid: Grid) => rounded(grid, unit);
  return [
    ...(namesPlots(lots) ? [shown(tableBy(lots, plotOf)), ""] : []),
    // A total of one book is that book.
    ...(namesPlots(lots) && byBook.length === 3 ? [] : [shown(byBook), ""]),
  ];
}

/** Without the columns of land, which no book gives, and in the decimals that a screen has room for. */
function rounded(grid: Grid, unit: Season["unit"]): string {
  const shown = tableColumns.flatMap(({ name }, column) => (/area/.test(name) ? [] : [column]));
  const isShare = (column: number) => tableColumns[column]?.quantity.format.includes("%") === true;
  const rows = grid.map((row, index) =>
    shown.map((column) => {
      const value = row[column] ?? "";
      if (index === 0 && unit !== undefined && /^(?:fresh|finished)$/.test(String(value))) return `${value} ${unit}`;
      if (typeof value !== "number") return value instanceof CellError ? value.code : value;
      return isShare(column) ? `${(value * 100).toFixed(1)}%` : Number(value.toFixed(3));
    }),
  );
  return writtenAnswer(rows).text;
}

/** Books with the same headings share a line. */
function takenLines({ columns }: Season): string[] {
  const ofFiles = new Map<string, string[]>();
  for (const { file, as, heading, unit, instead } of columns) {
    const among = instead
      ? `; ${instead.map((each) => `"${each}"`).join(" and ")} could be meant as well: say which with --columns`
      : "";
    const words = `${as} from "${heading}"${unit === undefined ? "" : ` (${unit})`}${among}`;
    ofFiles.set(file, [...(ofFiles.get(file) ?? []), words]);
  }
  const byWords = new Map<string, string[]>();
  for (const [file, words] of ofFiles) {
    const key = words.join(", ");
    byWords.set(key, [...(byWords.get(key) ?? []), file]);
  }
  return [...byWords].map(([words, files]) => `${englishFew(few(files))}: ${words}`);
}

/** What has the same reason shares a line: the cells of a sheet, or else whole files. */
function notCountedLines(notCounted: readonly NotCounted[]): string[] {
  const groups = new Map<string, { readonly where: string; readonly named: string[]; readonly why: string }>();
  for (const { file, sheet, cell, why } of notCounted) {
    const where = sheet === undefined ? "" : `${file}, ${sheet}`;
    const group = groups.get(`${where} ${why}`) ?? { where, named: [], why };
    groups.set(`${where} ${why}`, group);
    if (sheet === undefined) group.named.push(file);
    else if (cell !== undefined) group.named.push(cell);
  }
  return [...groups.values()].map(({ where, named, why }) => {
    const places = [where, named.length > 0 ? englishFew(few(named)) : ""].filter((each) => each !== "").join(", ");
    return `${places}: ${why}`;
  });
}

function part(title: string, lines: readonly string[]): string[] {
  if (lines.length === 0) return [];
  const more = lines.length - mostLines;
  const rest = more > 0 ? [`  and ${more.toLocaleString("en")} more: --out and --json have them all`] : [];
  return [title, ...lines.slice(0, mostLines).map((line) => `  ${line}`), ...rest, ""];
}

export const counted = (count: number, one: string, several: string): string =>
  `${count.toLocaleString("en")} ${count === 1 ? one : several}`;
