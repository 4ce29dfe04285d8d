import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, test } from "vitest";
import { checkedArguments } from "../../src/cells/checked-arguments";
import { catalogue } from "../../src/core/catalogue";
import { deferral } from "../../src/core/cautions";
import { chineseSteps } from "../../src/pane/messages/chinese-steps";
import { MessagesContext, messagesIn } from "../../src/pane/messages/messages";
import { ShownCellWorking } from "../../src/pane/working/shown-cell-working";
import { type CellWorking, workingOf } from "../../src/pane/working/working-of";
import { type FakeCell, FakeWorkbookHost } from "./fake-workbook-host";

type Cells = Readonly<Record<string, FakeCell | number | string | boolean>>;

/** The working of Lot!D2, which holds this formula and shows this value. */
async function workingIn(
  formula: string,
  value: FakeCell["value"],
  cells: Cells = {},
  names = {},
): Promise<CellWorking> {
  const host = new FakeWorkbookHost({ Lot: { ...cells, D2: { formula, value } }, "Two words": { A1: 0.75, A2: 0.6 } });
  Object.assign(host.names, names);
  host.select("Lot", "D2");
  return (await workingOf(host, catalogue)) as CellWorking;
}

const lastResult = ({ calls }: CellWorking): unknown => {
  const outcome = calls.at(-1)?.outcome;
  return outcome?.is === "steps" ? outcome.steps.at(-1)?.gives : outcome?.is;
};

const markupOf = (found: CellWorking, language: "en" | "zh" = "en"): string =>
  renderToStaticMarkup(
    <MessagesContext.Provider value={messagesIn[language]}>
      <ShownCellWorking found={found} />
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

  test("is nothing where no TEA function is", async () => {
    const host = new FakeWorkbookHost({ Lot: { A1: 3, A2: { formula: "=A1*2", value: 6 } } });
    expect(await workingOf(host, catalogue)).toBeUndefined();
    host.select("Lot", "A2");
    expect(await workingOf(host, catalogue)).toBeUndefined();
  });

  test("speaks Chinese in every step of every function", async () => {
    for (const { spec, page } of catalogue) {
      for (const { given } of [...page.examples, ...page.checks]) {
        const checked = checkedArguments(spec, given);
        if (!("values" in checked)) continue;
        let steps: ReturnType<typeof page.working> = [];
        try {
          steps = page.working(...checked.values);
        } catch {
          // A refusal has no steps.
        }
        for (const { says } of steps) expect(chineseSteps[says], says).toBeTypeOf("string");
      }
    }
    expect(markupOf(await workingIn("=TEA.DRYBASIS(0.5)", 1), "zh")).toContain("每单位干物质所含的水");
  });
});
