/** Names that a maker gives to cells, numbers and formulas: which a workbook holds, and which can be worked out here. */
import { fromFileFormula } from "../workbook/formula-names";
import type { DefinedName } from "../workbook/workbook";
import type { Parts } from "./parts";
import { elementAt } from "./xml";

export interface ReadNames {
  readonly names: readonly DefinedName[];
  /** Names that point nowhere or into another workbook, or that our writer cannot write. */
  readonly leftOut: readonly string[];
}

export async function readNames(parts: Parts, sheetNames: readonly string[]): Promise<ReadNames> {
  const book = await parts.read("xl/workbook.xml");
  const all = (elementAt(book, "sheets")?.children ?? []).map(({ attributes }) => attributes.name ?? "");
  const names: DefinedName[] = [];
  const leftOut: string[] = [];
  for (const { attributes, text } of elementAt(book, "definedNames")?.children ?? []) {
    const { name = "", localSheetId } = attributes;
    // What prints, and what a filter covers, is said with names too: they are the page's set-up, not a maker's.
    if (name.startsWith("_xlnm.") || name.startsWith("_xlfn.") || attributes.function === "1") continue;
    const sheet = localSheetId === undefined ? undefined : all[Number(localSheetId)];
    const isSheetMissing = localSheetId !== undefined && !sheetNames.includes(sheet ?? "");
    const leadsAway = /#REF!|\[\d+\]/.test(text) || text.trim() === "";
    if (isSheetMissing || leadsAway || !canBeWritten(name)) leftOut.push(name);
    else names.push({ name, formula: `=${fromFileFormula(text.trim())}`, ...(sheet !== undefined && { sheet }) });
  }
  return { names, leftOut };
}

const canBeWritten = (name: string): boolean => /^[\p{L}_][\p{L}\p{N}_.]*$/u.test(name);

/**
 * Whether the engine can work a name out. It puts the text of a name into the formula: what a name means by a cell
 * without dollars, by being called, or by standing for one thing here and another there, is lost on it.
 */
export function canBeWorkedOut({ name, formula }: DefinedName, all: readonly DefinedName[]): boolean {
  const isOnlyOne = all.filter((other) => other.name.toUpperCase() === name.toUpperCase()).length === 1;
  return isOnlyOne && !/\bLAMBDA\s*\(/i.test(formula) && !hasRelative(formula);
}

function hasRelative(formula: string): boolean {
  const bare = formula.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'!?/g, " ").replace(/\[[^\]]*\]/g, " ");
  const cell = /(?<![\p{L}\p{N}_.$])(\$?)[A-Z]{1,3}(\$?)[1-9]\d{0,6}(?![\p{L}\p{N}_.(])/giu;
  const wholeColumns = /(?<![\p{L}\p{N}_.$])[A-Z]{1,3}:\$?[A-Z]{1,3}(?![\p{L}\p{N}_.(])/iu;
  const wholeRows = /(?<![\p{L}\p{N}_.$:])\d+:\$?\d+(?![\p{L}\p{N}_.])/u;
  return (
    [...bare.matchAll(cell)].some(([, one, other]) => !one || !other) || wholeColumns.test(bare) || wholeRows.test(bare)
  );
}
