import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, test } from "vitest";
import { findBrowser, openBrowser } from "../../src/build/open-browser";
import { FindingList } from "../../src/pane/sheet-check/finding-list";
import { MessagesContext } from "../../src/pane/use-messages";
import { english } from "../../src/words/en/messages";

const browserHere = await findBrowser();
const styles = ["fluent-tokens", "pane", "pieces"]
  .map((name) => readFileSync(resolve(__dirname, `../../src/pane/${name}.css`), "utf8"))
  .join("\n");

describe.skipIf(browserHere === undefined)("a finding in the narrowest pane", () => {
  test("breaks a long formula and makes the page no wider", async () => {
    if (browserHere === undefined) return;
    const formula = `=TEA.CHARGEPLAN(${"$B$12,".repeat(11)}B9)`;
    expect(formula.length).toBeGreaterThan(75);
    const details = { value: "2", formula };
    const list = renderToStaticMarkup(
      <MessagesContext.Provider value={english}>
        <FindingList findings={[{ rule: "a number among formulas", row: 66, column: 0, details }]} goTo={() => {}} />
      </MessagesContext.Provider>,
    );
    const browser = await openBrowser(browserHere);
    try {
      const page = await browser.newPage({ viewport: { width: 320, height: 640 } });
      await page.setContent(`<style>${styles}</style><body class="tea-pane-page"><div class="tea-pane">${list}</div>`);
      expect(await page.textContent(".findings")).toContain(formula);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
    } finally {
      await browser.close();
    }
  });
});
