import { tokenize } from "../workbook/formula";
import { partsOf, sheetInFormula } from "../workbook/references";
import type { Cell, Chart, Sheet, Workbook } from "../workbook/workbook";

/** By the names that the sources have for the sheets, of the language that the book speaks. */
type SheetNames = Readonly<Record<string, string>>;

/** The book with its sheets called otherwise, and every formula and chart that names one with them. */
export function withSheetNames(book: Workbook, names: SheetNames): Workbook {
  if (Object.entries(names).every(([name, other]) => name === other)) return book;
  return { ...book, sheets: book.sheets.map((sheet) => named(sheet, names)) };
}

function named(sheet: Sheet, names: SheetNames): Sheet {
  const cells = sheet.cells.map(
    (cell): Cell => (cell.formula === undefined ? cell : { ...cell, formula: renamed(cell.formula, names) }),
  );
  const charts = sheet.charts?.map(
    (chart): Chart => ({
      ...chart,
      series: chart.series.map((series) => ({
        ...series,
        across: renamed(series.across, names),
        up: renamed(series.up, names),
      })),
    }),
  );
  return { ...sheet, name: nameIn(names, sheet.name), cells, ...(charts && { charts }) };
}

/** A formula, or a reference alone. */
function renamed(formula: string, names: SheetNames): string {
  return tokenize(formula, { mergeRefs: false, withLocation: false })
    .map(({ type, value }) => {
      if (type !== "context" && type !== "context_quote") return value;
      const { sheet } = partsOf(`${value}!A1`);
      return sheetInFormula(nameIn(names, sheet ?? value));
    })
    .join("");
}

function nameIn(names: SheetNames, sheet: string): string {
  const name = names[sheet];
  if (name === undefined) throw new Error(`no language has a name for the sheet ${sheet}`);
  return name;
}
