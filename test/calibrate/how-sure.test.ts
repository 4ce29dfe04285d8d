import { describe, expect, test } from "vitest";
import { isTheSame, measurementOf, sumsOf } from "../../src/calibrate/measure";
import { studies } from "../../src/calibrate/studies";
import { catalogue } from "../../src/core/catalogue";
import { asMarkdown } from "../../src/generate/blocks";
import { functionPages } from "../../src/generate/function-pages";
import { headingOf, howSurePage, pictureOf } from "../../src/generate/how-sure-page";
import { hashOf, type MeasuredStudy, measuredStudies, runningCode, shownCell } from "../../src/generate/measured";
import { picture } from "../../src/generate/picture";

const kept = measuredStudies(".");

test("every study was measured, and nothing else", () => {
  expect(kept.map(({ file }) => file)).toEqual(Object.keys(studies).map((name) => `src/calibrate/studies/${name}.ts`));
});

describe.each(Object.entries(studies))("%s", (name, study) => {
  const measured = kept.find(({ file }) => file.endsWith(`/${name}.ts`)) as MeasuredStudy;

  test("was measured as it stands there", () => {
    const { functions, seed, says, picture } = study;
    expect({ functions, seed, says, picture }).toEqual({
      functions: measured.functions,
      seed: measured.seed,
      says: measured.says,
      picture: measured.picture,
    });
    expect(
      study.tables.map(({ situations, ...table }) => ({ ...table, rows: situations.map(({ label }) => label) })),
    ).toEqual(measured.tables.map(({ rows, ...table }) => ({ ...table, rows: rows.map(({ label }) => label) })));
    expect(measured.picture.columns.length).toBeLessThanOrEqual(4);
    for (const id of functions) expect(catalogue.map(({ spec }) => spec.id)).toContain(id);
  });

  test("was measured with the code that there is", () => {
    expect(hashOf(".", measured.file), "npm run calibrate").toBe(measured.hash);
  });

  test("comes to the same sums in the first tenth of every row", () => {
    for (const { trials } of study.tables) expect(Number.isInteger(trials / 10)).toBe(true);
    expect(isTheSame(study, measured)).toBe(true);
    const [table, ...others] = measured.tables as [MeasuredStudy["tables"][0]];
    const [row, ...rest] = table.rows as [MeasuredStudy["tables"][0]["rows"][0]];
    const off = { ...row, tenth: row.tenth.map((sum, column) => (column === 0 ? sum + 1 : sum)) };
    expect(isTheSame(study, { ...measured, tables: [{ ...table, rows: [off, ...rest] }, ...others] })).toBe(false);
  });

  test("has a tenth that goes with the whole, within five standard errors", () => {
    for (const { rows, columns, trials } of measured.tables) {
      for (const { sums, squares, tenth } of rows) {
        columns.forEach((_, column) => {
          const [sum, square, part] = [sums, squares, tenth].map((list) => list[column] as number) as Three;
          const variance = Math.max(square / trials - (sum / trials) ** 2, 1 / trials);
          expect(Math.abs(part / (trials / 10) - sum / trials)).toBeLessThan(5 * Math.sqrt((variance * 9) / trials));
        });
      }
    }
  });

  test("has the words on the pages of its functions that rest on it", () => {
    for (const { on, words } of study.quotes(measurementOf(measured))) {
      const guide = catalogue.find(({ spec }) => spec.id === on)?.page.guide.join("\n");
      expect(guide, on).toContain(words);
    }
    expect(study.quotes(measurementOf(measured)).length).toBeGreaterThan(0);
  });

  test("stands on the page, and every function's page leads to it", () => {
    expect(asMarkdown(howSurePage(kept))).toContain(`## ${headingOf(measured)}\n`);
    const pages = functionPages(catalogue, kept);
    for (const id of study.functions) {
      const page = asMarkdown(pages.find(({ name: file }) => file === id.toLowerCase()) as (typeof pages)[0]);
      expect(page).toContain(`](../${pictureOf(measured)})`);
      expect(page).toMatch(/\]\(\.\.\/how-sure\.md#tea[a-z-]+\)/);
    }
  });

  test("has a picture that says in words what it shows, and is read in the dark", () => {
    const drawn = picture(measured);
    const table = measured.tables[measured.picture.table] as MeasuredStudy["tables"][0];
    const column = table.columns.findIndex(({ name: of }) => of === measured.picture.columns[0]);
    const value = shownCell(table, table.rows[0] as (typeof table.rows)[0], column).value;
    expect(drawn).toMatch(/^<svg [^>]*role="img" aria-labelledby="title words">/);
    expect(/<desc id="words">(.*?)<\/desc>/s.exec(drawn)?.[1]).toContain(`${table.rows[0]?.label} ${value.toFixed(1)}`);
    expect(drawn).toContain("prefers-color-scheme:dark");
    expect(drawn).not.toContain("NaN");
  });

  test("has a hash that holds the function and none of the words that explain it", () => {
    const code = runningCode(".", measured.file);
    for (const { page } of catalogue) {
      expect([page.summary, ...page.guide].filter((words) => code.includes(words))).toEqual([]);
    }
    for (const id of study.functions) {
      const columns = catalogue.find(({ spec }) => spec.id === id)?.spec.parameters.map((parameter) => parameter.name);
      if (id !== "FINISHEDBAND") expect(code).toContain(`"${columns?.[0]}"`);
    }
  });
});

type Three = [number, number, number];

test("counts stay what they are when another study is put before or behind", () => {
  const [first] = Object.values(studies) as [(typeof studies)[string]];
  expect(sumsOf(first, 0, 0, 50)).toEqual(sumsOf(first, 0, 0, 50));
  expect(sumsOf(first, 0, 0, 50)).not.toEqual(sumsOf(first, 0, 1, 50));
});

describe("a cell of a table", () => {
  const table = {
    title: "",
    rowsAre: "",
    trials: 400,
    columns: [
      { name: "a", of: "share" },
      { name: "b", of: "mean" },
      { name: "c", of: "root mean square" },
    ],
    rows: [],
  } as const;

  test("shows a share of 100, a mean and a root mean square with their standard errors", () => {
    const row = { label: "", sums: [100, 800, 1600], squares: [100, 2000, 8000], tenth: [] };
    expect(shownCell(table, row, 0).value).toBe(25);
    // √(0.25 × 0.75 / 400)
    expect(shownCell(table, row, 0).error).toBeCloseTo(2.165_063_5, 6);
    // Mean 2, mean square 5: variance 1, √(1/400).
    expect(shownCell(table, row, 1)).toEqual({ value: 2, error: 0.05 });
    // Mean square 4 with the variance 20 − 16 = 4: its error 0.1, that of its root 0.1 / (2 × 2).
    expect(shownCell(table, row, 2)).toEqual({ value: 2, error: 0.025 });
  });
});
