/** What a sheet calls the cells that a formula gives to its functions, for messages that otherwise name arguments. */
import { areaWithin, partsOf } from "../workbook/references";
import type { TeaCall } from "../working/formula-reading";
import type { At } from "./headed-cells";
import type { TeaFormula } from "./known-cell";
import type { KnownSheet } from "./known-sheet";
import { isWords } from "./meant-as-number";
import { isHeadings } from "./row-kinds";

/** So many cells to the left of a cell its label may stand. */
const furthestLabel = 3;

/** By argument, the label or heading in quotes; without those that two calls give different cells. */
export function argumentNames({ calls }: TeaFormula, sheet: KnownSheet): Readonly<Record<string, string>> {
  const names = new Map<string, string | undefined>();
  for (const call of calls.flatMap(withInner)) {
    for (const [place, { name }] of call.entry.spec.parameters.entries()) {
      const given = call.given[place];
      const label = given?.is === "reference" ? labelOf(given.address, sheet) : undefined;
      if (given !== undefined) names.set(name, names.has(name) && names.get(name) !== label ? undefined : label);
    }
  }
  return Object.fromEntries([...names].flatMap(([name, label]) => (label === undefined ? [] : [[name, `“${label}”`]])));
}

/** A call and those inside its arguments. */
const withInner = (call: TeaCall): TeaCall[] => [
  call,
  ...call.given.flatMap((given) => (given.is === "call" ? withInner(given.call) : [])),
];

function labelOf(address: string, { area, knownAt, valueAt, formulaAt, isSpilled }: KnownSheet): string | undefined {
  const { sheet, cells: written } = partsOf(address);
  if (sheet !== undefined && sheet !== area.sheet) return undefined;
  const of = areaWithin(written, { rows: area.row + area.rows, columns: area.column + area.columns });
  if (of === undefined) return undefined;
  const { row, column } = of;
  const known = knownAt({ row, column })?.heading;
  if (known !== undefined) return known;
  const wordsAt = (at: At) => {
    const value = valueAt(at);
    return isWords(value) && formulaAt(at) === "" && !isSpilled(at) ? value.trim() : undefined;
  };
  const lefts =
    of.rows > 1 ? [] : Array.from({ length: Math.min(furthestLabel, column) }, (_, far) => column - 1 - far);
  const left = lefts.find((at) => valueAt({ row, column: at }) !== "");
  const label = left === undefined ? undefined : wordsAt({ row, column: left });
  for (let above = of.rows > 1 ? row : row - 1; above >= area.row; above -= 1) {
    const values = area.values[above - area.row] ?? [];
    if (values.every((value) => value === "")) break;
    const heading = isHeadings(values) ? wordsAt({ row: above, column }) : undefined;
    if (heading === undefined) continue;
    // In a book the word at the left is the name of a row, and has a heading of its own.
    const isOfBook = label === undefined || wordsAt({ row: above, column: left ?? column }) !== undefined;
    return isOfBook ? heading : label;
  }
  return label;
}
