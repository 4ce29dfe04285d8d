import type { Check } from "../core/define";
import { namespace } from "../core/describe";
import type { Entry } from "../core/entry";
import type { Block, Page } from "./blocks";
import { checksTable, isTold } from "./checks-table";

const statuses = ["published", "certified", "exact", "memory", "common practice"] as const;

const count = (checks: readonly Check[], status: Check["status"]): number =>
  checks.filter((check) => check.status === status).length;

const names = (entries: readonly Entry[]): string => entries.map(({ spec }) => spec.id).join(", ") || "none";

/** What the numbers rest on: every function with all that it is checked against outside the project. */
export function checksPage(catalogue: readonly Entry[]): Page {
  const withStatus = (...wanted: Check["status"][]) =>
    catalogue.filter(({ page }) => wanted.some((status) => count(page.checks, status) > 0));
  const published = withStatus("published", "certified");
  const exactAlone = catalogue.filter((entry) => !published.includes(entry));
  const recalled = catalogue.filter(({ page }) =>
    [...page.sources, ...page.checks.flatMap((check) => ("source" in check ? [check.source] : []))].some(
      ({ work }) => work.status === "from memory",
    ),
  );
  return {
    name: "checks",
    title: "What the numbers of Tea Mass Balance are checked against",
    blocks: [
      { heading: "What the numbers are checked against", level: 1 },
      {
        paragraph:
          "Every function with its checks against something outside this project. npm test works out each of them; no expected value was computed with the project's own code.",
      },
      {
        list: [
          "published: a value that a work states, which was read there or in a work that restates it",
          "certified: a value of a certified data set",
          "exact: hand arithmetic, written out, so that anyone can redo it",
          "memory: a value that was recalled and not looked up",
          "common practice: a fact of the trade without a source; counted here, and kept with the tests",
        ],
      },
      { heading: "In short", level: 2 },
      {
        table: ["Function", ...statuses],
        rows: catalogue.map(({ spec, page }) => [
          spec.id,
          ...statuses.map((status) => String(count(page.checks, status) || "")),
        ]),
      },
      {
        list: [
          `Checked against a published or certified value: ${names(published)}.`,
          `Without a published value of their own, since no work with one was found; checked by hand arithmetic, and some beneath: ${names(exactAlone)}.`,
          `With a check from memory: ${names(withStatus("memory"))}.`,
          `With a check on common practice beside the others: ${names(withStatus("common practice"))}.`,
          `Naming a work that is cited from memory, for a method or a definition: ${names(recalled)}.`,
        ],
      },
      { heading: "Beneath the functions", level: 2 },
      {
        paragraph:
          "What the functions are built on has checks of its own, among the tests (test/core/numeric.test.ts, test/core/season.test.ts):",
      },
      {
        list: [
          "the regression through the origin beneath FINISHEDFORECAST: the certified values of NIST StRD NoInt1, to 13 digits (errors alike, where the forecast lets them grow with the lot)",
          "the least adjustment beneath BALANCEFIT, under balances that are straight lines: the six flows of Narasimhan and Jordache, to their two decimals, and again with one flow misread",
          "chi-square, t and normal quantiles: printed tables, closed forms where there are some, and the way back from each quantile",
        ],
      },
      ...catalogue.flatMap(checksOf),
    ],
  };
}

function checksOf({ spec, page }: Entry): Block[] {
  const untold = page.checks.filter((check) => !isTold(check)).length;
  return [
    { heading: `${namespace}.${spec.id}`, level: 2 },
    checksTable(spec, page.checks),
    ...(untold === 0 ? [] : [{ paragraph: `And ${untold} on common practice, beside the function's code.` }]),
  ];
}
