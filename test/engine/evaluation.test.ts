import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { CellError } from "../../src/cells/values";
import { type NodeWorkbook, openInNode } from "../../src/engine/node-workbook";
import { placeOf } from "../../src/workbook/addresses";
import type { Sheet } from "../../src/workbook/workbook";

let book: NodeWorkbook;

function sheet(name: string, cells: Readonly<Record<string, string | number>>): Sheet {
  const held = Object.entries(cells).map(([address, content]) => ({
    ...placeOf(address),
    ...(typeof content === "string" && content.startsWith("=") ? { formula: content } : { value: content }),
  }));
  return { name, cells: held, columnWidths: {}, rowHeights: {}, merges: [] };
}

beforeAll(async () => {
  book = openInNode({
    name: "Trial",
    sheets: [
      sheet("Lot", {
        B2: 320,
        B3: "water",
        B4: 410,
        C2: "=TEA.DRYBASIS(0.5)",
        C3: "=IFERROR(TEA.DRYBASIS(76),2)",
        C4: "=TEA.DRYBASIS(76)",
        D2: "=TEA.TARGETWEIGHT(ROUND(B2*1.05,0),IF(B2>300,0.750,0.70),0.6)",
        E1: "=TEA.CHARGESPLIT(300,100,10)",
        F1: "=SUM(B2:B4)",
        F2: "=LET(w,B2*2,v,w/4,v+1)",
      }),
      sheet("Past lots", { A1: 0.75, A2: 0.6 }),
      // More than the engine calculates without giving others a turn.
      sheet("Many", Object.fromEntries(Array.from({ length: 1200 }, (_, row) => [`A${row + 1}`, "=ROW()+Lot!$B$2"]))),
    ],
  });
  await book.calculate();
});

afterAll(() => book.close());

const at = (expression: string, address = "D2") => book.evaluate(expression, "Lot", address);

describe("what an expression comes to", () => {
  test.each([
    ["ROUND(B2*1.05,0)", 336],
    ["IF(B2>300,0.750,0.70)", 0.75],
    ['IF(B2>300,"0.750",0.70)', "0.750"],
    ["INDEX(B2:B4,3)", 410],
    ["LET(w,B2*2,w/4)", 160],
    ["LET(w,B2*2,v,w/4,v+1)", 161],
    ["LET(w,B2*2,LET(v,w/4,v+1))", 161],
    ["SUM(MAP(B2:B2,LAMBDA(x,x+1)))", 321],
    ["LET(d,TEA.DRYBASIS(0.75),d+1)", 4],
    ["'Past lots'!A1*2", 1.5],
    ["SUM('Past lots'!A:A)", 1.35],
    ["IF(TEA.DRYBASIS('Past lots'!A1)>2,B2,0)", 320],
    ['B3&" off"', "water off"],
    ["B2>300", true],
    ["INDEX(B2:B9,5)", null],
    ["B9", null],
    ["1/0", new CellError("#DIV/0!")],
    ["NOSUCH(1)", new CellError("#NAME?")],
    ["ROW()", 2],
  ])("%s", async (expression, expected) => {
    for (const _ of ["first", "again"]) expect(await at(expression)).toEqual([[expected]]);
  });

  test("is rows where it is several values", async () => {
    expect(await at("B2:B4*2")).toEqual([[640], [new CellError("#VALUE!")], [820]]);
    expect(await at("TRANSPOSE('Past lots'!A1:A2)")).toEqual([[0.75, 0.6]]);
  });

  test("says why where a function of ours refuses", async () => {
    const [[refused] = []] = await at("TEA.DRYBASIS(B2)");
    expect(refused).toMatchObject({ code: "#VALUE!", message: expect.stringContaining("got 320") });
  });

  test("cannot be said of what no worksheet could read", async () => {
    await expect(at("IF(")).rejects.toThrow("IF(");
  });
});

describe("working something out", () => {
  test("changes no cell, no spill and no message", async () => {
    const before = JSON.stringify(book.toWorkbook());
    const message = book.value("Lot", "C4");
    expect(message).toMatchObject({ message: expect.stringContaining("got 76") });
    for (const address of ["C4", "D2", "E1"]) {
      await at("TEA.DRYBASIS(B2)", address);
      await at("TEA.CHARGESPLIT(600,100,10)", address);
    }
    expect(book.value("Lot", "C4")).toEqual(message);
    expect(JSON.stringify(book.toWorkbook())).toBe(before);
    await book.calculate();
    expect(JSON.stringify(book.toWorkbook())).toBe(before);
  });

  test("follows the cells, and the next calculation follows them as well", async () => {
    expect(await at("SUM(B2:B4)")).toEqual([[730]]);
    book.set("Lot", "B2", 20);
    expect(await at("SUM(B2:B4)")).toEqual([[430]]);
    book.set("Lot", "B2", 120);
    await book.calculate();
    expect(book.value("Lot", "F1")).toBe(530);
    expect(await at("SUM(B2:B4)+F1")).toEqual([[1060]]);
  });

  test("waits for a calculation that is under way, and spoils nothing of it", async () => {
    book.set("Lot", "B2", 1);
    let isDone = false;
    const calculated = book.calculate().then(() => {
      isDone = true;
    });
    const sums: ReturnType<typeof at>[] = [];
    while (!isDone) {
      sums.push(at("B2+1"));
      await new Promise((done) => setImmediate(done));
    }
    await calculated;
    expect(new Set((await Promise.all(sums)).flat(2))).toEqual(new Set([2]));
    expect([book.value("Many", "A1"), book.value("Many", "A1200")]).toEqual([2, 1201]);
  });
});
