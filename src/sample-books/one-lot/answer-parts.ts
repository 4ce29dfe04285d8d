import type { OneLotWords } from "../../words/samples";
import * as look from "../look";
import type { SheetBuilder } from "../sheet-builder";
import { firstRoundRow, roundColumns } from "./places";

/** A heading across the answers' columns. */
export function answersHeading({ put, styleRest }: SheetBuilder, row: number, text: string, note?: string): void {
  put(`E${row}`, text, look.section, note);
  styleRest(`F${row}:K${row}`, look.section);
}

export function heads({ put }: SheetBuilder, row: number, names: readonly string[]): void {
  for (const [index, name] of names.entries()) {
    put(`${"EFGHIJK"[index]}${row}`, name || null, index === 0 ? look.columnHeadLeft : look.columnHead);
  }
}

/** The names of the rounds as headings that follow what is typed. */
export const roundHeads = ({ answers }: OneLotWords): string[] =>
  roundColumns.map((_, index) => `=${answers.plan.round(`A${firstRoundRow + index}`)}`);
