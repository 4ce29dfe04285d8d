/** A workbook's names as the engine takes and gives them. */
import type { IWorkbookData } from "@univerjs/core";
import { type TableColumns, withAddresses } from "../workbook/table-references";
import { workableNames } from "../workbook/workable-names";
import type { DefinedName, Workbook } from "../workbook/workbook";

/** What the engine calls its place for names in a snapshot. */
const resource = "SHEET_DEFINED_NAME_PLUGIN";

interface EngineName {
  readonly id: string;
  readonly name: string;
  readonly formulaOrRefString: string;
  readonly localSheetId?: string;
}

/** A name as the workbook has it, and as it was put into the engine; without the latter, it was not. */
interface KeptName {
  readonly name: DefinedName;
  readonly here?: string;
}

type Fields = Pick<IWorkbookData, "resources" | "custom">;

/** The fields of a snapshot that hold the names. */
export function namesInEngine({ names = [] }: Workbook, tables: readonly TableColumns[]): Fields {
  if (names.length === 0) return {};
  const workable = workableNames(names);
  const kept = names.map((name): KeptName => {
    const formula = workable.has(name) ? withAddresses(name.formula, {}, tables) : undefined;
    return { name, ...(formula !== undefined && { here: engineText(formula) }) };
  });
  const given = kept.flatMap(({ name, here }, index): [string, EngineName][] =>
    here === undefined ? [] : [[nameId(index), { id: nameId(index), name: name.name, formulaOrRefString: here }]],
  );
  return {
    resources: [{ name: resource, data: JSON.stringify(Object.fromEntries(given)) }],
    custom: { names: kept },
  };
}

/** The other way; references have moved with their cells, and names may have come and gone. */
export function namesOf({ resources = [], custom }: Fields): DefinedName[] {
  const data = resources.find(({ name }) => name === resource)?.data;
  const inEngine = new Map(Object.entries(data ? (JSON.parse(data) as Record<string, EngineName>) : {}));
  const kept = (custom?.names ?? []) as readonly KeptName[];
  const names = kept.flatMap(({ name, here }, index): DefinedName[] => {
    if (here === undefined) return [name];
    const now = inEngine.get(nameId(index));
    inEngine.delete(nameId(index));
    if (!now) return [];
    const formula = now.formulaOrRefString === here ? name.formula : formulaOf(now.formulaOrRefString);
    return [{ ...name, name: now.name, formula }];
  });
  const typed = [...inEngine.values()].map((each) => ({
    name: each.name,
    formula: formulaOf(each.formulaOrRefString),
  }));
  return [...names, ...typed];
}

const nameId = (index: number): string => `name-${index + 1}`;

/** The engine puts the text of a name into the formula as it stands: brackets keep a sum whole there. */
function engineText(formula: string): string {
  const text = formula.slice(1);
  return /^(?:'(?:[^']|'')*'!|[\p{L}\p{N}_.]+!)?\$?[A-Z]+\$?\d+(?::\$?[A-Z]+\$?\d+)?$/iu.test(text)
    ? text
    : `=(${text})`;
}

const formulaOf = (text: string): string =>
  /^=\(.*\)$/s.test(text) ? `=${text.slice(2, -1)}` : `=${text.replace(/^=/, "")}`;
