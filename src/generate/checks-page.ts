import type { Check } from "../core/define";
import type { Entry } from "../core/entry";
import { namespace } from "../core/namespace";
import type { Block, Page } from "./blocks";
import { checksTable, isPublished, isTold } from "./checks-table";

const statuses = ["published", "certified", "exact", "memory", "common practice"] as const;

/** Degenerate ones count for themselves, never as a status. */
const count = (checks: readonly Check[], status: Check["status"]): number =>
  checks.filter((check) => check.status === status && check.degenerate === undefined).length;

const degenerateOf = (checks: readonly Check[]): number =>
  checks.filter(({ degenerate }) => degenerate !== undefined).length;

const names = (entries: readonly Entry[]): string => entries.map(({ spec }) => spec.id).join(", ") || "none";

/** What the numbers rest on: every function with all that it is checked against outside the project. */
export function checksPage(catalogue: readonly Entry[]): Page {
  const withStatus = (...wanted: Check["status"][]) =>
    catalogue.filter(({ page }) => wanted.some((status) => count(page.checks, status) > 0));
  const published = catalogue.filter(({ page }) => page.checks.some(isPublished));
  const unpublished = catalogue.filter((entry) => !published.includes(entry));
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
      { paragraph: "What a check puts to work is said beside it:" },
      {
        list: [
          "calculation: the way from the arguments to the answer, with numbers on which the answer hangs",
          "edge: where the calculation comes to an end or another rule takes over: nothing left, a tie, the limit itself",
          "input: how arguments may be given: a column, another word for the same, what stands for one left out, gaps",
          "waiting: a reading that is still blank",
          "refusal: what is refused, and in which words, in a cell of a table as well",
          "idle: an argument whose number could be another one without changing the answer of the check",
          "degenerate: so much lies idle that the check would pass for a function that does not do what it is for; such a check is counted apart, and never as a published value",
        ],
      },
      { heading: "In short", level: 2 },
      {
        table: ["Function", ...statuses, "degenerate"],
        rows: catalogue.map(({ spec, page }) => [
          spec.id,
          ...statuses.map((status) => String(count(page.checks, status) || "")),
          String(degenerateOf(page.checks) || ""),
        ]),
      },
      {
        list: [
          `Checked against a published or certified value: ${names(published)}.`,
          `Without a published value of their own, checked by hand arithmetic: ${names(unpublished)}.`,
          ...unpublished.map(({ spec, page }) => `${spec.id}: ${page.unpublished}`),
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
