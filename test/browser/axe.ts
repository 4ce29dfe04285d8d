import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults, RunOptions } from "axe-core";
import type { Page } from "playwright-core";
import { expect } from "vitest";

/** On the page. */
declare const axe: { run(part: string, options: RunOptions): Promise<AxeResults> };

const script = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

const everything = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

const looks = {
  all: { runOnly: everything, rules: { "target-size": { enabled: true } } },
  /** For a page whose texts have the colours of one that was looked at for all. */
  "all but colours": {
    runOnly: everything,
    rules: { "target-size": { enabled: true }, "color-contrast": { enabled: false } },
  },
  /** For a page that differs in its colours from one that was looked at for all. */
  colours: { runOnly: ["color-contrast"] },
} satisfies Record<string, RunOptions>;

interface Look {
  readonly lookedFor?: keyof typeof looks;
  /** A rule that is met, so that there was something to look at. */
  readonly met?: string;
  /** The part of the page that is looked at. */
  readonly within?: string;
}

/** What axe-core has against the page as it is now. */
export async function violations(
  page: Page,
  { lookedFor = "all", met = "color-contrast", within = "html" }: Look = {},
): Promise<string[]> {
  if (!(await page.evaluate(() => "axe" in globalThis))) await page.evaluate(script);
  const options: RunOptions = { ...looks[lookedFor], resultTypes: ["violations"] };
  const { violations, passes } = await page.evaluate(([part, options]) => axe.run(part, options), [
    within,
    options,
  ] as const);
  expect(passes.map(({ id }) => id)).toContain(met);
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(" | ")}`);
}
