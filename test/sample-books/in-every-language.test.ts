import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { inEveryLanguage } from "../../src/sample-books/sample-books";
import { languageIds } from "../../src/words/languages";
import { addressOf } from "../../src/workbook/addresses";
import type { Cell, Sheet, Workbook } from "../../src/workbook/workbook";
import { readWorkbook } from "../../src/xlsx/read-workbook";

const read = (path: string): Workbook => readWorkbook(new Uint8Array(readFileSync(`sample-workbooks/${path}`)));
const [first, ...others] = languageIds;
const books = others.flatMap((language) => Object.keys(inEveryLanguage).map((name) => ({ language, name })));

/** What stands where, as far as every language has the same: numbers, dates and times to ten decimals. */
const numbersOf = ({ cells }: Sheet): string[] =>
  cells
    .flatMap(({ row, column, value, style }) =>
      typeof value === "number" ? [`${addressOf(row, column)} ${value.toFixed(10)} ${style?.fill ?? ""}`] : [],
    )
    .sort();

const wordsIn = ({ value, formula, note, style }: Cell, isAnswer: boolean): string[] => [
  ...(typeof value === "string" && formula === undefined && !isAnswer ? [value] : []),
  ...(formula?.match(/"(?:[^"]|"")*"/g) ?? []),
  ...(note === undefined ? [] : [note]),
  ...(style?.format?.match(/"[^"]*"/g) ?? []),
];

/** Everything that the book says itself: texts, notes, what formulas say, charts, footers. Functions answer in English. */
function wordsOf({ name, cells, charts = [], page, tables = [] }: Sheet): string[] {
  const spills = cells.flatMap(({ row, column, spill }) => (spill ? [{ row, column, ...spill }] : []));
  const isAnswer = ({ row, column }: Cell) =>
    spills.some(
      (at) => row >= at.row && row < at.row + at.rows && column >= at.column && column < at.column + at.columns,
    );
  const ofCell = (cell: Cell): string[] => wordsIn(cell, isAnswer(cell));
  const ofCharts = charts.flatMap(({ title, description, series, across, up }) => [
    ...[title, description, across.title, up.title],
    ...series.map((each) => each.name),
  ]);
  // Codes of a footer, such as `&P`, are no words.
  const footer = page?.footer?.replace(/&[A-Z]/g, "") ?? "";
  return [name, footer, ...tables.map((table) => table.name), ...ofCharts, ...cells.flatMap(ofCell)];
}

/** What functions say in cells, and signs of arithmetic: the same in every language. */
const fromFunctions =
  /^"?(ln t|ln\(−ln R\)|\(R ln R\)²|start|(<>)?total|agrees|high|low|in|out|opening|closing|overruns|left over|(less|more) .*|water|weight|points|a package short .*|mean below .*|too many short .*|does not balance.*|no moisture: .*|finishedWeights|freshWeights)"?$/;

describe.each(books)("$language/$name", ({ language, name }) => {
  const [book, other] = [read(name), read(`${language}/${name}`)];

  it(`has the numbers of the book in ${first}, each in its place`, () => {
    expect(other.sheets.map(numbersOf)).toEqual(book.sheets.map(numbersOf));
    expect(other.sheets.map(({ frozenRows }) => frozenRows)).toEqual(book.sheets.map(({ frozenRows }) => frozenRows));
  });

  it("says in its own words what the other says in its own", () => {
    const counted = (sheets: Workbook["sheets"]) => sheets.map(({ cells }) => cells.filter(({ note }) => note).length);
    expect(counted(other.sheets)).toEqual(counted(book.sheets));
    const said = new Set(book.sheets.flatMap(wordsOf));
    const left = [...new Set(other.sheets.flatMap(wordsOf))].filter(
      (words) => said.has(words) && /[a-z]{2}/.test(words),
    );
    expect(left.filter((words) => !fromFunctions.test(words))).toEqual([]);
  });
});
