import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, test } from "vitest";
import { catalogue } from "../../src/core/catalogue";
import type { CellPlace, ReadArea } from "../../src/host/workbook-host";
import { FindingList } from "../../src/pane/sheet-check/finding-list";
import { checkedSheet } from "../../src/pane/sheet-check/sheet-check";
import { MessagesContext } from "../../src/pane/use-messages";
import { type Finding, type Rule, rules } from "../../src/sheet-check/finding";
import { findingsOf } from "../../src/sheet-check/findings-of";
import { messagesIn } from "../../src/words/in-every-language/messages";
import { addressOf } from "../../src/workbook/addresses";
import { FakeWorkbookHost } from "../host/fake-workbook-host";
import { type Cell, type Rows, sheetOf } from "../sheet-check/sheet-of";

const spoken = { en: await messagesIn.en(), zh: await messagesIn.zh() };

/** `rule: address` for everything found. */
const found = (rows: Rows): string[] =>
  findingsOf(sheetOf(rows), catalogue).map(({ rule, row, column }) => `${rule}: ${addressOf(row, column)}`);

const ofRule = (rule: Rule, rows: Rows): string[] =>
  found(rows).flatMap((line) => (line.startsWith(`${rule}: `) ? [line.slice(rule.length + 2)] : []));

const headings = ["lot", "fresh g", "finished g", "fresh moisture", "finished moisture"];
const soundBook: Cell[][] = [
  headings,
  ["A", 1200, 258, 0.77, 0.05],
  ["B", 840, 178.5, 0.77, 0.05],
  ["C", 1000, 216, 0.77, 0.05],
  ["D", 600, 126, 0.77, 0.05],
  ["E", 1500, 318, 0.77, 0.05],
];

describe("the sheet check", () => {
  test("finds nothing in a sound book, an empty sheet, or a sheet about something else", () => {
    expect(found(soundBook)).toEqual([]);
    expect(found([[""]])).toEqual([]);
    expect(
      found([
        ["name", "age"],
        ["Ann", 34],
        ["Bo", 76],
      ]),
    ).toEqual([]);
  });

  test("finds moistures typed as 76 instead of 76 %, by heading, by label, and by the function that reads them", () => {
    const rule = "moisture typed as a number of percent";
    expect(ofRule(rule, [...soundBook, ["F", 900, 192, 76, 0.05]])).toEqual(["D7"]);
    expect(ofRule(rule, [["含水率"], [0.76], [76]])).toEqual(["A3"]);
    expect(ofRule(rule, [["moisture", 76]])).toEqual(["B1"]);
    expect(ofRule(rule, [["leaf", 500, 60, { formula: "=TEA.WATER(B1,C1)", value: "#VALUE!" }]])).toEqual(["C1"]);
    expect(ofRule(rule, [["finished moisture"], [5], [0.05]])).toEqual(["A2"]);
  });

  test("finds wet and dry basis mixed: by percentages above 100 and by headings", () => {
    const rule = "wet and dry basis mixed";
    expect(
      ofRule(
        rule,
        [["moisture"], [0.75], { value: 3.2, format: "0%" }].map((cell) => [cell].flat()),
      ),
    ).toEqual(["A3"]);
    expect(
      ofRule(rule, [
        ["weight g", "dry basis"],
        [500, 0.9, { formula: "=TEA.DRYMATTER(A2,B2)", value: 50 }],
      ]),
    ).toEqual(["B2"]);
    expect(ofRule(rule, [["moisture"], [0.9, { formula: "=TEA.WETBASIS(A2)", value: 0.47 }]])).toEqual(["A2"]);
    expect(ofRule(rule, [["dry basis"], [3.2, { formula: "=TEA.WETBASIS(A2)", value: 0.76 }]])).toEqual([]);
  });

  test("says one thing only of dry basis where wet basis is taken", () => {
    const target: Cell = { formula: "=TEA.TARGETWEIGHT(A2,B2,C2)", value: 200 };
    expect(
      found([
        ["weight g", "d.b.", "target"],
        [320, 2.5, 0.6, target],
      ]),
    ).toEqual(["wet and dry basis mixed: B2"]);
  });

  test("finds more tea than leaf", () => {
    const rule = "finished above fresh";
    expect(ofRule(rule, [...soundBook, ["F", 192, 900]])).toEqual(["C7"]);
    expect(
      ofRule(rule, [
        ["鲜叶重", "干茶重"],
        [0.9, 195],
      ]),
    ).toEqual(["B2"]);
    expect(ofRule(rule, [[195, 900, { formula: "=TEA.OUTTURN(A1,B1)", value: "#VALUE!" }]])).toEqual(["B1"]);
  });

  test("finds more dry matter out than in, in a lot and from stage to stage", () => {
    const rule = "more dry matter out than in";
    expect(ofRule(rule, [...soundBook, ["F", 950, 268, 0.76, 0.05]])).toEqual(["C7"]);
    // 260 g is all that one point of moisture can explain.
    expect(ofRule(rule, [...soundBook, ["F", 950, 259, 0.76, 0.05]])).toEqual([]);
    expect(
      ofRule(rule, [
        ["stage", "weight g", "moisture"],
        ["fresh", 900, 0.765],
        ["withered", 780, 0.725],
        ["fired", 565, 0.4],
      ]),
    ).toEqual(["B4"]);
  });

  test("finds an outturn far from the sheet's own lots, and none among four lots", () => {
    const rule = "outturn far from the others";
    expect(ofRule(rule, [...soundBook, ["F", 900, 150]])).toEqual(["C7"]);
    expect(ofRule(rule, [...soundBook.slice(0, 4), ["F", 900, 150]])).toEqual([]);
  });

  test("finds a weight that is not on the scale's step: one the sheet names, or the one of its column", () => {
    const rule = "not a step of the scale";
    expect(ofRule(rule, [["readability", 5], [""], ["weight g"], [320], [322]])).toEqual(["A5"]);
    const column = [320, 318, 325, 301, 299, 344, 350, 331, 327, 305.4].map((weight) => [weight]);
    expect(ofRule(rule, [["load g"], ...column])).toEqual(["A11"]);
    expect(ofRule(rule, [["weight g"], [320], [318.25], [12.5]])).toEqual([]);
  });

  test("finds text that looks like a number", () => {
    const rule = "text that looks like a number";
    expect(ofRule(rule, [...soundBook, ["F", "900", 192], ["G", 900, "192 g"]])).toEqual(["B7", "C8"]);
    expect(ofRule(rule, [["phone"], ["555-1234"], ["a note"]])).toEqual([]);
  });

  test("finds the errors of TEA functions and no others", () => {
    const rule = "a TEA function with an error";
    const rows: Cell[][] = [
      [{ formula: "=TEA.DRYBASIS(B1)", value: "#VALUE!" }, 76, { formula: "=1/0", value: "#DIV/0!" }],
    ];
    expect(ofRule(rule, rows)).toEqual(["A1"]);
  });

  test("finds rows that wait for a weight, and no formulas filled down ahead", () => {
    const rule = "waits for a weight";
    const outturn = (row: number): Cell => ({ formula: `=TEA.OUTTURN(B${row},C${row})`, value: "" });
    expect(
      ofRule(rule, [
        ["lot", "fresh g", "finished g", "outturn"],
        ["A", 1200, 258, { formula: "=TEA.OUTTURN(B2,C2)", value: 0.215 }],
        ["B", 800, "", outturn(3)],
        ["", "", "", outturn(4)],
        ["", "", "", outturn(5)],
      ]),
    ).toEqual(["C3"]);
    const target: Cell = { formula: "=TEA.TARGETWEIGHT(A2,B2,C2)", value: "" };
    expect(
      ofRule(rule, [
        ["a", "b", "c"],
        ["", 0.75, 0.6, target],
      ]),
    ).toEqual(["A2"]);
  });

  test("finds a number among formulas, and no spill or total", () => {
    const rule = "a number among formulas";
    const outturn = (row: number): Cell => ({ formula: `=TEA.OUTTURN(B${row},C${row})`, value: 0.21 });
    const column = (overwritten: number[]): Cell[][] => [
      ["lot", "fresh g", "finished g", "outturn"],
      ...Array.from({ length: 7 }, (_, index): Cell[] => [
        `L${index}`,
        1000,
        210,
        overwritten.includes(index + 2) ? 0.21 : outturn(index + 2),
      ]),
    ];
    expect(ofRule(rule, column([5]))).toEqual(["D5"]);
    expect(ofRule(rule, column([8]))).toEqual(["D8"]);
    expect(ofRule(rule, column([]))).toEqual([]);
    expect(ofRule(rule, [[{ formula: "=TEA.CHARGESPLIT(B1,320)", value: 310 }, 930], [310], [310]])).toEqual([]);
  });

  test("finds a number over the first formula of a column, and none that the formulas begin with", () => {
    const rule = "a number among formulas";
    const column = (first: Cell[], formula: (row: number) => string): Cell[][] => [
      ["a", "b", "c"],
      first,
      ...[3, 4, 5, 6, 7, 8].map((row): Cell[] => [1, 2, { formula: formula(row), value: 3 }]),
    ];
    expect(
      ofRule(
        rule,
        column([1, 2, 9], (row) => `=A${row}+B${row}`),
      ),
    ).toEqual(["C2"]);
    expect(
      ofRule(
        rule,
        column([1, "", 9], (row) => `=A${row}+B${row}`),
      ),
    ).toEqual([]);
    expect(
      ofRule(
        rule,
        column([1, 2, 3], (row) => `=C${row - 1}+B${row}`),
      ),
    ).toEqual([]);
    expect(
      ofRule(
        rule,
        column([1, 2, 0], (row) => `=B${row}-B${row - 1}`),
      ),
    ).toEqual([]);
    expect(
      ofRule(
        rule,
        column([1, 2, 1], (row) => `=B${row}/B$2`),
      ),
    ).toEqual([]);
  });

  test("finds no number among formulas between subtotals, between spills, and between formulas far apart", () => {
    const rule = "a number among formulas";
    const subtotal = (row: number): Cell => ({ formula: `=SUM(A${row - 2}:A${row - 1})`, value: 30 });
    const groups = [2, 5, 8].flatMap((row): Cell[][] => [[10], [20], [subtotal(row + 2)]]);
    expect(ofRule(rule, [["fresh g"], ...groups])).toEqual([]);
    const split = (row: number): Cell => ({ formula: `=TEA.CHARGESPLIT(C${row},320)`, value: 310 });
    const spills = [1, 4, 7].flatMap((row): Cell[][] => [[split(row), "", 930], [310], [310]]);
    expect(ofRule(rule, spills)).toEqual([]);
    const apart = [2, 5, 8].flatMap((row): Cell[][] => [[{ formula: `=B${row}*2`, value: 4 }, 2], [7], [""]]);
    expect(ofRule(rule, apart)).toEqual([]);
  });

  test("says what, where, why and what to try, in both languages, with cell text as text", () => {
    const hostile = '<img src=x onerror="alert(1)">';
    const findings = rules.map(
      (rule, row): Finding => ({
        rule,
        row,
        column: 1,
        details: { value: hostile, code: "#N/A", message: hostile, formula: hostile, heading: hostile, cell: "A1" },
      }),
    );
    for (const language of ["en", "zh"] as const) {
      const markup = renderToStaticMarkup(
        <MessagesContext.Provider value={spoken[language]}>
          <FindingList findings={findings} goTo={() => {}} />
        </MessagesContext.Provider>,
      );
      expect(markup).not.toContain("<img");
      const { rules: words } = spoken[language].check;
      for (const rule of rules) {
        expect(markup).toContain(words[rule].title);
        expect(words[rule].why.length).toBeGreaterThan(5);
        expect(words[rule].advice.length).toBeGreaterThan(3);
      }
      expect(markup).toContain("B10");
    }
  });

  test("tells the message of an error, also where the host does not know it, and changes nothing", async () => {
    const formula = "=TEA.DRYBASIS(A1)";
    const host = new FakeWorkbookHost({
      Book: {
        A1: 76,
        A2: { formula, value: "#VALUE!" },
        A3: { formula, value: "#VALUE!", message: "as the host says" },
      },
    });
    const { findings } = await checkedSheet(host);
    const messages = findings
      .filter(({ rule }) => rule === "a TEA function with an error")
      .map(({ error }) => error?.message);
    expect(messages).toEqual([
      "moisture must be from 0 up to, not including, 1 (76% or 0.76); got 76",
      "as the host says",
    ]);
    expect(host.written).toEqual([]);
  });

  test("says in the language of the pane what follows from a cause, and names arguments as the sheet does", async () => {
    const host = new FakeWorkbookHost({
      Book: {
        A1: "Pan load",
        B1: 76,
        B2: { formula: "=TEA.DRYBASIS(B1)", value: "#VALUE!" },
        B3: { formula: "=B2*2", value: "#VALUE!" },
      },
    });
    const { findings } = await checkedSheet(host);
    const shown = (language: "en" | "zh") =>
      renderToStaticMarkup(
        <MessagesContext.Provider value={spoken[language]}>
          <FindingList findings={findings} goTo={() => undefined} />
        </MessagesContext.Provider>,
      );
    expect(shown("en")).toContain(
      "#VALUE!: “Pan load” must be from 0 up to, not including, 1 (76% or 0.76); got 76. B3 shows an error because of it.",
    );
    expect(shown("zh")).toContain("“Pan load”必须");
    expect(shown("zh")).toContain("B3 因它出错。");
  });

  test("tells the rest when the message of one error cannot be had", async () => {
    class Failing extends FakeWorkbookHost {
      override async errorMessage(place: CellPlace): Promise<string | undefined> {
        if (place.row === 1) throw new RangeError("the cell lies past the last row");
        return super.errorMessage(place);
      }
    }
    const formula = "=TEA.DRYBASIS(A1048577)";
    const host = new Failing({
      Book: {
        A2: { formula, value: "#VALUE!" },
        A3: { formula, value: "#VALUE!", message: "as the host says" },
      },
    });
    const { findings } = await checkedSheet(host);
    expect(findings.map(({ row, error }) => [row, error?.message])).toEqual([
      [1, ""],
      [2, "as the host says"],
    ]);
  });

  test("asks the host how far an answer reaches where the sheet alone does not show it", async () => {
    const sheet = { A1: "weight g", A2: { formula: "=FILTER(Scale!A1:A9,Scale!B1:B9)", value: 320 }, A3: 318.03 };
    const typed = new FakeWorkbookHost({ Book: { ...sheet, C1: "scale step", D1: 0.1 } });
    expect((await checkedSheet(typed)).findings.map(({ row }) => row)).toEqual([2]);
    class Telling extends FakeWorkbookHost {
      override read(address: string, beside: CellPlace): Promise<ReadArea> {
        return super.read(address === "A2#" ? "A2:A3" : address, beside);
      }
    }
    const spilled = new Telling({ Book: { ...sheet, C1: "scale step", D1: 0.1 } });
    expect((await checkedSheet(spilled)).findings).toEqual([]);
    class Refusing extends FakeWorkbookHost {
      override async read(): Promise<ReadArea> {
        throw new RangeError("nothing spills there");
      }
    }
    const refusing = new Refusing({ Book: { ...sheet, C1: "scale step", D1: 0.1 } });
    expect((await checkedSheet(refusing)).findings.map(({ row }) => row)).toEqual([2]);
  });

  test("reads a book of 5,000 lots", { timeout: 60_000 }, () => {
    const rows: Cell[][] = [[...headings, "outturn"]];
    for (let lot = 0; lot < 5000; lot += 1) {
      const fresh = 800 + (lot % 700);
      const finished = Math.round(fresh * 0.214 + (lot % 7));
      const outturn = { formula: `=TEA.OUTTURN(B${lot + 2},C${lot + 2})`, value: finished / fresh };
      rows.push([`L${lot}`, fresh, lot === 4321 ? fresh + 1 : finished, 0.77, 0.05, outturn]);
    }
    const sheet = sheetOf(rows);
    const findings = findingsOf(sheet, catalogue);
    expect(findings.map(({ rule, row }) => `${rule} ${row}`)).toEqual(["finished above fresh 4322"]);
  });
});
