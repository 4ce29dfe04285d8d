import { plainName } from "../core/describe";
import type { Entry } from "../core/entry";
import { namespace } from "../core/namespace";
import { differences, everywhere } from "../named-formulas/differences";
import { leftOut } from "../named-formulas/left-out";
import { namedFormulas, namedIds } from "../named-formulas/named-formulas";
import type { Page } from "./blocks";

/** Which functions have a named formula, where its answer may differ, and which have none and why. */
export function namedFormulasPage(catalogue: readonly Entry[]): Page {
  const withName = catalogue.filter(({ spec }) => namedIds.has(spec.id));
  return {
    name: "named-formulas",
    title: "The functions as named formulas",
    blocks: [
      { heading: "The functions as named formulas", level: 1 },
      {
        paragraph: `Of ${catalogue.length} functions ${withName.length} are to be had as names of a workbook, without the add-in. They take the same arguments in the same order. How they come into a workbook, and where they work: without-the-add-in.md.`,
      },
      {
        table: ["In the add-in", "As a name", "What it answers"],
        rows: withName.map(({ spec, page }) => [`${namespace}.${spec.id}`, plainName(spec.id), page.summary]),
      },
      {
        paragraph: `They call each other, and parts of which nothing else is to be known; together ${namedFormulas.size} names. A workbook gets only those that it needs.`,
      },
      { heading: "Where an answer may differ", level: 2 },
      {
        paragraph:
          "Beyond what stands here no answer differs, to the last digit: held in a second, independent spreadsheet engine against the add-in's own arithmetic, over every example, check and call of the hosts' table and random calls (`npm run names-agree`).",
      },
      {
        table: ["Function", "By how much", "Why"],
        rows: Object.entries(differences).map(([id, { share, why }]) => [
          plainName(id),
          share === 0 ? "not in a number" : `${share} of the largest number of its row`,
          why,
        ]),
      },
      ...everywhere.map((paragraph) => ({ paragraph })),
      { heading: "Functions without a named formula", level: 2 },
      {
        table: ["Function", "Why it has none"],
        rows: Object.entries(leftOut).map(([id, why]) => [`${namespace}.${id}`, why]),
      },
    ],
  };
}
