/** Files that need no add-in: functions of the add-in called as named formulas of the workbook, and back again. */
import { idInFile, idInPlainName, plainName, savedName } from "../core/describe";
import { namedFormulas, namedIds, neededFor } from "../named-formulas/named-formulas";
import { toFileFormula } from "../workbook/formula-names";
import { type Renamed, withRenamedCalls } from "./patch/renamed-calls";

export interface WithoutAddIn extends Pick<Renamed, "bytes" | "formulas" | "names" | "namesBefore"> {
  /** Functions that have no named formula and are still called in the add-in's way. */
  readonly left: readonly string[];
}

/** As names such as `TEA_OUTTURN`, with just the names that are called and those that these call. */
export const withNamedFunctions = (bytes: Uint8Array): WithoutAddIn => renamed(bytes, toName);

/** As the add-in's functions. */
export const withAddInFunctions = (bytes: Uint8Array): WithoutAddIn => renamed(bytes, fromName);

/** With the names that its formulas call already. */
export const withCalledNames = (bytes: Uint8Array): Uint8Array => renamed(bytes, () => undefined).bytes;

function toName(called: string): string | undefined {
  const id = idInFile(called);
  return id !== undefined && namedIds.has(id) ? plainName(id) : undefined;
}

function fromName(called: string): string | undefined {
  const id = idInPlainName(called);
  return id !== undefined && namedIds.has(id) ? savedName(id) : undefined;
}

function renamed(bytes: Uint8Array, calledInstead: (name: string) => string | undefined): WithoutAddIn {
  const { called, ...rest } = withRenamedCalls(bytes, {
    calledInstead,
    isOurs: (name) => namedFormulas.has(name),
    neededFor: (names) =>
      neededFor([...names].filter((name) => namedFormulas.has(name))).map(({ name, formula, comment }) => ({
        name,
        comment,
        formula: toFileFormula(formula).slice(1),
      })),
  });
  return { ...rest, left: [...called].flatMap((name) => idInFile(name) ?? []).sort() };
}
