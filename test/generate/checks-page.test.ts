import { expect, test } from "vitest";
import { catalogue } from "../../src/core/catalogue";
import type { Check, FunctionPage } from "../../src/core/define";
import { asMarkdown } from "../../src/generate/blocks";
import { checksPage } from "../../src/generate/checks-page";

const page = asMarkdown(checksPage(catalogue));

test("every function stands in the overview and with its own table", () => {
  for (const { spec } of catalogue) {
    expect(page).toMatch(new RegExp(`^\\| ${spec.id} \\|`, "m"));
    expect(page).toContain(`## TEA.${spec.id}\n`);
  }
});

test("every work that a check takes its value from is named", () => {
  const works = catalogue.flatMap((entry) =>
    entry.page.checks.flatMap((check) => ("source" in check ? [check.source.work.title] : [])),
  );
  expect(works.length).toBeGreaterThan(20);
  for (const title of works) expect(page).toContain(title);
});

test("facts of the trade without a source are counted and not told", () => {
  const facts = catalogue.flatMap((entry) =>
    entry.page.checks.flatMap((check) => ("fact" in check ? [check.fact] : [])),
  );
  expect(facts.length).toBeGreaterThan(0);
  for (const fact of facts) expect(page).not.toContain(fact);
  expect(page).toContain("on common practice");
});

test("no function rests on memory or common practice alone", () => {
  for (const { page: functionPage } of catalogue) {
    const statuses = functionPage.checks.map(({ status }) => status);
    expect(statuses.some((status) => ["published", "certified", "exact"].includes(status))).toBe(true);
  }
});

test("a degenerate check is counted apart and says what lies idle", () => {
  for (const { spec, page: functionPage } of catalogue) {
    const checks: readonly Check[] = functionPage.checks;
    const published = checks.filter(({ status, degenerate }) => status === "published" && degenerate === undefined);
    const degenerate = checks.filter((check) => check.degenerate !== undefined);
    const row = new RegExp(
      `^\\| ${spec.id} \\| ${published.length || ""} \\|.*\\| ${degenerate.length || ""} \\|$`,
      "m",
    );
    expect(page).toMatch(row);
    for (const { degenerate: idle } of degenerate) expect(page).toContain(`degenerate: ${idle}`);
  }
});

test("a function without a published value says why", () => {
  const reasons = catalogue.flatMap((entry) => (entry.page as FunctionPage).unpublished ?? []);
  expect(reasons.length).toBeGreaterThan(0);
  for (const reason of reasons) expect(page).toContain(reason);
});
