/** Where rows and cells stand in the text of a sheet's part, and what of it keeps cells from being changed. */
import type { Area } from "../../workbook/workbook";
import { areaIn, placeIn } from "../read/cell-address";
import { MovableFormula } from "../read/shared-formulas";
import { childrenOf, prefixAt, type Span, TagScanner, valueIn } from "./tag-scanner";

export interface RowPlace {
  readonly row: number;
  readonly start: number;
  /** Behind its opening tag. */
  readonly inside: number;
  readonly insideEnd: number;
  readonly end: number;
}

export interface CellPlace extends Span {
  readonly column: number;
}

/** A formula that reaches over an area, or that others share. */
export interface AreaFormula {
  readonly is: "array" | "dynamic" | "dataTable";
  /** The cell that holds it. */
  readonly row: number;
  readonly column: number;
  readonly area: Area;
}

export class SheetPlaces {
  readonly text: string;
  /** What the names of elements begin with, such as `x:`. */
  readonly prefix: string;
  /** The children of the outermost element. */
  readonly children: readonly Span[];
  readonly data: Span | undefined;
  readonly rows: readonly RowPlace[];
  readonly areaFormulas: readonly AreaFormula[];
  readonly #rowByNumber = new Map<number, RowPlace>();

  constructor(text: string) {
    this.text = text;
    this.children = childrenOf(text);
    this.data = this.child("sheetData");
    this.prefix = prefixAt(text, this.data?.start ?? new TagScanner(text).next()?.start ?? 0);
    const { rows, areaFormulas } = this.#look();
    this.rows = rows;
    this.areaFormulas = areaFormulas;
    for (const row of rows) this.#rowByNumber.set(row.row, row);
  }

  child(name: string): Span | undefined {
    return this.children.find((each) => each.name === name);
  }

  tagOf({ start, inside }: Pick<Span, "start" | "inside">): string {
    return this.text.slice(start, inside);
  }

  rowAt(row: number): RowPlace | undefined {
    return this.#rowByNumber.get(row);
  }

  /** How columns look whose cells have no look of their own. */
  get columns(): readonly { readonly first: number; readonly last: number; readonly look: number }[] {
    const list = this.child("cols");
    return (list ? childrenOf(this.text, list) : []).map((column) => {
      const number = (name: string) => Number(valueIn(this.tagOf(column), name) ?? 0);
      return { first: number("min") - 1, last: number("max") - 1, look: number("style") };
    });
  }

  /** The cells of a row, in their order. */
  cellsIn(row: RowPlace): CellPlace[] {
    if (row.inside === row.insideEnd) return [];
    let column = -1;
    const spans = childrenOf(this.text, { ...row, name: "row" });
    return spans.flatMap((span) => {
      if (span.name !== "c") return [];
      const address = valueIn(this.tagOf(span), "r");
      column = address === undefined ? column + 1 : placeIn(address).column;
      return [{ ...span, column }];
    });
  }

  partOf(cell: Span, name: string): Span | undefined {
    return cell.inside === cell.end ? undefined : childrenOf(this.text, cell).find((each) => each.name === name);
  }

  /** Formulas that share one text: where the `f` of each stands, and what it says. */
  sharing(groups: ReadonlySet<string>): Map<string, SharedFormula[]> {
    const found = new Map<string, SharedFormula[]>();
    for (const row of this.rows) {
      if (!this.text.slice(row.inside, row.insideEnd).includes("shared")) continue;
      for (const cell of this.cellsIn(row)) {
        const formula = this.partOf(cell, "f");
        const tag = formula && this.tagOf(formula);
        const group = tag && valueIn(tag, "t") === "shared" ? valueIn(tag, "si") : undefined;
        if (!formula || group === undefined || !groups.has(group)) continue;
        const text = this.text.slice(formula.inside, formula.insideEnd);
        const member = { row: row.row, column: cell.column, formula, text };
        found.set(group, [...(found.get(group) ?? []), member]);
      }
    }
    return found;
  }

  /** One look at all tags: rows, and the formulas that reach over areas. */
  #look(): { rows: RowPlace[]; areaFormulas: AreaFormula[] } {
    const rows: RowPlace[] = [];
    const areaFormulas: AreaFormula[] = [];
    if (!this.data || this.data.inside === this.data.end) return { rows, areaFormulas };
    const scanner = new TagScanner(this.text, this.data.inside);
    const found: {
      readonly is: AreaFormula["is"];
      readonly reference: string;
      readonly cellStart: number;
      readonly at: number;
    }[] = [];
    let row = -1;
    let open: { row: number; start: number; inside: number } | undefined;
    let cell = { start: 0, end: 0 };
    for (let tag = scanner.next(); tag && tag.start < this.data.insideEnd; tag = scanner.next()) {
      if (tag.name === "c") cell = tag;
      else if (tag.name === "row" && tag.is !== "close") {
        const number = valueIn(this.text.slice(tag.start, tag.end), "r");
        row = number === undefined ? row + 1 : Number(number) - 1;
        open = { row, start: tag.start, inside: tag.end };
        if (tag.is === "empty") rows.push({ ...open, insideEnd: tag.end, end: tag.end });
      } else if (tag.name === "row" && open) rows.push({ ...open, insideEnd: tag.start, end: tag.end });
      else if (tag.name === "f" && tag.is !== "close") {
        const formulaTag = this.text.slice(tag.start, tag.end);
        const is = kindOf(formulaTag, this.text.slice(cell.start, cell.end));
        const reference = valueIn(formulaTag, "ref");
        if (is && reference !== undefined) found.push({ is, reference, cellStart: cell.start, at: rows.length });
      }
    }
    for (const { is, reference, cellStart, at } of found) {
      const place = rows[at];
      const holder = place && this.cellsIn(place).find(({ start }) => start === cellStart);
      if (holder) areaFormulas.push({ is, row: place.row, column: holder.column, area: areaIn(reference) });
    }
    return { rows, areaFormulas };
  }
}

export interface SharedFormula {
  readonly row: number;
  readonly column: number;
  readonly formula: Span;
  /** As it is written; empty where another cell of the group has it. */
  readonly text: string;
}

/** A formula with metadata of its cell grows and shrinks with its answer; one without has the area that it was given. */
function kindOf(formulaTag: string, cellTag: string): AreaFormula["is"] | undefined {
  if (!/array|dataTable/.test(formulaTag)) return undefined;
  const type = valueIn(formulaTag, "t");
  if (type === "dataTable") return "dataTable";
  if (type !== "array") return undefined;
  return valueIn(cellTag, "cm") === undefined ? "array" : "dynamic";
}

/** What the members of a group say without the one that has their text: in the words of the file. */
export function writtenOut(
  members: readonly SharedFormula[],
  decoded: (text: string) => string,
): Map<SharedFormula, string> {
  const master = members.find(({ text }) => text !== "");
  if (!master) return new Map();
  const movable = new MovableFormula(decoded(master.text));
  return new Map(
    members.map((member) => [member, movable.moved(member.row - master.row, member.column - master.column)]),
  );
}
