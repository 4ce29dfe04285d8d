/** The formulas of a whole workbook in Excel: how much is asked at once, and what Excel has of its own. */
import { beforeEach, describe, expect, test, vi } from "vitest";
import type { FormulaChange } from "../../../src/host/workbook-host";
import { ExcelWorkbookHost } from "../../../src/pages/excel/excel-workbook-host";
import { carryOut, readBook } from "../../../src/without-add-in/carry-out";
import { planOf } from "../../../src/without-add-in/plan";
import { FakeExcel } from "./fake-excel";

let excel: FakeExcel;
let host: ExcelWorkbookHost;
let knows = 1.12;

beforeEach(() => {
  excel = new FakeExcel();
  knows = 1.12;
  vi.stubGlobal("Excel", excel);
  const requirements = { isSetSupported: (_: string, version: string) => Number(version) <= knows };
  vi.stubGlobal("Office", { context: { displayLanguage: "en-US", requirements } });
  host = new ExcelWorkbookHost();
});

/** A column of calls, from row 1 on. */
const column = (rows: number, call = "OUTTURN") =>
  Object.fromEntries(
    Array.from({ length: rows }, (_, index) => [
      `C${index + 1}`,
      { formula: `=TEA.${call}(A${index + 1},B${index + 1})`, value: 0.2 },
    ]),
  );

const changesIn = (rows: number): FormulaChange[] =>
  Array.from({ length: rows }, (_, row) => ({
    ...{ row, column: 2, was: `=TEA.OUTTURN(A${row + 1},B${row + 1})` },
    formula: `=TEA_OUTTURN(A${row + 1},B${row + 1})`,
  }));

const formulaAt = (address: string) => excel.cell("Lots", address)?.formula;

describe("reading", () => {
  test("asks a few times for a sheet, however many formulas it has", async () => {
    excel.addSheet("Lots", column(5_000));
    excel.addSheet("Notes", { A1: "nothing" });
    const { sheets } = await host.formulasWith("TEA");
    expect(sheets.map(({ cells }) => cells.length)).toEqual([5_000, 0]);
    expect(excel.syncs).toBeLessThanOrEqual(6);
  });

  test("asks for a large sheet part by part, and loses nothing where they meet", async () => {
    excel.addSheet("Lots", { Z1: 1, ...column(2_000), A2000: 1 });
    const { sheets } = await host.formulasWith("TEA");
    expect(sheets[0]?.cells.map(({ row }) => row)).toEqual(Array.from({ length: 2_000 }, (_, row) => row));
    expect(excel.syncs).toBeGreaterThan(6);
  });

  test("gives a spill once where Excel shows its formula in each of its cells, and equal formulas each", async () => {
    const formula = "=TEA.CHARGESPLIT($A$1,100,1)";
    const one = { formula, value: 90 };
    excel.addSheet("Lots", { B2: one, B3: one, B4: one, B5: one, C5: one }, { spills: { B2: "B2:B4" } });
    const { sheets } = await host.formulasWith("TEA");
    expect(sheets[0]?.cells.map(({ row, column }) => [row, column])).toEqual([
      [1, 1],
      [4, 1],
      [4, 2],
    ]);
  });

  test("reads what Excel shows as in a file while the add-in has not come up", async () => {
    excel.addSheet("Lots", { A3: { formula: "=_xldudf_TEA_OUTTURN(A1,A2)", value: "#NAME?" } });
    const { sheets } = await host.formulasWith("TEA");
    expect(sheets[0]?.cells[0]?.formula).toBe("=TEA.OUTTURN(A1,A2)");
    const change = { row: 2, column: 0, was: "=TEA.OUTTURN(A1,A2)", formula: "=TEA_OUTTURN(A1,A2)" };
    expect(await host.changeFormulas("Lots", [change])).toEqual([]);
    expect(excel.cell("Lots", "A3")?.formula).toBe("=TEA_OUTTURN(A1,A2)");
  });
});

describe("writing", () => {
  test("writes a sheet in one request", async () => {
    excel.addSheet("Lots", column(3_000));
    expect(await host.changeFormulas("Lots", changesIn(3_000))).toEqual([]);
    expect(excel.batches).toHaveLength(1);
    expect(excel.syncs).toBe(3);
    expect([formulaAt("C1"), formulaAt("C3000")]).toEqual(["=TEA_OUTTURN(A1,B1)", "=TEA_OUTTURN(A3000,B3000)"]);
  });

  test("finds the cells that Excel refuses, and changes all others", async () => {
    excel.addSheet("Lots", column(40));
    for (const address of ["C7", "C8", "C31"]) excel.refusedCells.add(`Lots!${address}`);
    const left = await host.changeFormulas("Lots", changesIn(40));
    expect(left.map(({ row }) => row)).toEqual([6, 7, 30]);
    expect(left[0]?.trouble).toEqual({ kind: "not done", code: "InvalidOperation" });
    const after = changesIn(40).map(({ row }) => String(formulaAt(`C${row + 1}`)).startsWith("=TEA_"));
    expect(after.filter((isChanged) => !isChanged)).toHaveLength(3);
  });

  test("keeps a formula one in a cell that is formatted as text", async () => {
    excel.addSheet("Lots", { C1: { formula: "=TEA.OUTTURN(A1,B1)", value: 0.2, format: "@" } });
    await host.changeFormulas("Lots", changesIn(1));
    const [batch] = excel.batches;
    expect(batch?.map((change) => change.split(" ")[0])).toEqual(["formats", "formulas", "formats"]);
    expect(excel.cell("Lots", "C1")).toMatchObject({ formula: "=TEA_OUTTURN(A1,B1)", format: "@" });
  });

  test("stops while a cell is typed in", async () => {
    excel.addSheet("Lots", column(3));
    excel.refuse = "InvalidOperationInCellEditMode";
    await expect(host.changeFormulas("Lots", changesIn(3))).rejects.toMatchObject({ reason: "busy" });
  });
});

test("an Excel that is too old says so, and is left alone", async () => {
  knows = 1.11;
  excel.addSheet("Lots", column(3));
  const asked = [
    host.formulasWith("TEA"),
    host.changeFormulas("Lots", changesIn(3)),
    host.putNames([{ name: "TEA_X", formula: "=1" }]),
    host.takeNames(["TEA_X"]),
  ];
  for (const each of asked) await expect(each).rejects.toMatchObject({ trouble: "not in this Excel" });
  expect(excel.syncs).toBe(0);
});

test("a workbook goes to named formulas and back, to the formulas and names that it had", async () => {
  excel.addSheet("Lots", { ...column(30), D1: { formula: "=TEA.LOTFLAG(A1,A2:A9,B2:B9)", value: "" } });
  excel.names.set("Pan", { type: "Range", value: "", formula: "=Lots!$A$1" });
  const formulas = () => [...(excel.sheets.get("Lots")?.cells.values() ?? [])].map(({ formula }) => formula);
  const before = formulas();
  const options = { keepsNames: false, onProgress: () => undefined };

  const there = planOf(await readBook(host), "to names");
  expect(there.without).toEqual(["LOTFLAG"]);
  const outcome = await carryOut(host, there, options);
  expect([outcome.formulas, outcome.left, outcome.sheetsLeft, outcome.others]).toEqual([30, [], [], []]);
  expect(formulas().slice(0, 2)).toEqual(["=TEA_OUTTURN(A1,B1)", "=TEA_OUTTURN(A2,B2)"]);
  expect([...excel.names.keys()]).toEqual(["Pan", ...outcome.put]);
  expect(outcome.put).toContain("TEA_OUTTURN");
  // As typed: none of the marks of a file.
  for (const { formula } of excel.names.values()) expect(formula).not.toContain("_xl");

  const back = await carryOut(host, planOf(await readBook(host), "back"), options);
  expect(formulas()).toEqual(before);
  expect([back.formulas, [...back.takenOut].sort()]).toEqual([30, [...outcome.put].sort()]);
  expect([...excel.names.keys()]).toEqual(["Pan"]);
});
