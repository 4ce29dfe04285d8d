import type { Sheet } from "../workbook/workbook";
import type { Parts } from "./parts";

/** What this file has that a workbook of ours has no place for, in words; none of it comes out again. */
export async function leftOut(parts: Parts, sheets: readonly Sheet[]): Promise<string[]> {
  const inSheets = await textsOf(parts, /^xl\/worksheets\/[^/]+\.xml$/);
  const inDrawings = await textsOf(parts, /^xl\/drawings\/[^/]+\.xml$/);
  const chartsRead = sheets.reduce((sum, { charts = [] }) => sum + charts.length, 0);
  const hasElement = (texts: readonly string[], names: string): boolean =>
    texts.some((text) => new RegExp(`<(?:\\w+:)?(?:${names})[\\s/>]`).test(text));
  const has: readonly (readonly [words: string, found: boolean])[] = [
    ["data validation", hasElement(inSheets, "dataValidation")],
    ["conditional formats", hasElement(inSheets, "conditionalFormatting")],
    ["links", hasElement(inSheets, "hyperlink")],
    ["pictures", hasElement(inDrawings, "pic") || hasElement(inSheets, "picture")],
    ["shapes", hasElement(inDrawings, "sp|cxnSp") || parts.has(/^xl\/diagrams\//)],
    ["other kinds of charts", parts.paths(/^xl\/charts\/chart(?:Ex)?\d*\.xml$/).length > chartsRead],
    ...kindsOfParts.map(([words, path]) => [words, parts.has(path)] as const),
  ];
  return has.filter(([, found]) => found).map(([words]) => words);
}

/** What is a part of its own in a file, by the paths that programs give it. */
const kindsOfParts: readonly (readonly [words: string, path: RegExp])[] = [
  ["chart sheets", /^xl\/chartsheets\/[^/]+\.xml$/],
  ["dialog sheets", /^xl\/dialogsheets\/[^/]+\.xml$/],
  ["pivot tables", /^xl\/pivot(?:Tables|Cache)\//],
  ["slicers and timelines", /^xl\/(?:slicers|timelines)\//],
  ["buttons and boxes", /^xl\/(?:ctrlProps|activeX)\//],
  ["macros", /^xl\/(?:vbaProject\.bin|macrosheets\/)/],
  ["objects of other programs", /^xl\/embeddings\//],
  ["answers to comments", /^xl\/threadedComments\//],
  ["links to other workbooks", /^xl\/externalLinks\/[^/]+\.xml$/],
  ["connections to other data", /^xl\/(?:connections\.xml|queryTables\/)/],
  ["a signature", /^_xmlsignatures\//],
];

const textsOf = async (parts: Parts, paths: RegExp): Promise<string[]> =>
  Promise.all(parts.paths(paths).map(async (path) => (await parts.text(path)) ?? ""));
