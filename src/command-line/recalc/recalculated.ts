/** One file worked out: what changes in it, sheet by sheet, and its bytes with that. */
import type { LeftFormulas } from "../../engine/left-formulas";
import { addressOf } from "../../workbook/addresses";
import { sheetInFormula } from "../../workbook/references";
import type { Cell, Workbook } from "../../workbook/workbook";
import type { Edit } from "../../xlsx/patch/edit";
import { editsBetween } from "../../xlsx/patch/edits-between";
import { PatchableBook } from "../../xlsx/patch/patchable-book";
import { readWorkbook } from "../../xlsx/read-workbook";
import { Refusal } from "../../xlsx/refusal";
import type { SavingRemark } from "../../xlsx/remarks";
import { editFrom, withEdits } from "./set-cells";
import { workedOut } from "./worked-out";

export interface Recalculated {
  readonly sheets: readonly RecalculatedSheet[];
  /** With every change; undefined where nothing changes. */
  readonly bytes: Uint8Array | undefined;
  readonly warnings: readonly SavingRemark[];
}

export interface RecalculatedSheet {
  readonly name: string;
  readonly formulas: number;
  readonly changed: readonly Change[];
  /** Formulas that keep the results that they came with. */
  readonly left: readonly { readonly at: string; readonly why: string }[];
}

interface Change {
  readonly at: string;
  readonly stored: Cell["value"];
  readonly now: Cell["value"];
}

interface Wish {
  /** `Lot!B9=820`. */
  readonly set: readonly string[];
  /** What changes by itself, such as today's date, keeps its stored value. */
  readonly keepsChanging: boolean;
}

/** Throws a Refusal for a file that cannot be read, and for a cell that cannot be set. */
export async function recalculated(bytes: Uint8Array, { set, keepsChanging }: Wish): Promise<Recalculated> {
  const stored = readWorkbook(bytes);
  const book = new PatchableBook(bytes);
  const byHand = set.map((text) => editFrom(text, stored));
  for (const edit of byHand) {
    const refusal = book.refusal(edit);
    if (refusal !== undefined) throw new Refusal(refusal);
  }
  const given = withEdits(stored, byHand);
  const asStored = await workedOut(stored, { keepsChanging, isAsStored: true });
  const { workbook, left } =
    byHand.length === 0
      ? asStored
      : await workedOut(given, { keepsChanging, isAsStored: false, before: stillThere(given, asStored.left) });
  const results = editsBetween(given, workbook, (cell) => left.has(cell));
  const edits = joined(byHand, results);
  const hasLeft = left.size > 0;
  return {
    sheets: summaries(given, results, left),
    bytes: edits.length > 0 ? book.saved(edits, { asksForCalculation: hasLeft }) : undefined,
    warnings: edits.length > 0 ? book.warnings() : [],
  };
}

/** Cells that were set are others, and with a formula of their own. */
function stillThere(given: Workbook, left: LeftFormulas): LeftFormulas {
  const cells = new Set(given.sheets.flatMap((sheet) => sheet.cells));
  return new Map([...left].filter(([cell]) => cells.has(cell)));
}

/** A formula that was set gets its result in the same edit. Looks are no business of a calculation. */
function joined(byHand: readonly Edit[], results: readonly Edit[]): Edit[] {
  const keyOf = ({ sheet, row, column }: Edit) => `${sheet}!${row},${column}`;
  const byPlace = new Map(results.map((edit) => [keyOf(edit), edit]));
  const typed = byHand.map((edit): Edit => {
    const result = byPlace.get(keyOf(edit))?.content;
    byPlace.delete(keyOf(edit));
    if (edit.content?.is !== "formula" || result?.is !== "result") return edit;
    const { value, spill } = result;
    return { ...edit, content: { ...edit.content, ...(value !== undefined && { value }), ...(spill && { spill }) } };
  });
  return [...typed, ...[...byPlace.values()].flatMap(({ style: _, ...edit }) => (edit.content ? [edit] : []))];
}

function summaries(given: Workbook, results: readonly Edit[], left: ReadonlyMap<Cell, string>): RecalculatedSheet[] {
  return given.sheets.map(({ name, cells }) => {
    const at = ({ row, column }: { row: number; column: number }) =>
      `${sheetInFormula(name)}!${addressOf(row, column)}`;
    const stored = new Map(cells.map((cell) => [at(cell), cell.value]));
    return {
      name,
      formulas: cells.filter(({ formula }) => formula !== undefined).length,
      changed: results.flatMap((edit): Change[] =>
        edit.sheet === name && edit.content?.is === "result"
          ? [{ at: at(edit), stored: stored.get(at(edit)), now: edit.content.value }]
          : [],
      ),
      left: cells.flatMap((cell) => (left.has(cell) ? [{ at: at(cell), why: left.get(cell) ?? "" }] : [])),
    };
  });
}
