import type { Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import type { HostProblem, Trouble } from "../../src/host/host-problem";
import { english } from "../../src/words/en/messages";
import { languages } from "../../src/words/languages";
import { chinese } from "../../src/words/zh/messages";
import { openFakePane, openFakePaneAnew } from "../browser/fake-pane";
import { sharedBrowser } from "../browser/shared-browser";
import type { FakeWorkbookHost } from "../host/fake-workbook-host";

/** On the page. */
declare const host: FakeWorkbookHost;
declare const fail: (reason: HostProblem["reason"], trouble: Trouble) => void;

const found = await findBrowser();

describe.skipIf(found === undefined)("the form of a job, beside a workbook in memory", () => {
  let page: Page;

  beforeAll(async () => {
    if (found) page = await openFakePane(await sharedBrowser(found));
  });
  afterAll(() => page?.context().close());

  beforeEach(() => openFakePaneAnew(page));

  const select = (address: string) => page.evaluate((address) => host.select("Book", address), address);
  const said = (text: string) => page.waitForSelector(`.write [role="status"]:has-text(${JSON.stringify(text)})`);
  const formulas = () =>
    page.evaluate(() =>
      (host.written.at(-1)?.block.cells ?? [])
        .map(({ content }) => String(content))
        .filter((content) => content.startsWith("=TEA.")),
    );

  test("takes the selected cell in place of a number, and gives back what was typed", async () => {
    await page.click("#open-moisture");
    await page.fill("#moisture-startWeight", "655,5");
    expect(await page.textContent("#moisture-startWeight-help")).toContain(english.form.understood("655.5 g"));
    await select("B4");
    await page.click(`[aria-label="${english.form.pickName(english.inputs.startWeight?.label ?? "")}"]`);
    await page.waitForSelector("output#moisture-startWeight");
    expect(await page.textContent("#moisture-startWeight")).toBe("from Book!B4: 1010.0 g");
    // The answer follows the cell.
    const before = await page.textContent(".preview .single");
    await page.evaluate(() => {
      host.put("Book", "B4", 1200);
      host.select("Book", "D2");
    });
    await page.waitForFunction((before) => document.querySelector(".preview .single")?.textContent !== before, before);
    await page.click(".write .primary");
    await page.waitForSelector(".write .done:not(:empty)");
    expect(await formulas()).toEqual(["=TEA.MOISTURENOW(B4,E6,E7,E8)"]);
    await page.click(`[aria-label="${english.form.typeInsteadName(english.inputs.startWeight?.label ?? "")}"]`);
    expect(await page.inputValue("#moisture-startWeight")).toBe("655,5");
  });

  test("takes all columns of a selection at once, and leaves no example beside them", async () => {
    await page.click("#open-balance");
    await select("A8:C9");
    await page.click(`text=${english.form.pickAll}`);
    await page.waitForSelector("output.reference");
    expect(await page.locator("output.reference").allTextContents()).toEqual([
      "from Book!A8:A9: 2 cells",
      "from Book!B8:B9: 2 cells",
      "from Book!C8:C9: 2 cells",
    ]);
    expect(await page.locator("table.typed tbody tr").count()).toBe(0);
  });

  const focused = () => page.evaluate(() => document.activeElement?.id || document.activeElement?.tagName);

  test("gives back what was typed in a list that the selection did not have", async () => {
    await page.click("#open-balance");
    await page.fill("#balance-removed-2", "22.5");
    await select("A8:C9");
    await page.click(`text=${english.form.pickAll}`);
    await page.waitForSelector("output.reference");
    await page.click(`[aria-label="${english.form.typeInsteadName(english.inputs.weights?.label ?? "")}"]`);
    expect(await page.inputValue("#balance-removed-2")).toBe("22.5");
  });

  test("marks as examples only the rows that nobody typed, also in another language", async () => {
    await page.click("#open-balance");
    await page.fill("#balance-stages-1", "leaf");
    const marked = (id: string) => page.locator(id).evaluate((element) => element.className.includes("example"));
    expect(await marked("#balance-stages-1")).toBe(false);
    expect(await marked("#balance-stages-2")).toBe(true);
    await page.click(`text=${languages.zh.name}`);
    await expect.poll(() => page.inputValue("#balance-stages-2")).toBe(chinese.examples.stages[1]);
    expect(await page.inputValue("#balance-stages-1")).toBe("leaf");
  });

  test("keeps the keyboard in the form when a row, the example or a question goes", async () => {
    await page.click("#open-balance");
    for (const left of [3, 2]) {
      await page.focus(`#balance-stages-remove-${left + 1}`);
      await page.keyboard.press("Enter");
      expect(await focused()).toBe(`balance-stages-remove-${left}`);
    }
    await page.keyboard.press("Enter");
    expect(await focused()).toBe("balance-stages-add");
    await page.focus(`text=${english.form.startAgain}`);
    await page.keyboard.press("Enter");
    expect(await focused()).toBe("H1");

    await select("B4");
    for (const choice of [english.write.keep, english.write.over]) {
      await page.click(".write .primary");
      await page.waitForSelector("dialog[open]");
      await page.focus(`dialog >> text=${choice}`);
      await page.keyboard.press("Enter");
      await page.waitForSelector("dialog", { state: "detached" });
      expect(await page.evaluate(() => document.activeElement?.className)).toBe("primary");
    }
    await said("Written at");
  });

  test("says what was written in the language that the pane speaks then", async () => {
    await page.click("#open-moisture");
    await select("H20");
    await page.click(".write .primary");
    await said("Written at");
    await page.click(`text=${languages.zh.name}`);
    await said("已写到");
  });

  test("says what to select when the selection does not fit", async () => {
    await page.click("#open-moisture");
    await select("A8:B9");
    await page.click(".field .pick >> nth=0");
    await page.waitForSelector(`text=${english.problems.pickOne}`);
    expect(await page.getAttribute("#moisture-startWeight", "aria-invalid")).toBe("true");
  });

  test("does not write over the cells that it reads", async () => {
    await page.click("#open-moisture");
    await select("B4");
    await page.click(".field .pick >> nth=0");
    await page.waitForSelector("output#moisture-startWeight");
    await page.click(".write .primary");
    await said(english.problems.overPicked);
    expect(await page.evaluate(() => host.written.length)).toBe(0);
  });

  test("asks before it writes over filled cells, names them, and takes no for an answer", async () => {
    await page.click("#open-moisture");
    await select("A2");
    await page.click(".write .primary");
    await page.waitForSelector("dialog[open]");
    expect(await page.textContent("#filled-cells")).toBe(english.write.filled("A8, B8"));
    await page.keyboard.press("Enter");
    await page.waitForSelector("dialog", { state: "detached" });
    expect(await page.evaluate(() => host.written.length)).toBe(0);
    await page.click(".write .primary");
    await page.click(`dialog >> text=${english.write.over}`);
    await page.waitForSelector(".write .done:not(:empty)");
    expect(await page.evaluate(() => host.written.length)).toBe(1);
  });

  test("goes to the first field that needs another look, also where it is folded away", async () => {
    await page.click("#open-charges");
    await page.click("summary");
    await page.fill("#charges-readability", "abc");
    await page.click("summary");
    await page.click(".write .primary");
    await said(english.problems.fixFirst);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("charges-readability");
  });

  test("unfolds what a function refuses, marks it and goes there when asked to write", async () => {
    const type = async (field: string, text: string) => page.fill(`#charges-${field}`, text);
    await page.click("#open-charges");
    await type("weight", "800");
    await type("moisture", "76 %");
    await type("panLoad", "350");
    await page.waitForSelector(".preview .single");
    expect(await page.locator(".problem:not(:empty)").count()).toBe(0);
    await page.click("summary");
    await type("maxLoad", "400");
    await page.click("summary");
    expect(await page.locator("details[open]").count()).toBe(0);
    await type("panLoad", "420");
    await page.waitForSelector("details[open]");
    expect(await page.getAttribute("#charges-maxLoad", "aria-invalid")).toBe("true");
    const described = (await page.getAttribute("#charges-maxLoad", "aria-describedby")) ?? "";
    expect(described.split(" ")).toContain("charges-maxLoad-problem");
    const why = "“Most that a pan may hold” must be at least 420, the “Weight wanted in one pan”; got 400";
    expect(await page.textContent("#charges-maxLoad-problem")).toBe(why);
    expect(await page.textContent(".preview .problem")).toBe(english.answer.refused(why));
    // Folded away again, it comes back with the next refusal, also with one for the same reason.
    await page.click("summary");
    expect(await page.locator("details[open]").count()).toBe(0);
    await type("weight", "810");
    await page.waitForSelector("details[open]");
    await page.click("summary");
    await page.click(".write .primary");
    await said(english.problems.noAnswer);
    expect(await focused()).toBe("charges-maxLoad");
    expect(await page.evaluate(() => host.written.length)).toBe(0);
  });

  test("keeps a choice of ours apart from the same choice made", async () => {
    await page.click("#open-scale");
    await page.fill("#scale-loss", "30 %");
    expect(await page.textContent(".preview")).toContain(english.inputs.lossOf?.label);
    await page.selectOption("#scale-lossOf", "water");
    expect(await page.textContent(".preview")).not.toContain(english.inputs.lossOf?.label);
    expect(await page.inputValue("#scale-lossOf")).toBe("water");
  });

  test("goes from field to field with Tab, and picks with Ctrl+Enter there", async () => {
    await page.click("#open-moisture");
    await page.focus("#moisture-startWeight");
    await page.keyboard.press("Tab");
    expect(await focused()).toBe("moisture-startMoisture");
    await select("B4");
    await page.focus("#moisture-startWeight");
    await page.keyboard.press("Control+Enter");
    await page.waitForSelector("output#moisture-startWeight");
    expect(await focused()).toBe("moisture-startWeight-pick");
    await page.keyboard.press("Enter");
    await page.waitForSelector("input#moisture-startWeight");
    expect(await focused()).toBe("moisture-startWeight");
    expect(await page.getAttribute("#moisture-startWeight", "aria-keyshortcuts")).toBe("Control+Enter");
    // In a list the whole column.
    await page.click(".back");
    await page.click("#open-balance");
    await select("B8:B9");
    await page.focus("#balance-weights-2");
    await page.keyboard.press("Control+Enter");
    await page.waitForSelector("output.reference");
    expect(await focused()).toBe("balance-weights-pick");
    await page.keyboard.press("Enter");
    await page.waitForSelector("#balance-weights-1");
    expect(await focused()).toBe("balance-weights-1");
  });

  test("asks in words what 3 is, and types the answer", async () => {
    await page.click("#open-turns");
    await page.fill("#turns-duration", "3");
    expect(await page.textContent("#turns-duration-problem")).toContain(english.problems.whichOne("3"));
    await page.focus("#turns-duration");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    expect(await page.inputValue("#turns-duration")).toBe("3:00");
    expect(await focused()).toBe("turns-duration");
    expect(await page.getAttribute("#turns-duration", "aria-invalid")).toBe(null);
  });

  test("writes on a new sheet, and shows it", async () => {
    await page.click("#open-charges");
    for (const name of ["Plan the charges", "Plan the charges 2"]) {
      await page.click(`text=${english.write.newSheet}`);
      await said(english.write.writtenOnNewSheet(name));
      const { at, visited } = await page.evaluate(() => ({
        at: host.written.at(-1)?.at,
        visited: host.visited.at(-1),
      }));
      expect(at).toEqual({ sheet: name, row: 0, column: 0 });
      expect(visited).toEqual(at);
    }
  });

  test("adds no sheet while a field needs another look", async () => {
    await page.click("#open-charges");
    await page.fill("#charges-weight", "abc");
    await page.click(`text=${english.write.newSheet}`);
    await said(english.problems.fixFirst);
    expect(await focused()).toBe("charges-weight");
    expect(
      await page.evaluate(() =>
        host.read("'Plan the charges'!A1", host.written[0]?.at ?? { sheet: "Book", row: 0, column: 0 }).then(
          () => "there",
          () => "none",
        ),
      ),
    ).toBe("none");
  });

  test("adds a chart of the workbook's own beside a season, when asked to", async () => {
    await page.click("#open-season");
    await select("D1");
    await page.click(".write .primary");
    await page.waitForSelector(".write .done:not(:empty)");
    expect(await page.evaluate(() => host.charts)).toEqual([]);
    await select("D60");
    await page.check("#with-chart");
    await page.click(".write .primary");
    await said("D60");
    const { written, charts } = await page.evaluate(() => ({ written: host.written.at(-1), charts: host.charts }));
    const table = written?.block.cells.find(({ content }) => String(content).startsWith("=TEA.SEASONTABLE"));
    const row = (written?.at.row ?? 0) + (table?.row ?? 0);
    // Two plots, in the columns of names and of outturns; the total is left out.
    const names = { sheet: "Book", row, column: 3, rows: 2, columns: 1 };
    expect(charts).toEqual([
      { title: "The season: outturn", names, values: { ...names, column: 9 }, beside: { ...names, columns: 11 } },
    ]);
  });

  test.each(["en", "zh"] as const)(
    "says in plain words what the workbook refuses, and loses nothing (%s)",
    async (language) => {
      if (language === "zh") {
        await page.click(`text=${languages.zh.name}`);
        await page.waitForSelector(`text=${chinese.tabs.jobs}`);
      }
      const messages = language === "zh" ? chinese : english;
      await page.click("#open-turns");
      await page.fill("#turns-interval", "0:35");
      const troubles = [
        ["protected", "sheet protected"],
        ["busy", "a cell is being typed in"],
        ["gone", { kind: "sheet gone", sheet: "Lot" }],
        ["unknown", "merged cells"],
        ["unknown", "filtered rows"],
        ["unknown", "pivot table"],
      ] as const;
      for (const [reason, trouble] of troubles) {
        await page.evaluate(([reason, trouble]) => fail(reason, trouble), [reason, trouble] as const);
        await page.click(".write .primary");
        await said(messages.problems.host({ trouble }));
        expect(await page.inputValue("#turns-interval")).toBe("0:35");
      }
      await page.evaluate(() => {
        host.problem = undefined;
        host.select("Book", "F1");
      });
      await page.click(".write .primary");
      await page.waitForSelector(".write .done:not(:empty)");
    },
  );
});
