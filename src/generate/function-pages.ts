import { deferral } from "../core/cautions";
import type { FunctionSpec, Given } from "../core/define";
import { groups } from "../core/define";
import {
  accepts,
  asSentence,
  columnsInWords,
  formula,
  meaning,
  oneCellForm,
  plainName,
  resultInWords,
  rowsOf,
  signature,
  whenBlank,
} from "../core/describe";
import type { Entry } from "../core/entry";
import { namespace } from "../core/namespace";
import type { Block, Page } from "./blocks";
import { cellText, checksTable, cited } from "./checks-table";
import { howSureBlocks } from "./how-sure-page";
import type { MeasuredStudy } from "./measured";

function examples({ spec, page }: Entry): Block[] {
  return page.examples.flatMap(({ given, gives, shows }): Block[] => {
    const rows = rowsOf(gives).map((row) => row.map(cellText));
    const message = typeof gives === "object" && "error" in gives ? gives.message : undefined;
    const only = rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : undefined;
    const typedFormula: Block[] = [{ paragraph: `${asSentence(shows)}:` }, { code: formula(spec, given) }];
    if (message !== undefined) return [...typedFormula, { paragraph: `gives ${only}, ${message}` }];
    if (only !== undefined)
      return [...typedFormula, { paragraph: only === "" ? "gives an empty cell" : `gives ${only}` }];
    const headed = hasHeadings(spec, rows[0]);
    const head = headed ? (rows[0] ?? []) : (rows[0] ?? []).map(() => "");
    return [...typedFormula, { paragraph: "gives" }, { table: head, rows: headed ? rows.slice(1) : rows }];
  });
}

/** Tables come with their headings unless the example leaves them out. */
const hasHeadings = ({ result }: FunctionSpec, row: readonly string[] | undefined): boolean =>
  result.shape === "table" && row?.[0] === result.columns[0]?.name;

function spill({ spec, page }: Entry): Block[] {
  const given: readonly Given[] | undefined = page.examples[0]?.given;
  const one = given === undefined ? undefined : oneCellForm(spec, given);
  if (one === undefined) return [];
  return [
    {
      paragraph:
        "A spill cannot stand inside a worksheet table. There, take one cell of it: INDEX names it by its place.",
    },
    { code: one },
  ];
}

function functionPage(entry: Entry, studies: readonly MeasuredStudy[]): Page {
  const { spec, page } = entry;
  const name = `${namespace}.${spec.id}`;
  const columns = columnsInWords(spec);
  const cautions: Block[] = [
    { list: page.cautions.map(({ title, text }) => `${title}. ${text}`) },
    { paragraph: deferral },
  ];
  return {
    name: spec.id.toLowerCase(),
    title: name,
    blocks: [
      { heading: name, level: 1 },
      { paragraph: page.summary },
      { code: signature(spec) },
      {
        table: ["Argument", "Meaning", "Must be", "Unit", "Left blank"],
        rows: spec.parameters.map((parameter) => [
          parameter.name,
          meaning(parameter, page.parameters),
          accepts(parameter),
          parameter.quantity.unit,
          whenBlank(parameter),
        ]),
      },
      { heading: "Answer", level: 2 },
      { paragraph: resultInWords(spec) },
      ...(columns.length === 0
        ? []
        : [
            {
              table: ["Column", "Number format", "Unit"],
              rows: columns.map(({ name, format, unit }) => [name, format, unit]),
            },
          ]),
      ...spill(entry),
      { heading: "Formula", level: 2 },
      { code: page.formula },
      { heading: "When to use it", level: 2 },
      ...page.guide.map((paragraph) => ({ paragraph })),
      { heading: "Examples", level: 2 },
      ...examples(entry),
      ...howSureBlocks(spec.id, studies),
      ...(page.cautions.length === 0 ? [] : [{ heading: "Cautions", level: 2 } as const, ...cautions]),
      ...(page.sources.length === 0
        ? []
        : [{ heading: "Sources", level: 2 } as const, { list: page.sources.map(cited) }]),
      { heading: "Checked against", level: 2 },
      ...(page.unpublished === undefined ? [] : [{ paragraph: page.unpublished }]),
      checksTable(spec, page.checks),
    ],
  };
}

function indexPage(catalogue: readonly Entry[]): Page {
  return {
    name: "index",
    title: "Functions of Tea Mass Balance",
    blocks: [
      { heading: "Functions", level: 1 },
      {
        paragraph: `Every function with its arguments, examples and checks. Where decimals are commas, put ; between the arguments. In Google Sheets the names have _ for the dot, as in ${plainName("TARGETWEIGHT")}.`,
      },
      ...groups.flatMap((group): Block[] => {
        const entries = catalogue.filter(({ spec }) => spec.group === group);
        if (entries.length === 0) return [];
        const links = entries.map(({ spec, page }) => ({
          text: `${namespace}.${spec.id}`,
          page: spec.id.toLowerCase(),
          after: `: ${page.summary}`,
        }));
        return [{ heading: asSentence(group), level: 2 }, { links }];
      }),
    ],
  };
}

/** The index and a page for each function. */
export const functionPages = (catalogue: readonly Entry[], studies: readonly MeasuredStudy[]): Page[] => [
  indexPage(catalogue),
  ...catalogue.map((entry) => functionPage(entry, studies)),
];
