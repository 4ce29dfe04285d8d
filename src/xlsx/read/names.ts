/** Names that a maker gives to cells, numbers and formulas, and those with which a file says what prints. */
import { fromFileFormula } from "../../workbook/formula-names";
import type { DefinedName } from "../../workbook/workbook";
import { isTrue } from "../container/xml-events";
import { childrenAt, type XmlElement } from "../container/xml-tree";

interface ReadNames {
  readonly names: readonly DefinedName[];
  /** Names that point nowhere or into another workbook, or that no formula can say. */
  readonly leftOut: readonly string[];
  /** What prints and what repeats on every page, by the place of the sheet in the file. */
  readonly printAreas: ReadonlyMap<number, string>;
  readonly printTitles: ReadonlyMap<number, string>;
}

/** `sheets`: all of the file, in their order; `shown`: those that are read. */
export function readNames(
  book: XmlElement | undefined,
  sheets: readonly string[],
  shown: ReadonlySet<string>,
): ReadNames {
  const names: DefinedName[] = [];
  const leftOut: string[] = [];
  const printAreas = new Map<number, string>();
  const printTitles = new Map<number, string>();
  for (const { attributes, text } of childrenAt(book, "definedNames")) {
    const { name = "", localSheetId } = attributes;
    const index = Number(localSheetId ?? -1);
    if (name === "_xlnm.Print_Area") printAreas.set(index, text.trim());
    if (name === "_xlnm.Print_Titles") printTitles.set(index, text.trim());
    if (name.startsWith("_xlnm.") || name.startsWith("_xlfn.") || isTrue(attributes.function)) continue;
    const sheet = localSheetId === undefined ? undefined : sheets[index];
    const isSheetMissing = localSheetId !== undefined && !shown.has(sheet ?? "");
    const leadsAway = /#REF!|\[\d+\]/.test(text) || text.trim() === "";
    if (isSheetMissing || leadsAway || !isPlain(name)) leftOut.push(name);
    else names.push({ name, formula: `=${fromFileFormula(text.trim())}`, ...(sheet !== undefined && { sheet }) });
  }
  return { names, leftOut, printAreas, printTitles };
}

const isPlain = (name: string): boolean => /^[\p{L}_][\p{L}\p{N}_.]*$/u.test(name);
