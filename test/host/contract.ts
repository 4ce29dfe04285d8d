/**
 * What every host keeps to, line by line of the port's comments (src/host/workbook-host.ts). The fake host and Excel's
 * run through it in contract.test.ts, the grid's in test/browser/host-contract.test.ts.
 */
import { beforeEach, describe, expect, test, vi } from "vitest";
import { HostProblem } from "../../src/host/host-problem";
import type { Block, CellContent, ReadArea, WorkbookHost } from "../../src/host/workbook-host";
import { addressOf } from "../../src/workbook/addresses";

/** A cell that holds a constant, or a formula with what it comes to. */
export type Put =
  | CellContent
  | { readonly content: CellContent; readonly value?: CellContent; readonly format?: string };

/** What stands in the workbook before each line is tried, by address. The first sheet is shown. */
export const book = {
  here: {
    A1: "One lot",
    B1: { content: 12, format: "0.0" },
    B2: { content: "=B1/4", value: 3 },
    B3: { content: "=1/0", value: "#DIV/0!" },
  },
  there: { A1: 5, A2: 6, A3: 7 },
} as const satisfies Record<string, Readonly<Record<string, Put>>>;

/** An answer that spills, on the first sheet: its formula, and where it stands. */
export const spilling = { formula: "=SEQUENCE(3)", at: "D2", over: "D2:D4", values: [1, 2, 3] } as const;

/** What a host that does not calculate is told of expressions; `{here}` and `{there}` stand for the sheets. */
export const expressions = [
  { expression: "ROUND(B1*1.05,0)", rows: [[13]] },
  { expression: "1/0", rows: [["#DIV/0!"]] },
  { expression: "A9", rows: [[""]], cells: ["here", "A9"] },
  { expression: "'{there}'!A1:A3", rows: [[5], [6], [7]], cells: ["there", "A1:A3"] },
] as const;

/** A host with the book, and a hand at it. */
export interface HostAtWork {
  readonly host: WorkbookHost;
  /** What the two sheets are called, and a name that stands for the first cell of the second one. */
  readonly here: string;
  readonly there: string;
  readonly name: string;
  select(sheet: string, address: string): Promise<void>;
  /** Types a constant into a cell. */
  type(sheet: string, address: string, content: CellContent): Promise<void>;
  protect(sheet: string): Promise<void>;
}

const problemOf = async (asked: Promise<unknown>): Promise<HostProblem> => {
  const problem = await asked.then(
    () => undefined,
    (thrown: unknown) => thrown,
  );
  expect(problem).toBeInstanceOf(HostProblem);
  // It can be shown as it is.
  expect((problem as HostProblem).message).toMatch(/^\p{Lu}.*\.$/su);
  return problem as HostProblem;
};

/** What stands in an area that was read, by address, without blanks. */
const contentsOf = ({ row, column, values }: ReadArea): Record<string, CellContent> =>
  Object.fromEntries(
    values.flatMap((line, down) =>
      line.flatMap((value, right) => (value === "" ? [] : [[addressOf(row + down, column + right), value] as const])),
    ),
  );

/** The lines about the selection, which a host without a workbook behind it can be tried on, too. */
export function selectionContract(open: () => Promise<Pick<HostAtWork, "host" | "here" | "select">>): void {
  test("gives what is selected, row by row: blanks as “”, errors as their code, formulas, formats", async () => {
    const { host, here, select } = await open();
    await select(here, "A1:B3");
    const area = await host.selection();
    expect(area).toMatchObject({ sheet: here, row: 0, column: 0, rows: 3, columns: 2 });
    expect(area.values).toEqual([
      ["One lot", 12],
      ["", 3],
      ["", "#DIV/0!"],
    ]);
    expect(area.formulas).toEqual([
      ["", ""],
      ["", "=B1/4"],
      ["", "=1/0"],
    ]);
    expect(area.formats.map((line) => line.length)).toEqual([2, 2, 2]);
    expect(area.formats[0]?.[1]).toBe("0.0");
  });

  test("speaks a language that has a tag", async () => {
    expect((await open()).host.language).toMatch(/^[a-z]{2,3}(-[A-Za-z0-9]+)*$/);
  });
}

export function hostContract(open: () => Promise<HostAtWork>): void {
  let at: HostAtWork;
  let host: WorkbookHost;
  beforeEach(async () => {
    at = await open();
    host = at.host;
  });

  describe("the selection", () => {
    selectionContract(async () => at);

    test.each([
      ["B:B", { column: 1, columns: 1 }, ["B1", "B2", "B3"]],
      ["1:1", { row: 0, rows: 1 }, ["A1", "B1"]],
    ])("of all of %s is read as far as the sheet is used", async (address, area, filled) => {
      await at.select(at.here, address);
      const read = await host.selection();
      expect(read).toMatchObject(area);
      expect(read.rows * read.columns).toBeLessThan(100);
      expect(Object.keys(contentsOf(read))).toEqual(filled);
    });

    test("is told of when it changes and when what it holds does, until that is no longer wanted", async () => {
      await at.select(at.here, "A1");
      const listener = vi.fn();
      const stop = host.onSelection(listener);
      await settled();
      await at.select(at.here, "B1");
      await vi.waitFor(() => expect(listener).toHaveBeenCalled(), patience);
      listener.mockClear();
      await at.type(at.here, "B1", 16);
      await vi.waitFor(() => expect(listener).toHaveBeenCalled(), patience);
      stop();
      await settled();
      listener.mockClear();
      await at.select(at.here, "A1");
      await settled();
      expect(listener).not.toHaveBeenCalled();
    });
  });

  describe("reading", () => {
    const beside = () => ({ sheet: at.here, row: 0, column: 0 });

    test("follows references, other sheets and names", async () => {
      expect(await host.read("A1:B1", beside())).toMatchObject({ sheet: at.here, values: [["One lot", 12]] });
      const there = { sheet: at.there, row: 0, column: 0, rows: 3, columns: 1, values: [[5], [6], [7]] };
      expect(await host.read(`'${at.there}'!A1:A3`, beside())).toMatchObject(there);
      expect(await host.read(at.name, beside())).toMatchObject({ sheet: at.there, values: [[5]] });
    });

    test("means by a reference without a sheet that of the cell beside", async () => {
      expect(await host.read("A1", { ...beside(), sheet: at.there })).toMatchObject({ values: [[5]] });
    });

    test.each(["Nowhere!A1", "Nothing_of_the_kind"])("says that there is no %s", async (address) => {
      const { reason, message } = await problemOf(host.read(address, beside()));
      expect([reason, message]).toEqual(["not here", expect.stringContaining(address)]);
    });

    test("gives the used cells of a sheet, of the one that is shown when none is named", async () => {
      await at.select(at.here, "A1");
      expect(contentsOf(await host.usedCells(at.there))).toEqual({ A1: 5, A2: 6, A3: 7 });
      const { sheet, ...shown } = await host.usedCells();
      expect([sheet, contentsOf({ sheet, ...shown })]).toMatchObject([at.here, { A1: "One lot", B1: 12, B2: 3 }]);
    });

    test("knows the cells of an answer that spills, its formula first, and of no other cell", async () => {
      const whole = { sheet: at.here, row: 1, column: 3, rows: 3, columns: 1 };
      for (const row of [1, 2, 3]) expect(await host.spillAround({ sheet: at.here, row, column: 3 })).toEqual(whole);
      expect(await host.spillAround({ sheet: at.here, row: 4, column: 3 })).toBeUndefined();
      expect(await host.spillAround({ sheet: at.here, row: 1, column: 1 })).toBeUndefined();
    });

    test("has no message for a cell without an error", async () => {
      expect(await host.errorMessage({ sheet: at.here, row: 0, column: 1 })).toBeUndefined();
    });
  });

  describe("working out", () => {
    test.each(expressions)("gives the rows of $expression", async ({ expression, rows }) => {
      const asked = expression.replace("{there}", at.there);
      expect(await host.evaluate(asked, { sheet: at.here, row: 8, column: 5 })).toEqual(rows);
    });

    test("says so where it cannot, and leaves every cell as it was", async () => {
      const before = await host.usedCells(at.here);
      await problemOf(host.evaluate("IF(", { sheet: at.here, row: 8, column: 5 }));
      await host.evaluate("1/0", { sheet: at.here, row: 8, column: 5 });
      expect(await host.usedCells(at.here)).toEqual(before);
      expect(typeof host.evaluatesUntouched).toBe("boolean");
    });
  });

  describe("writing", () => {
    const place = (): { sheet: string; row: number; column: number } => ({ sheet: at.here, row: 9, column: 5 });
    /** F10 to G12. */
    const block: Block = {
      rows: 3,
      columns: 2,
      cells: [
        { row: 0, column: 0, content: "Fresh weight", look: "label" },
        { row: 0, column: 1, content: 320, format: "0.0", look: "input" },
        { row: 1, column: 1, content: "", format: "0.0%", look: "input" },
        { row: 2, column: 1, content: "=G10/4", format: "0.00", look: "answer" },
      ],
    };

    test("puts constants, formulas and formats, and gives where", async () => {
      expect(await host.write(block, place())).toEqual({ written: { ...place(), rows: 3, columns: 2 } });
      const { values, formulas, formats } = await host.read("F10:G12", place());
      expect(values[0]).toEqual(["Fresh weight", 320]);
      expect(formulas).toEqual([
        ["", ""],
        ["", ""],
        ["", "=G10/4"],
      ]);
      expect(formats.map((line) => line[1])).toEqual(["0.0", "0.0%", "0.00"]);
      // Blank, with its format.
      expect(values[1]).toEqual(["", ""]);
    });

    test("leaves a cell as it is that a block leaves out", async () => {
      await at.type(at.here, "F11", "a remark");
      expect(await host.write(block, place())).toHaveProperty("written");
      expect((await host.read("F11", place())).values).toEqual([["a remark"]]);
    });

    test("writes over filled cells only when it is told to, and names them", async () => {
      await at.type(at.here, "G12", "mine");
      expect(await host.write(block, place())).toEqual({ filled: ["G12"] });
      expect(contentsOf(await host.read("F10:G12", place()))).toEqual({ G12: "mine" });
      expect(await host.write(block, place(), { over: true })).toHaveProperty("written");
      expect((await host.read("G12", place())).formulas).toEqual([["=G10/4"]]);
    });

    const spill: Block = {
      rows: 1,
      columns: 1,
      cells: [{ row: 0, column: 0, content: "=SEQUENCE(3)", format: "0.0", spill: { rows: 3, columns: 1 } }],
    };

    test("counts the cells that an answer spills into as well, and formats them", async () => {
      await at.type(at.here, "F12", "mine");
      expect(await host.write(spill, place())).toEqual({ filled: ["F12"] });
      expect(await host.write(spill, { ...place(), column: 6 })).toHaveProperty("written");
      expect((await host.read("G10:G12", place())).formats).toEqual([["0.0"], ["0.0"], ["0.0"]]);
      expect((await host.read("G10", place())).formulas).toEqual([["=SEQUENCE(3)"]]);
    });

    test.each(["=1+1", "1/2", "-5", "TRUE", "2025-04-13", "@home"])(
      "keeps the constant %s the text that it is",
      async (content) => {
        const cells = [{ row: 0, column: 0, content, isConstant: true }] as const;
        await host.write({ rows: 1, columns: 1, cells }, place());
        const { values, formulas } = await host.read("F10", place());
        expect([values, formulas]).toEqual([[[content]], [[""]]]);
      },
    );

    test("says so where the sheet is no longer there", async () => {
      await problemOf(host.write(block, { ...place(), sheet: "Gone meanwhile" }));
    });

    test("adds an empty sheet by the name wished for, or the like where that is taken", async () => {
      const names = [await host.addSheet("Job's plan"), await host.addSheet("Job's plan")];
      expect(names[0]).toMatch(/^Job's plan/);
      expect(names[1]).toMatch(/^Job's plan/);
      expect(names[1]).not.toBe(names[0]);
      expect(await host.usedCells(names[1])).toMatchObject({ rows: 1, columns: 1, values: [[""]], formulas: [[""]] });
      expect(await host.write(block, { ...place(), sheet: names[1] as string })).toHaveProperty("written");
    });

    test("draws a chart where it says that it does, and says so where it does not", async () => {
      const table = { sheet: at.there, row: 0, column: 0, rows: 3, columns: 1 };
      const asked = host.addChart({ title: "Outturn", names: table, values: table, beside: table });
      if (host.drawsCharts) expect(await asked).toBeUndefined();
      else await problemOf(asked);
    });
  });

  describe("the formulas of the whole workbook", () => {
    /** B2 of the first sheet. */
    const change = { row: 1, column: 1, was: "=B1/4", formula: "=B1/3" };
    const name = "Tea_tried";
    const formulaOf = async () => (await host.formulasWith(name)).names.map(({ formula }) => formula);

    test("are changed where it says so, and where it does not, it says that", async () => {
      if (host.changesFormulas) return void expect(await host.formulasWith(name)).toMatchObject({ names: [] });
      await problemOf(host.formulasWith(name));
      await problemOf(host.changeFormulas(at.here, [change]));
      await problemOf(host.putNames([{ name, formula: "=1" }]));
      await problemOf(host.takeNames([name]));
    });

    test("are found by what they hold, with what they show, on every sheet, and texts are none", async () => {
      if (!host.changesFormulas) return;
      await host.write(
        { rows: 1, columns: 1, cells: [{ row: 0, column: 0, content: "=b1+1", isConstant: true }] },
        {
          sheet: at.there,
          row: 5,
          column: 0,
        },
      );
      await host.write(
        { rows: 1, columns: 1, cells: [{ row: 0, column: 0, content: "=A1+b1" }] },
        {
          sheet: at.there,
          row: 6,
          column: 0,
        },
      );
      const { sheets } = await host.formulasWith("B1");
      expect(sheets.map(({ sheet, isProtected, cells }) => [sheet, isProtected, cells])).toEqual([
        [at.here, false, [{ row: 1, column: 1, formula: "=B1/4", value: 3 }]],
        [at.there, false, [{ row: 6, column: 0, formula: "=A1+b1", value: 0 }]],
      ]);
    });

    test("are found once where an answer spills", async () => {
      if (!host.changesFormulas) return;
      const { sheets } = await host.formulasWith("sequence(");
      const [here] = sheets.filter(({ cells }) => cells.length > 0);
      expect(here?.cells).toMatchObject([{ row: 1, column: 3, formula: spilling.formula, value: 1 }]);
    });

    test("become others, and the cells keep their formats", async () => {
      if (!host.changesFormulas) return;
      const before = await host.usedCells(at.here);
      expect(await host.changeFormulas(at.here, [change])).toEqual([]);
      const after = await host.usedCells(at.here);
      expect(after.formulas[1]?.[1]).toBe("=B1/3");
      expect(after.formats).toEqual(before.formats);
      expect(after.formulas.flat().filter((formula) => formula !== "=B1/3")).toEqual(
        before.formulas.flat().filter((formula) => formula !== "=B1/4"),
      );
    });

    test("stay where another one stands by now, and this is said", async () => {
      if (!host.changesFormulas) return;
      const late = { ...change, was: "=B1/5" };
      const left = await host.changeFormulas(at.here, [late, { ...change, row: 2, was: "=1/0", formula: "=2/0" }]);
      expect(left).toEqual([{ row: 1, column: 1, trouble: "another formula by now" }]);
      expect((await host.read("B2:B3", { sheet: at.here, row: 0, column: 0 })).formulas).toEqual([["=B1/4"], ["=2/0"]]);
    });

    test("stay on a protected sheet, and on one that is gone", async () => {
      if (!host.changesFormulas) return;
      await at.protect(at.here);
      const { sheets } = await host.formulasWith("B1");
      expect(sheets.find(({ sheet }) => sheet === at.here)?.isProtected).toBe(true);
      expect(await problemOf(host.changeFormulas(at.here, [change]))).toMatchObject({ reason: "protected" });
      expect(await problemOf(host.changeFormulas("Gone meanwhile", [change]))).toMatchObject({ reason: "gone" });
    });

    test("stand behind names that are put in, changed, and taken out", async () => {
      if (!host.changesFormulas) return;
      await host.putNames([{ name, formula: "=LAMBDA(x,x+1)", comment: "Tried." }]);
      expect(await formulaOf()).toEqual(["=LAMBDA(x,x+1)"]);
      await host.putNames([{ name, formula: "=LAMBDA(x,x+2)" }]);
      expect((await host.formulasWith("x+2")).names).toMatchObject([{ name, comment: "Tried." }]);
      await host.takeNames([name.toUpperCase(), "Never_there"]);
      expect(await formulaOf()).toEqual([]);
    });

    test("stand behind all names that are put in at once, or behind none", async () => {
      if (!host.changesFormulas) return;
      await host.putNames([{ name, formula: "=LAMBDA(x,x+1)" }]);
      const more = { name: `${name}_too`, formula: "=1" };
      // A reference is no name.
      const asked = [{ name, formula: "=LAMBDA(x,x+2)" }, more, { name: "R1C1", formula: "=1" }];
      await problemOf(host.putNames(asked));
      expect(await formulaOf()).toEqual(["=LAMBDA(x,x+1)"]);
    });
  });

  test("shows a cell of another sheet and selects it", async () => {
    await host.goTo({ sheet: at.there, row: 1, column: 0 });
    expect(await host.selection()).toMatchObject({ sheet: at.there, row: 1, column: 0, rows: 1, values: [[6]] });
  });
}

const patience = { timeout: 20_000, interval: 50 };
const settled = () => new Promise((done) => setTimeout(done, 300));
