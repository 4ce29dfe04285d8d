import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, test } from "vitest";
import { catalogue } from "../../src/core/catalogue";
import { deferral } from "../../src/core/cautions";
import { MessagesContext } from "../../src/pane/use-messages";
import { ShownCellWorking } from "../../src/pane/working/shown-cell-working";
import { messagesIn } from "../../src/words/in-every-language/messages";
import { type CellWorking, workingOf } from "../../src/working/working-of";
import { type FakeCell, FakeWorkbookHost } from "../host/fake-workbook-host";

const words = { en: await messagesIn.en(), zh: await messagesIn.zh() };

type Cells = Readonly<Record<string, FakeCell | number | string | boolean>>;

/** The working of Lot!D2, which holds this formula and shows this value. */
async function workingIn(
  formula: string,
  value: FakeCell["value"],
  cells: Cells = {},
  names = {},
  expressions: FakeWorkbookHost["expressions"] = {},
  format = "General",
): Promise<CellWorking> {
  const host = new FakeWorkbookHost({
    Lot: { ...cells, D2: { formula, value, format } },
    "Two words": { A1: 0.75, A2: 0.6 },
  });
  Object.assign(host.names, names);
  Object.assign(host.expressions, expressions);
  host.select("Lot", "D2");
  return (await workingOf(host, catalogue)) as CellWorking;
}

const lastResult = ({ calls }: CellWorking): unknown => {
  const outcome = calls.at(-1)?.outcome;
  return outcome?.is === "steps" ? outcome.steps.at(-1)?.gives : outcome?.is;
};

const markupOf = (found: CellWorking, language: "en" | "zh" = "en"): string =>
  renderToStaticMarkup(
    <MessagesContext.Provider value={words[language]}>
      <ShownCellWorking found={found} ask={{ onAsk: () => undefined, problem: undefined }} />
    </MessagesContext.Provider>,
  );

describe("the working of a cell", () => {
  test("shows symbols, numbers with units, steps, source, cautions and the docs page", async () => {
    const found = await workingIn("=TEA.TARGETWEIGHT(A2,B2,60%)", 200, {
      A2: { value: 320, format: '0" g"' },
      B2: { value: 0.75, format: "0%" },
    });
    expect(lastResult(found)).toBe(200);
    const markup = markupOf(found);
    for (const words of [
      "Wt = W × (1 − M) / (1 − Mt)",
      "320 g",
      "75 %",
      "60 %",
      "320 × (1 − 75 %) = 80",
      "80 / (1 − 60 %) = 200",
      "International Rice Research Institute",
      "Hot pans and steam",
      deferral,
      'href="docs/functions/targetweight.html"',
      "The cell shows 200",
    ]) {
      expect(markup).toContain(words);
    }
  });

  test("shows a cell that does more with a call as a plain number", async () => {
    const percent = await workingIn("=TEA.OUTTURN(A2,200)*100", 62.5, { A2: { value: 320 } });
    expect(markupOf(percent)).toContain("The cell shows 62.5.");
    const count = await workingIn("=COUNT(TEA.TURNTIMES(0.5,0.125,0.01))", 12);
    expect(markupOf(count)).toContain("The cell shows 12.");
  });

  test("gives the unit of a cell to weights only where its answer is one", async () => {
    const pans = await workingIn("=TEA.CHARGECOUNT(940,320)", 3, {}, {}, {}, '0" pans"');
    expect(markupOf(pans)).toContain("940 / 3 = 313.3333<");
    expect(markupOf(pans)).toContain("The cell shows 3 pans.");
    const loads = await workingIn("=TEA.TARGETWEIGHT(320,0.75,0.6)", 200, {}, {}, {}, '0" g"');
    expect(markupOf(loads)).toContain("= 200 g");
  });

  test("says the message of an error in Chinese too", async () => {
    const found = await workingIn("=TEA.WETBASIS(A2)", "#VALUE!", { A2: { value: -1 } });
    const refused = { ...found, message: "dryBasis must be 0 or more (300% or 3); got -1" };
    expect(markupOf(refused, "zh")).toContain("dryBasis 必须在 0 到 25 之间");
    expect(markupOf(refused, "zh")).not.toContain("must be");
  });

  test("shows a call inside a call before it, with its numbers", async () => {
    const found = await workingIn("=TEA.WETBASIS(TEA.DRYBASIS('Two words'!A2))", 0.6);
    expect(found.calls.map(({ entry }) => entry.spec.id)).toEqual(["DRYBASIS", "WETBASIS"]);
    expect(found.calls[1]?.given[0]?.rows).toEqual([[0.6 / (1 - 0.6)]]);
    expect(lastResult(found)).toBeCloseTo(0.6, 12);
  });

  test("reads names, whole columns, sums and differences from the sheet", async () => {
    const cells = { A1: "fresh", A2: 1000, A3: 500, B1: "finished", B2: 220, B3: 110 };
    expect(lastResult(await workingIn("=TEA.OUTTURN(SUM(A:A),SUM(B:B))", 0.22, cells))).toBe(0.22);
    expect(lastResult(await workingIn("=TEA.OUTTURN(A2-A3,B3)", 0.22, cells))).toBe(0.22);
    expect(lastResult(await workingIn("=TEA.OUTTURN(leaf,B2)", 0.22, cells, { leaf: "Lot!A2" }))).toBe(0.22);
  });

  test("says which row of a range is shown", async () => {
    const found = await workingIn("=TEA.DRYBASIS(A2:A3)", 3, { A2: 0.75, A3: 0.6 });
    expect(found.calls[0]?.given[0]?.rowPicked).toBe(1);
    expect(markupOf(found)).toContain("row 1 of the range is shown");
    expect(lastResult(found)).toBe(3);
  });

  test("has the workbook work out any other expression, shows its text and value, and goes on from there", async () => {
    const formula = "=TEA.TARGETWEIGHT(ROUND(B2*1.05, 0),IF(B2>300,75%,70%),60%)";
    const found = await workingIn(
      formula,
      210,
      { B2: 320 },
      {},
      { "ROUND(B2*1.05, 0)": 336, "IF(B2>300,75%,70%)": 0.75 },
    );
    expect(lastResult(found)).toBe(210);
    const markup = markupOf(found);
    expect(markup).toContain("ROUND(B2*1.05, 0)</code> = 336 (worked out by the workbook)");
    expect(markup).toContain("IF(B2&gt;300,75%,70%)</code> = 75 % (worked out by the workbook)");
    expect(markup).toContain("336 × (1 − 75 %) = 84");
    expect(markup).not.toContain("<button");
  });

  test("puts the names of the LETs around it into an expression, each with those before it", async () => {
    const formula = "=LET(w,B2*2,LET(m,TEA.DRYMATTER(w,75%),TEA.TARGETWEIGHT(w/2,IF(m>100,75%,50%),60%)))";
    const inLet = (text: string, more = "") => `LET(w,B2*2,${more}${text}${more && ")"})`;
    const found = await workingIn(
      formula,
      160,
      { B2: 320 },
      {},
      {
        [inLet("w")]: 640,
        [inLet("w", "LET(m,TEA.DRYMATTER(w,75%),")]: 640,
        [inLet("IF(m>100,75%,50%)", "LET(m,TEA.DRYMATTER(w,75%),")]: 0.75,
      },
    );
    expect(found.calls.map(({ text }) => text)).toEqual([
      "TEA.DRYMATTER(w,75%)",
      expect.stringContaining("TEA.TARGETWEIGHT("),
    ]);
    expect(found.calls[1]?.given.map(({ text, rows }) => [text, rows])).toEqual([
      ["w/2", [[320]]],
      ["IF(m>100,75%,50%)", [[0.75]]],
      ["60%", [[0.6]]],
    ]);
    expect(lastResult(found)).toBe(200);
  });

  test("takes rows, blanks and errors from the workbook as cells give them", async () => {
    expect(lastResult(await workingIn("=TEA.DRYBASIS(INDEX(A:A,9))", "", {}, {}, { "INDEX(A:A,9)": "" }))).toBe(
      "waits",
    );
    const error = await workingIn("=TEA.DRYBASIS(1/B9)", "#DIV/0!", {}, {}, { "1/B9": "#DIV/0!" });
    expect(markupOf(error)).toContain("No answer: #DIV/0!");
    const rows = await workingIn(
      "=TEA.DRYBASIS(A2:A3-0.1)",
      3,
      { A2: 0.85, A3: 0.7 },
      {},
      { "A2:A3-0.1": [[0.75], [0.6]] },
    );
    expect(rows.calls[0]?.given[0]?.rowPicked).toBe(1);
    expect(lastResult(rows)).toBe(3);
  });

  test("has the workbook work out a name that stands for no cells", async () => {
    const found = await workingIn("=TEA.DRYBASIS(usualMoisture)", 3, {}, {}, { usualMoisture: 0.75 });
    expect(lastResult(found)).toBe(3);
  });

  test("does not ask for what depends on a parameter of a LAMBDA, which has many values", async () => {
    const found = await workingIn("=MAP(A1:A3,LAMBDA(x,TEA.DRYBASIS(x*1)))", 3, {}, {}, { x: 1, "x*1": 1 });
    expect(lastResult(found)).toBe("unknown");
    expect(found.canAsk).toBe(false);
  });

  test("asks a workbook that is touched by it only when the maker says so", async () => {
    const host = new FakeWorkbookHost({ Lot: { D2: { formula: "=TEA.DRYBASIS(IF(A1,0.75,0.6))", value: 3 } } });
    Object.assign(host.expressions, { "IF(A1,0.75,0.6)": 0.75 });
    host.evaluatesUntouched = false;
    host.select("Lot", "D2");
    const before = (await workingOf(host, catalogue)) as CellWorking;
    expect([lastResult(before), before.canAsk, host.evaluated]).toEqual(["unknown", true, []]);
    for (const [language, button] of [
      ["en", "Let Excel work it out"],
      ["zh", "让 Excel 计算"],
    ] as const) {
      const markup = markupOf(before, language);
      expect(markup).toContain(`>${button}</button>`);
      expect(markup).toContain("IF(A1,0.75,0.6)");
    }
    expect(markupOf(before)).toContain("a hidden name is added to the workbook for a moment and taken away again");
    const after = (await workingOf(host, catalogue, { isAsked: true })) as CellWorking;
    expect([lastResult(after), after.canAsk, host.evaluated]).toEqual([3, false, ["IF(A1,0.75,0.6)"]]);
    expect(markupOf(after)).not.toContain("<button");
  });

  test("says what the workbook refused when the maker asked", async () => {
    const host = new FakeWorkbookHost({ Lot: { D2: { formula: "=TEA.DRYBASIS(IF(A1,0.75,0.6))", value: 3 } } });
    host.evaluatesUntouched = false;
    host.select("Lot", "D2");
    await expect(workingOf(host, catalogue, { isAsked: true })).rejects.toThrow("cannot work out");
  });

  test("shows an expression that only the workbook can work out as text, and says so", async () => {
    const found = await workingIn("=TEA.DRYBASIS(VLOOKUP(A2,B:C,2))", 3);
    const markup = markupOf(found);
    expect(markup).toContain("VLOOKUP(A2,B:C,2)</code>: worked out by the workbook; the pane cannot know its value");
    expect(markup).toContain("The cell shows 300 %.");
    expect(lastResult(found)).toBe("unknown");
  });

  test("says when the answer waits, when it is refused, and when the cell has not been calculated again", async () => {
    expect(markupOf(await workingIn("=TEA.DRYBASIS(A2)", ""))).toContain("The answer waits");
    expect(markupOf(await workingIn("=TEA.DRYBASIS(A2)", "#VALUE!", { A2: 76 }))).toContain(
      "No answer: moisture must be from 0 up to, not including, 1 (76% or 0.76); got 76",
    );
    expect(markupOf(await workingIn("=TEA.DRYBASIS(A2)", "#N/A", { A2: "#N/A" }))).toContain("No answer: #N/A");
    expect(markupOf(await workingIn("=TEA.DRYBASIS(A2)", 2, { A2: 0.75 }))).toContain(
      "may be waiting to be calculated",
    );
  });

  test("says when the formula does more with the answer", async () => {
    const found = await workingIn("=ROUND(TEA.DRYBASIS(A2),1)*2", 6, { A2: 0.75 });
    expect(lastResult(found)).toBe(3);
    expect(markupOf(found)).toContain("does more with this");
  });

  test("shows whatever a cell holds as text", async () => {
    const hostile = '<img src=x onerror="alert(1)">';
    const found = await workingIn('=TEA.DRYINGSTEPS(320,75%,60%,,A2)&"<script>"', hostile, { A2: hostile });
    const markup = markupOf(found);
    expect(markup).not.toMatch(/<img|<script/);
    expect(markup).toContain("&lt;img src=x");
  });

  test("of a cell that an answer spills into is that of its formula, with the place of the cell in it", async () => {
    const host = new FakeWorkbookHost({
      Lot: { D2: { formula: "=TEA.CHARGESPLIT(B2,320)", value: 312 }, D3: 312, D4: 312, B2: 936, E3: 7 },
    });
    host.spills.push({ sheet: "Lot", row: 1, column: 3, rows: 3, columns: 1 });
    host.select("Lot", "D4");
    const found = (await workingOf(host, catalogue)) as CellWorking;
    expect(found.place).toEqual({ sheet: "Lot", row: 1, column: 3 });
    expect(markupOf(found)).toContain("D4 shows 312: row 3 of 3, column 1 of 1 of this answer.");
    expect(markupOf(found, "zh")).toContain("D4 显示 312：这个答案共 3 行 1 列，这里是第 3 行第 1 列。");
    host.select("Lot", "E3");
    expect(await workingOf(host, catalogue)).toBeUndefined();
    host.select("Lot", "D2");
    expect((await workingOf(host, catalogue))?.partOf).toBeUndefined();
  });

  test("is nothing where no TEA function is", async () => {
    const host = new FakeWorkbookHost({ Lot: { A1: 3, A2: { formula: "=A1*2", value: 6 } } });
    expect(await workingOf(host, catalogue)).toBeUndefined();
    host.select("Lot", "A2");
    expect(await workingOf(host, catalogue)).toBeUndefined();
  });

  test("speaks Chinese in its steps", async () => {
    expect(markupOf(await workingIn("=TEA.DRYBASIS(0.5)", 1), "zh")).toContain("每单位干物质所含的水");
  });
});
