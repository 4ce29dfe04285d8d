import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { CellError } from "../../src/cells/values";
import { catalogue } from "../../src/core/catalogue";
import { openInNode } from "../../src/engine/node-workbook";
import type { ReadArea } from "../../src/host/workbook-host";
import type { Job } from "../../src/jobs/job";
import { answersOf, type JobAnswer, readingsOf } from "../../src/jobs/job-answer";
import { blockAt } from "../../src/jobs/job-block";
import { jobs } from "../../src/jobs/jobs";
import { inEveryLanguage, sampleBooks } from "../../src/sample-books/sample-books";
import { findingsOf } from "../../src/sheet-check/findings-of";
import { headedCells } from "../../src/sheet-check/headed-cells";
import { insideOf } from "../../src/sheet-check/known-sheet";
import { english } from "../../src/words/en/messages";
import { languageIds } from "../../src/words/languages";
import { chinese } from "../../src/words/zh/messages";
import { addressOf } from "../../src/workbook/addresses";
import type { Area, Cell, Sheet } from "../../src/workbook/workbook";
import { readWorkbook } from "../../src/xlsx/read-workbook";

/** A sheet as a host would read it, and the spills that a host would tell. */
function asRead(sheet: string, cells: readonly Cell[]): { area: ReadArea; spills: Area[] } {
  const rows = Math.max(0, ...cells.map(({ row }) => row)) + 1;
  const columns = Math.max(0, ...cells.map(({ column }) => column)) + 1;
  const grid = <Content>(blank: Content, of: (cell: Cell) => Content | undefined): Content[][] => {
    const lines = Array.from({ length: rows }, () => new Array<Content>(columns).fill(blank));
    for (const cell of cells) (lines[cell.row] as Content[])[cell.column] = of(cell) ?? blank;
    return lines;
  };
  const area = {
    ...{ sheet, row: 0, column: 0, rows, columns },
    values: grid<number | string | boolean>("", ({ value }) => value),
    formulas: grid("", ({ formula }) => formula),
    formats: grid("General", ({ style }) => style?.format),
  };
  return { area, spills: cells.flatMap(({ row, column, spill }) => (spill ? [{ row, column, ...spill }] : [])) };
}

/** `rule: address` of everything found: with the spills that the host tells, and with those that the sheet shows. */
function found(sheet: string, cells: readonly Cell[]): readonly [string[], string[]] {
  const { area, spills } = asRead(sheet, cells);
  const lines = (known?: readonly Area[]) =>
    findingsOf(area, catalogue, known).map(({ rule, row, column }) => `${rule}: ${addressOf(row, column)}`);
  return [lines(spills), lines()];
}

const folder = resolve(__dirname, "../../sample-workbooks");
const inFirstLanguage = Object.keys(inEveryLanguage);
const inEnglishAlone = Object.keys(sampleBooks).filter(
  (name) => !name.includes("/") && !inFirstLanguage.includes(name),
);

/** Where the samples are typed into. */
const tinted = "#f7efd3";

/** What the samples plant on purpose. */
const planted: Readonly<Record<string, readonly string[]>> = {
  "season.xlsx Lots": [
    "finished above fresh: F42",
    "outturn far from the others: F28",
    "outturn far from the others: F59",
    "waits for a weight: F79",
    "waits for a weight: F80",
    "waits for a weight: F81",
  ],
  // The same lot, in the columns that read it.
  "season.xlsx Proof, lot by lot": ["finished above fresh: T42"],
  "season.xlsx One lot": ["more dry matter out than in: B12"],
  "excel-check.xlsx Check": ["C6", "C7", "C8", "C11", "C17"].map((at) => `a TEA function with an error: ${at}`),
};

describe("the sheet check on the sample workbooks", () => {
  const known = new Map<string, readonly Sheet[]>();
  /** Each file is read once for all tests. */
  const sheetsOf = (name: string): readonly Sheet[] => {
    const sheets = known.get(name) ?? readWorkbook(readFileSync(resolve(folder, name))).sheets;
    known.set(name, sheets);
    return sheets;
  };

  test.each([...inFirstLanguage, ...inEnglishAlone])("finds in %s what is planted there, and nothing else", (name) => {
    const sheets = sheetsOf(name);
    expect(sheets.length).toBeGreaterThan(0);
    for (const sheet of sheets) {
      const expected = planted[`${name} ${sheet.name}`] ?? [];
      expect(found(sheet.name, sheet.cells), `${name} ${sheet.name}`).toEqual([expected, expected]);
    }
  });

  const others = languageIds.slice(1).flatMap((language) => inFirstLanguage.map((name) => [name, language] as const));
  test.each(others)("finds the same in %s in the language %s", (name, language) => {
    const sheets = sheetsOf(name);
    for (const [index, sheet] of sheetsOf(`${language}/${name}`).entries()) {
      const expected = planted[`${name} ${sheets[index]?.name}`] ?? [];
      expect(found(sheet.name, sheet.cells), sheet.name).toEqual([expected, expected]);
    }
  });

  test.each(others)(
    "takes what is typed in %s in the language %s for what it takes it in the first",
    (name, language) => {
      const rolesIn = (book: string) =>
        sheetsOf(book).map(({ name: sheet, cells }) => {
          const { area, spills } = asRead(sheet, cells);
          const inputs = cells.filter(({ style, formula }) => style?.fill === tinted && formula === undefined);
          const places = new Set(inputs.map(({ row, column }) => addressOf(row, column)));
          return headedCells(area, insideOf(spills, area))
            .filter(({ row, column }) => places.has(addressOf(row, column)))
            .map(({ row, column, role, unit }) => `${addressOf(row, column)} ${role} ${unit ?? ""}`)
            .sort();
        });
      expect(rolesIn(`${language}/${name}`)).toEqual(rolesIn(name));
    },
  );
});

const wordings = {
  "in English": { messages: english, unit: "g" },
  "in Chinese": { messages: chinese, unit: "kg" },
} as const;
type Wording = (typeof wordings)[keyof typeof wordings];

/** Jobs below each other on a sheet, each so many blank rows below the one before. */
interface Stack {
  readonly name: string;
  readonly below: readonly Job[];
  readonly blankRows: number;
}

const stacks: readonly Stack[] = [
  ...jobs.map((job) => ({ name: job.id, below: [job], blankRows: 1 })),
  ...jobs.map((job) => ({ name: `${job.id}, three times`, below: [job, job, job], blankRows: 3 })),
  { name: "all of them", below: jobs, blankRows: 1 },
  { name: "all of them twice", below: [...jobs, ...jobs], blankRows: 3 },
];

/** The blocks of jobs as the pane writes them, and what is true of them. */
function written({ name, below, blankRows }: Stack, wording: Wording) {
  const cells: Cell[] = [];
  const expected: string[] = [];
  let row = 0;
  for (const job of below) {
    const readings = readingsOf(job, {}, wording);
    const answers = answersOf(job, readings, {}) as readonly JobAnswer[];
    const block = blockAt({ job, entries: {}, readings, answers, wording }, { sheet: name, row, column: 0 });
    for (const { row: down, column, content, format, spill } of block.cells) {
      if (content === "") continue;
      const isFormula = typeof content === "string" && content.startsWith("=");
      cells.push({
        ...{ row: row + down, column },
        ...(isFormula ? { formula: content } : { value: content }),
        ...(format !== undefined && { style: { format } }),
        ...(spill && { spill }),
      });
    }
    // Its example has a lot that is not finished yet.
    if (job.id === "season") expected.push(`waits for a weight: ${addressOf(row + 8, 2)}`);
    row += block.rows + blankRows;
  }
  return { name, cells, expected };
}

/** The stacks with what their formulas come to, each on a sheet of one workbook. */
async function calculated(wording: Wording) {
  const sheets = stacks.map((stack) => written(stack, wording));
  const layout = { columnWidths: {}, rowHeights: {}, merges: [] };
  const workbook = openInNode({ name: "test", sheets: sheets.map(({ name, cells }) => ({ name, cells, ...layout })) });
  await workbook.calculate();
  const withValues = sheets.map(({ name, cells, expected }) => {
    const shown = (row: number, column: number) => {
      const value = workbook.value(name, addressOf(row, column)) ?? "";
      return value instanceof CellError ? value.code : value;
    };
    const all = cells.flatMap((cell): Cell[] => {
      const { rows, columns } = cell.spill ?? { rows: 1, columns: 1 };
      return Array.from({ length: rows * columns }, (_, index): Cell => {
        const at = { row: cell.row + Math.floor(index / columns), column: cell.column + (index % columns) };
        const format = cell.style && { style: cell.style };
        return { ...(index === 0 ? cell : { ...at, ...format }), value: shown(at.row, at.column) };
      });
    });
    return { name, cells: all, expected };
  });
  workbook.close();
  return withValues;
}

describe.each(Object.entries(wordings))("the sheet check on the blocks of the jobs, %s", (_, wording) => {
  let sheets: Awaited<ReturnType<typeof calculated>>;
  beforeAll(async () => {
    sheets = await calculated(wording);
  });

  test.each(stacks.map(({ name }, index) => [name, index] as const))(
    "finds in %s what is true, and nothing else",
    (name, index) => {
      const { cells, expected } = sheets[index] as (typeof sheets)[number];
      expect(cells.some(({ formula, value }) => formula !== undefined && value !== "")).toBe(true);
      expect(found(name, cells)).toEqual([expected, expected]);
    },
  );
});
