/** What the sheets of the book of a day share. */
import type { Caution } from "../../core/cautions";
import type { PartsWords, SampleWords } from "../../words/samples";
import type { PageSetup } from "../../workbook/workbook";
import { columnHead, columnHeadLeft, input, label, remark, section, title, unit } from "../look";
import type { SheetBuilder } from "../sheet-builder";

export function heading({ put, height }: SheetBuilder, name: string, says: string): void {
  put("A1", name, title);
  height(1, 24);
  put("A2", says, remark);
}

/** Label, tinted cell and unit, row after row. A null is a cell to be filled. */
export function inputs(
  { put }: SheetBuilder,
  firstRow: number,
  rows: readonly (readonly [
    label: string,
    content: number | string | null,
    format: string | undefined,
    unit?: string,
  ])[],
): void {
  for (const [index, [name, content, format, unitName]] of rows.entries()) {
    const row = firstRow + index;
    put(`A${row}`, name, label);
    put(`B${row}`, content, input(format));
    if (unitName !== undefined) put(`C${row}`, unitName, unit);
  }
}

/** A name over a block, underlined as far as the block is wide. */
export function block({ put, styleRest }: SheetBuilder, address: string, name: string, rest: string): void {
  put(address, name, section);
  styleRest(rest, section);
}

export function heads({ put }: SheetBuilder, row: number, firstColumn: string, names: readonly string[]): void {
  const first = firstColumn.charCodeAt(0);
  for (const [index, name] of names.entries()) {
    put(`${String.fromCharCode(first + index)}${row}`, name, index === 0 ? columnHeadLeft : columnHead);
  }
}

/** The cautions of a sheet, each in a line of its own, under everything else. */
export function cautions({ put }: SheetBuilder, row: number, listed: readonly Caution[], words: SampleWords): void {
  for (const [index, caution] of listed.entries()) {
    const { title: name, text } = words.cautions[caution.id] ?? caution;
    put(`A${row + index}`, words.told(name, text), remark);
  }
  put(`A${row + listed.length}`, words.deferral, remark);
}

export const pageOf = ({ footer }: PartsWords): PageSetup => ({
  paper: "A4",
  landscape: true,
  fitToOnePageWide: true,
  footer,
});
