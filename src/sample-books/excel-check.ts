import { catalogue } from "../core/catalogue";
import type { Expected } from "../core/define";
import { cellOf, idInCell, idInPlainName, rowsOf } from "../core/describe";
import { calledByName, callsByName } from "../named-formulas/calls";
import { formulaPieces } from "../workbook/formula";
import { type Cell, isErrorCode, type Sheet, type Style, type Workbook } from "../workbook/workbook";
import { columnHeadLeft, remark, title } from "./look";

interface Line {
  readonly what: string;
  readonly formula: string;
  readonly expected: number | string;
}

/**
 * What only a real Excel can show, with the form in which a file holds a function first of all. The first three lines,
 * a number and two errors in C5 to C7, are an argument of later ones; G1 to G3 are blank.
 */
const behaviour: readonly Line[] = [
  {
    what: "the form in which a file holds a function: #NAME? here means that it is wrong, or that no add-in is loaded",
    formula: "=TEA.TARGETWEIGHT(320,0.75,0.6)",
    expected: 200,
  },
  {
    what: "a refusal; point at the cell's error sign: the message must name moisture and end in got 76",
    formula: "=TEA.TARGETWEIGHT(320,76,0.6)",
    expected: "#VALUE!",
  },
  {
    what: "an error in an argument comes back as that error",
    formula: "=TEA.TARGETWEIGHT(NA(),0.75,0.6)",
    expected: "#N/A",
  },
  { what: "another error does so too", formula: "=TEA.TARGETWEIGHT(1/0,0.75,0.6)", expected: "#DIV/0!" },
  {
    what: "a reading that is still blank makes the answer wait",
    formula: "=TEA.TARGETWEIGHT(G1,0.75,0.6)",
    expected: "",
  },
  {
    what: "an optional argument left out between two others",
    formula: '=INDEX(TEA.DRYINGSTEPS(320,0.75,{0.6},,{"pan"}),3,1)',
    expected: "pan",
  },
  {
    what: "so does one that the functions cannot throw, and keeps its code",
    formula: "=TEA.TARGETWEIGHT(INDEX(G1:G2,3),0.75,0.6)",
    expected: "#REF!",
  },
  {
    what: "an error inside a column stays in its row",
    formula: "=INDEX(TEA.TARGETWEIGHT(C5:C7,0.75,0.6),3)",
    expected: "#N/A",
  },
  {
    what: "the other rows of such a column keep their numbers",
    formula: "=INDEX(TEA.DRYMATTER(C5:C7,0.5),1)",
    expected: 100,
  },
  { what: "a column of blank cells gives as many answers", formula: "=ROWS(TEA.DRYMATTER(G1:G3,0.5))", expected: 3 },
  {
    what: "none of which is a number: a blank cell is not 0",
    formula: "=COUNT(TEA.DRYMATTER(G1:G3,0.5))",
    expected: 0,
  },
  { what: "a column by a row gives a block", formula: "=SUM(TEA.DRYMATTER({100;200},{0.5,0.75}))", expected: 225 },
  {
    what: "text is refused, also when it reads like a number",
    formula: '=TEA.DRYMATTER(100,"50%")',
    expected: "#VALUE!",
  },
  { what: "a percentage is a number", formula: "=TEA.DRYMATTER(100,50%)", expected: 50 },
  { what: "a time is a number", formula: "=TEA.TURNTIMES(TIME(12,0,0),TIME(6,0,0),TIME(3,0,0))", expected: 0.625 },
  { what: "a table comes whole, with its headings", formula: "=ROWS(TEA.LOSSMEANINGS(320,0.75,0.3))", expected: 4 },
  { what: "and without them", formula: "=ROWS(TEA.LOSSMEANINGS(320,0.75,0.3,FALSE))", expected: 3 },
];

/** Of an example that gives many cells, the last that holds a number. */
function telling(gives: Expected): { row: number; column: number; value: number | string } {
  const cells = rowsOf(gives).flatMap((row, rowIndex) =>
    row.map((value, column) => ({ row: rowIndex + 1, column: column + 1, value })),
  );
  const found = cells.findLast(({ value }) => typeof value === "number") ?? cells.at(-1);
  if (found === undefined) throw new Error("an example gives at least one cell");
  return found;
}

const examples = (): Line[] =>
  catalogue.flatMap(({ spec, page }) =>
    page.examples.map(({ given, gives, shows }) => {
      const { row, column, value } = telling(gives);
      return { what: shows, formula: cellOf(spec, given, row, column), expected: value };
    }),
  );

/** As ERROR.TYPE counts them. */
const errorTypes: Readonly<Record<string, number>> = { "#DIV/0!": 2, "#VALUE!": 3, "#REF!": 4, "#N/A": 7 };

/** Plain worksheet arithmetic: what checks the add-in must not depend on it. */
function agrees(row: number, expected: number | string): string {
  const [answer, wanted] = [`C${row}`, `E${row}`];
  const errorType = errorTypes[expected];
  if (errorType !== undefined) return yesOrNo(`IF(ISERROR(${answer}),ERROR.TYPE(${answer})=${errorType},FALSE)`);
  if (typeof expected === "number") {
    return yesOrNo(`IF(ISNUMBER(${answer}),ABS(${answer}-${wanted})<=1/10^9*MAX(1,ABS(${wanted})),FALSE)`);
  }
  const text = expected.replaceAll('"', '""');
  return yesOrNo(`IF(ISERROR(${answer}),FALSE,${answer}="${text}")`);
}

const yesOrNo = (test: string): string => `=IF(${test},"yes","no")`;

const firstRow = 5;
const wrapped: Style = { wrap: true };
const exact: Style = { format: "General", align: "left" };

/** The examples that a named formula answers too, for an Excel without the add-in, on a phone for one. */
const byName = (): Line[] =>
  examples().flatMap(({ formula, ...line }) => {
    const named = calledByName(formula);
    return named === undefined ? [] : [{ ...line, formula: named }];
  });

/** A book that a person with Excel opens to see that the add-in works there: a formula, what it must give, agrees? */
export const excelCheck = (): Workbook => ({
  name: "Excel check",
  sheets: [
    sheetOf("Check", [...behaviour, ...examples()], {
      title: "Check of the functions in Excel",
      remark: "Recalculate with Ctrl+Alt+F9 first. How to read it: docs/excel-check.md.",
      isOurs: (name) => idInCell(name) !== undefined,
    }),
    sheetOf("Named formulas", byName(), {
      title: "Check of the named formulas, which need no add-in",
      remark: "Enable editing first. How to read it: docs/without-the-add-in.md.",
      isOurs: (name) => idInPlainName(name) !== undefined,
    }),
  ],
});

interface Look {
  readonly title: string;
  readonly remark: string;
  readonly isOurs: (name: string) => boolean;
}

function sheetOf(name: string, lines: readonly Line[], look: Look): Sheet {
  const lastRow = firstRow + lines.length - 1;
  const all = `F${firstRow}:F${lastRow}`;
  const cells: Cell[] = [
    { row: 0, column: 0, value: look.title, style: title },
    { row: 1, column: 0, value: look.remark, style: remark },
    { row: 2, column: 0, value: "Agree" },
    { row: 2, column: 1, formula: `=COUNTIF(${all},"yes")&" of "&ROWS(${all})`, style: { bold: true } },
    ...["Function", "What it shows", "Formula", "Formula as text", "Expected", "Agrees?"].map((value, column) => ({
      row: 3,
      column,
      value,
      style: columnHeadLeft,
    })),
    ...lines.flatMap(({ what, formula, expected }, index): Cell[] => {
      const row = firstRow + index;
      const called = formulaPieces(formula).find(({ text }) => look.isOurs(text))?.text ?? "";
      return [
        { row: row - 1, column: 0, value: called },
        { row: row - 1, column: 1, value: what, style: wrapped },
        { row: row - 1, column: 2, ...answering(formula, expected), style: exact },
        { row: row - 1, column: 3, value: ` ${formula}`, style: wrapped },
        // The name of an error is a text here, not the error itself.
        {
          row: row - 1,
          column: 4,
          value: expected === "" ? "(empty)" : expected,
          ...(isErrorCode(expected) && { isText: true }),
          style: exact,
        },
        { row: row - 1, column: 5, formula: agrees(row, expected), style: { bold: true } },
      ];
    }),
  ];
  return {
    name,
    cells,
    columnWidths: { 0: 24, 1: 50, 2: 14, 3: 60, 4: 14, 5: 10 },
    rowHeights: {},
    merges: [],
    frozenRows: 4,
  };
}

/** The engine knows no LAMBDA in names: until a spreadsheet works it out, a named formula has the stored answer. */
const answering = (formula: string, expected: number | string): Pick<Cell, "formula" | "value" | "spill"> =>
  callsByName(formula) ? { formula, value: expected, spill: { rows: 1, columns: 1 } } : { formula };
