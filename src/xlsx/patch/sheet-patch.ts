/** A sheet's part with other cells: in it only the text of the cells that change moves. */
import { addressOf } from "../../workbook/addresses";
import { areaIn } from "../read/cell-address";
import { writtenConstant, writtenFormula, writtenResult } from "./cell-text";
import type { Content, Edit } from "./edit";
import { type CellPlace, type RowPlace, type SheetPlaces, writtenOut } from "./sheet-places";
import { inText, plain, type Replacement, replaced, type Span, valueIn, withAttribute } from "./tag-scanner";

interface SheetPatchHelp {
  /** The number of the look with which cells of another number look as they are to. */
  readonly lookFor: (before: number, wanted: NonNullable<Edit["style"]>) => number;
  /** What the cell of a formula that spills says in `cm`. */
  readonly spillNumber: () => number;
}

interface PatchedSheet {
  readonly text: string;
  /** Whether a cell came to have a formula, or has one no more. */
  readonly formulasCameOrWent: boolean;
}

export function patchedSheet(places: SheetPlaces, edits: readonly Edit[], help: SheetPatchHelp): PatchedSheet {
  const patch = new SheetPatch(places, help);
  const byRow = new Map<number, Edit[]>();
  for (const edit of edits) byRow.set(edit.row, [...(byRow.get(edit.row) ?? []), edit]);
  for (const row of [...byRow.keys()].sort((one, other) => one - other)) {
    const inRow = (byRow.get(row) ?? []).sort((one, other) => one.column - other.column);
    patch.row(row, inRow);
  }
  return patch.end(edits);
}

class SheetPatch {
  readonly #places: SheetPlaces;
  readonly #help: SheetPatchHelp;
  readonly #replacements: Replacement[] = [];
  /** Groups whose text stands in a cell that loses it. */
  readonly #orphaned = new Set<string>();
  readonly #newRows: { readonly at: number; readonly text: string }[] = [];
  #formulasCameOrWent = false;
  /** The place in the list of rows behind which the next new row comes: edits come in the order of rows. */
  #nextRow = 0;
  readonly #newPlaces: { row: number; column: number }[] = [];

  constructor(places: SheetPlaces, help: SheetPatchHelp) {
    this.#places = places;
    this.#help = help;
  }

  row(row: number, edits: readonly Edit[]): void {
    const there = this.#places.rowAt(row);
    if (there) this.#rowThatIsThere(there, edits);
    else this.#newRow(row, edits);
  }

  #rowThatIsThere(there: RowPlace, edits: readonly Edit[]): void {
    const cells = this.#places.cellsIn(there);
    const byColumn = new Map(cells.map((cell) => [cell.column, cell]));
    const newCells: { at: number; text: string }[] = [];
    for (const edit of edits) {
      const cell = byColumn.get(edit.column);
      if (cell) this.#change(cell, edit);
      else {
        const text = this.#newCell(edit, there);
        const next = cells.find(({ column }) => column > edit.column);
        if (text !== "") newCells.push({ at: next?.start ?? there.insideEnd, text });
      }
    }
    if (newCells.length > 0) this.#insert(there, newCells);
  }

  end(edits: readonly Edit[]): PatchedSheet {
    this.#writeOutOrphans(edits);
    this.#placeNewRows();
    this.#widenDimension();
    return { text: replaced(this.#places.text, this.#replacements), formulasCameOrWent: this.#formulasCameOrWent };
  }

  #insert(row: RowPlace, cells: readonly { readonly at: number; readonly text: string }[]): void {
    if (row.inside < row.insideEnd || this.#places.text.charAt(row.inside - 2) !== "/") {
      for (const { at, text } of cells) this.#replace(at, at, text);
      return;
    }
    const open = this.#places.text.slice(row.start, row.inside).replace(/\s*\/>$/, ">");
    this.#replace(row.start, row.end, `${open}${cells.map(({ text }) => text).join("")}</${this.#prefix}row>`);
  }

  #newRow(row: number, edits: readonly Edit[]): void {
    const cells = edits.map((edit) => this.#newCell(edit, undefined)).join("");
    if (cells === "") return;
    const { rows } = this.#places;
    while (this.#nextRow < rows.length && (rows[this.#nextRow] as RowPlace).row < row) this.#nextRow += 1;
    const next = rows[this.#nextRow];
    const text = `<${this.#prefix}row r="${row + 1}">${cells}</${this.#prefix}row>`;
    this.#newRows.push({ at: next?.start ?? this.#places.data?.insideEnd ?? -1, text });
  }

  #placeNewRows(): void {
    if (this.#newRows.length === 0) return;
    const { data, prefix, text } = this.#places;
    if (!data) throw new Error("the sheet has no place for cells");
    if (data.inside < data.end) {
      for (const { at, text: row } of this.#newRows) this.#replace(at, at, row);
      return;
    }
    const open = text.slice(data.start, data.end).replace(/\s*\/>$/, ">");
    const rows = this.#newRows.map((row) => row.text).join("");
    this.#replace(data.start, data.end, `${open}${rows}</${prefix}sheetData>`);
  }

  /** A cell that the file does not have yet: it looks as its row or column does. */
  #newCell(edit: Edit, row: RowPlace | undefined): string {
    const look = this.#lookOf(edit, row ? this.#lookOfRow(row, edit.column) : this.#lookOfColumn(edit.column));
    const { content } = edit;
    const holdsNothing = !content || content.is === "blank" || (content.is === "result" && content.value === undefined);
    if (holdsNothing && !edit.style) return "";
    this.#newPlaces.push(edit);
    if (content?.is === "formula") this.#formulasCameOrWent = true;
    const tag = `<${this.#prefix}c r="${addressOf(edit.row, edit.column)}"${look > 0 ? ` s="${look}"` : ""}>`;
    return holdsNothing ? tag.replace(/>$/, "/>") : this.#filled(tag, content, edit);
  }

  #change(cell: CellPlace, edit: Edit): void {
    const { content } = edit;
    let tag = this.#places.tagOf(cell);
    const before = Number(valueIn(tag, "s") ?? 0);
    const look = this.#lookOf(edit, before);
    if (look !== before) tag = withAttribute(tag, "s", String(look));
    if (!content) this.#replace(cell.start, cell.inside, tag);
    else if (content.is === "result") this.#changeResult(cell, tag, content, edit);
    else this.#changeContent(cell, tag, content, edit);
  }

  #changeContent(cell: CellPlace, given: string, content: Exclude<Content, { is: "result" }>, edit: Edit): void {
    const formula = this.#places.partOf(cell, "f");
    const formulaTag = formula && this.#places.tagOf(formula);
    if ((formula !== undefined) !== (content.is === "formula")) this.#formulasCameOrWent = true;
    const group = formulaTag && valueIn(formulaTag, "t") === "shared" ? valueIn(formulaTag, "si") : undefined;
    if (formula && group !== undefined && formula.inside < formula.insideEnd) this.#orphaned.add(group);
    // What the cell was besides, a card say, it is no more.
    const tag = ["t", "cm", "vm", "ph"].reduce((text, name) => withAttribute(text, name, undefined), given);
    const open = tag.replace(/\s*\/?>$/, ">");
    this.#replace(
      cell.start,
      cell.end,
      content.is === "blank" ? open.replace(/>$/, "/>") : this.#filled(open, content, edit),
    );
  }

  /** The formula and whatever else the cell has stay as they are. */
  #changeResult(
    cell: CellPlace,
    given: string,
    content: Extract<Content, { is: "result" }>,
    { row, column }: Edit,
  ): void {
    const { value, isText, spill } = content;
    const formula = this.#places.partOf(cell, "f");
    const { type, elements } = writtenResult(value, isText, this.#prefix);
    const tag = withAttribute(withAttribute(given, "t", type), "vm", undefined);
    if (!formula) {
      const open = tag.replace(/\s*\/?>$/, ">");
      const isEmpty = elements === "";
      this.#replace(cell.start, cell.end, isEmpty ? open.replace(/>$/, "/>") : `${open}${elements}</${this.#prefix}c>`);
      return;
    }
    this.#replace(cell.start, cell.inside, tag);
    const old = this.#places.partOf(cell, "v") ?? this.#places.partOf(cell, "is");
    if (old) this.#replace(old.start, old.end, elements);
    else this.#replace(formula.end, formula.end, elements);
    if (spill) this.#changeSpill(formula, { ...spill, row, column });
  }

  #changeSpill(formula: Span, area: { row: number; column: number; rows: number; columns: number }): void {
    const tag = this.#places.tagOf(formula);
    if (valueIn(tag, "t") !== "array") return;
    this.#replace(formula.start, formula.inside, withAttribute(tag, "ref", referenceOf(area)));
  }

  /** The opening tag with what it comes to hold. */
  #filled(open: string, content: Exclude<Content, { is: "blank" }>, { row, column }: Edit): string {
    const x = this.#prefix;
    if (content.is === "constant") {
      const { type, elements } = writtenConstant(content, x);
      return `${withAttribute(open, "t", type)}${elements}</${x}c>`;
    }
    if (content.is === "result") {
      const { type, elements } = writtenResult(content.value, content.isText, x);
      return `${withAttribute(open, "t", type)}${elements}</${x}c>`;
    }
    const { formula, value, spill } = content;
    const { type, elements } = writtenResult(value, undefined, x);
    const typed = withAttribute(open, "t", type);
    if (!spill) return `${typed}${writtenFormula(formula, x)}${elements}</${x}c>`;
    const attributes = ` t="array" ref="${referenceOf({ row, column, ...spill })}"`;
    const tag = withAttribute(typed, "cm", String(this.#help.spillNumber()));
    return `${tag}${writtenFormula(formula, x, attributes)}${elements}</${x}c>`;
  }

  /** The cells that shared a text which is gone get theirs written out. */
  #writeOutOrphans(edits: readonly Edit[]): void {
    if (this.#orphaned.size === 0) return;
    const changed = new Set(
      edits.flatMap(({ row, column, content }) => (content && content.is !== "result" ? [`${row},${column}`] : [])),
    );
    for (const members of this.#places.sharing(this.#orphaned).values()) {
      for (const [member, text] of writtenOut(members, plain)) {
        if (changed.has(`${member.row},${member.column}`)) continue;
        const { start, end } = member.formula;
        this.#replace(start, end, `<${this.#prefix}f>${inText(text)}</${this.#prefix}f>`);
      }
    }
  }

  #widenDimension(): void {
    const span = this.#places.child("dimension");
    const tag = span && this.#places.tagOf(span);
    const reference = tag && valueIn(tag, "ref");
    if (!span || !reference || this.#newPlaces.length === 0) return;
    const area = areaIn(reference);
    let [top, left, bottom, right] = [area.row, area.column, area.row + area.rows - 1, area.column + area.columns - 1];
    for (const { row, column } of this.#newPlaces) {
      [top, left] = [Math.min(top, row), Math.min(left, column)];
      [bottom, right] = [Math.max(bottom, row), Math.max(right, column)];
    }
    const wider = referenceOf({ row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 });
    if (wider !== reference) this.#replace(span.start, span.inside, withAttribute(tag, "ref", wider));
  }

  #lookOf({ style }: Edit, before: number): number {
    return style ? this.#help.lookFor(before, style) : before;
  }

  #lookOfRow(row: RowPlace, column: number): number {
    const tag = this.#places.text.slice(row.start, row.inside);
    const isOwn = ["1", "true"].includes(valueIn(tag, "customFormat") ?? "");
    return isOwn ? Number(valueIn(tag, "s") ?? 0) : this.#lookOfColumn(column);
  }

  #lookOfColumn(column: number): number {
    const runs = this.#places.columns;
    return runs.find(({ first, last }) => column >= first && column <= last)?.look ?? 0;
  }

  get #prefix(): string {
    return this.#places.prefix;
  }

  #replace(start: number, end: number, text: string): void {
    this.#replacements.push({ start, end, text });
  }
}

const referenceOf = ({
  row,
  column,
  rows,
  columns,
}: {
  row: number;
  column: number;
  rows: number;
  columns: number;
}): string => {
  const [first, last] = [addressOf(row, column), addressOf(row + rows - 1, column + columns - 1)];
  return first === last ? first : `${first}:${last}`;
};
