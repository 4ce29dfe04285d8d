import { catalogue } from "../core/catalogue";
import { namespace } from "../core/namespace";
import type { SampleWords } from "../words/samples";
import { addressOf, placeOf } from "../workbook/addresses";
import type { Style } from "../workbook/workbook";
import { columnHead, columnHeadLeft, label } from "./look";
import type { SheetBuilder } from "./sheet-builder";

/** A table that one formula spills, and how its headings look. */
interface SpilledTable {
  readonly id: string;
  readonly given: readonly string[];
  /** Where its first heading stands. */
  readonly at: string;
  /** How the cell below looks, where the first row begins. */
  readonly first?: Style;
  readonly headLeft?: Style;
  readonly head?: Style;
  /** How the headings of some columns look, by the names that the function gives. */
  readonly heads?: Readonly<Record<string, Style>>;
}

/** In the language of the functions their headings spill with the table; another language writes its own above it. */
export function spilledTable({ put }: SheetBuilder, { inCells }: SampleWords, table: SpilledTable): void {
  const { id, given, at, first = label, headLeft = columnHeadLeft, head = columnHead, heads = {} } = table;
  const spec = catalogue.map((entry) => entry.spec).find((each) => each.id === id);
  if (spec === undefined) throw new Error(`there is no function ${id}`);
  const { row, column } = placeOf(at);
  const columns = "columns" in spec.result ? spec.result.columns : [];
  const spills = inCells === undefined;
  for (const [right, { name }] of columns.entries()) {
    const own = right === 0 ? `=${namespace}.${id}(${given.join(",")})` : null;
    const look = heads[name] ?? (right === 0 ? headLeft : head);
    put(addressOf(row, column + right), spills ? own : (inCells.columns[name] ?? name), look);
  }
  if (spills) return;
  const before = spec.parameters.findIndex(({ name }) => name === "headers");
  const filled = Array.from({ length: before }, (_, index) => given[index] ?? "");
  put(addressOf(row + 1, column), `=${namespace}.${id}(${[...filled, "FALSE"].join(",")})`, first);
}
