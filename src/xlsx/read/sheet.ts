/** A worksheet as it streams by: the cost is that of what is there, not of what could be. */
import { fromFileFormula } from "../../workbook/formula-names";
import { sheetRows } from "../../workbook/sheet-size";
import { type Area, type Cell, isErrorCode, type PageSetup, type Style } from "../../workbook/workbook";
import type { PackageParts } from "../container/package-parts";
import { type Attributes, attribute, isTrue, readXml } from "../container/xml-events";
import { Refusal } from "../refusal";
import { areaIn, areasIn, outside, placeIn } from "./cell-address";
import { longestFormula, mostCells } from "./limits";
import { MovableFormula } from "./shared-formulas";
import { TextCollector } from "./shared-strings";
import { cellValue, type ValueContext } from "./values";

export interface SheetContext extends ValueContext {
  readonly styles: readonly (Style | undefined)[];
}

/** What a worksheet's part says; what other parts say of it is put to it elsewhere. */
export interface SheetPart {
  readonly cells: Cell[];
  readonly columns: readonly ColumnRun[];
  readonly rowHeights: Record<number, number>;
  readonly hiddenRows: readonly number[];
  readonly merges: readonly Area[];
  readonly links: readonly WrittenLink[];
  readonly validations: readonly Area[];
  readonly conditionalFormats: readonly Area[];
  /** Cells whose values are worked out from a table of inputs, which only spreadsheet programs do. */
  readonly dataTables: readonly Area[];
  readonly frozenRows: number;
  readonly page: Pick<PageSetup, "landscape" | "fitToOnePageWide" | "footer"> & { readonly paperNumber: number };
  /** Names of the elements that were seen beside the cells. */
  readonly elements: ReadonlySet<string>;
}

/** Columns from the first to the last, which look alike. */
export interface ColumnRun {
  readonly first: number;
  readonly last: number;
  readonly width: number | undefined;
  readonly isHidden: boolean;
}

interface WrittenLink {
  readonly area: Area;
  /** The id of the relation that holds the address. */
  readonly relation: string | undefined;
  /** A place inside the file. */
  readonly place: string | undefined;
}

export function readSheet(parts: PackageParts, path: string, context: SheetContext): SheetPart {
  const reader = new SheetReader(context);
  readXml(parts.archive, parts.entryOf(path), reader);
  return reader.end();
}

type Building = { -readonly [Key in keyof Cell]: Cell[Key] };
type Waiting = { readonly cell: Building; readonly group: string };

class SheetReader {
  readonly #context: SheetContext;
  readonly #cells: Building[] = [];
  readonly #columns: ColumnRun[] = [];
  readonly #rowHeights: Record<number, number> = {};
  readonly #hiddenRows: number[] = [];
  readonly #merges: Area[] = [];
  readonly #links: WrittenLink[] = [];
  readonly #validations: Area[] = [];
  readonly #conditionalFormats: Area[] = [];
  readonly #dataTables: Area[] = [];
  readonly #elements = new Set<string>();
  readonly #masters = new Map<
    string,
    { readonly formula: MovableFormula; readonly row: number; readonly column: number }
  >();
  readonly #waiting: Waiting[] = [];
  #frozenRows = 0;
  #page = { landscape: false, fitToPage: false, fitToWidth: 1, paperNumber: 0, footer: "" };
  #things = 0;

  #depth = 0;
  #isInData = false;
  #row = -1;
  #column = -1;
  #cell: Attributes = {};
  #formula: Attributes | undefined;
  #formulaText = "";
  #content: string | undefined;
  #inline: TextCollector | undefined;
  #inlineText: string | undefined;
  /** What the text that comes belongs to. */
  #collecting: "formula" | "content" | "inline" | "sqref" | "oddFooter" | undefined;
  #sideText = "";
  #ranges: Area[] = [];

  constructor(context: SheetContext) {
    this.#context = context;
  }

  open(name: string, attributes: Attributes): void {
    this.#depth += 1;
    if (this.#isInData) this.#openInData(name, attributes);
    else {
      if (this.#depth === 2 && name === "sheetData") this.#isInData = true;
      this.#openBeside(name, attributes);
    }
  }

  text(text: string): void {
    if (this.#collecting === undefined) return;
    if (this.#collecting === "content") this.#content = (this.#content ?? "") + text;
    else if (this.#collecting === "formula") this.#formulaText += text;
    else if (this.#collecting === "inline") this.#inline?.take(text);
    else this.#sideText += text;
  }

  close(name: string): void {
    this.#depth -= 1;
    if (!this.#isInData) this.#closeBeside(name);
    else if (this.#depth === 1) this.#isInData = false;
    else if (this.#depth === 3 && name === "c") this.#endCell();
    else if (this.#depth === 4) {
      if (name === "is") this.#inlineText = this.#inline?.end();
      this.#collecting = undefined;
    } else this.#inline?.close(name);
  }

  end(): SheetPart {
    for (const { cell, group } of this.#waiting) this.#follow(cell, group);
    const { fitToPage, fitToWidth, footer, ...page } = this.#page;
    return {
      cells: this.#cells,
      columns: this.#columns,
      rowHeights: this.#rowHeights,
      hiddenRows: this.#hiddenRows,
      merges: this.#merges,
      links: this.#links,
      validations: this.#validations,
      conditionalFormats: this.#conditionalFormats,
      dataTables: this.#dataTables,
      frozenRows: this.#frozenRows,
      page: { ...page, fitToOnePageWide: fitToPage && fitToWidth === 1, ...(footer && { footer }) },
      elements: this.#elements,
    };
  }

  #openInData(name: string, attributes: Attributes): void {
    if (this.#depth === 3 && name === "row") this.#openRow(attributes);
    else if (this.#depth === 4 && name === "c") this.#openCell(attributes);
    else if (this.#depth === 5) this.#openInCell(name, attributes);
    else if (this.#depth > 5) this.#inline?.open(name);
  }

  /** A row without a number follows the one before. */
  #openRow({ r, ht, hidden }: Attributes): void {
    this.#row = r === undefined ? this.#row + 1 : Number(r) - 1;
    this.#column = -1;
    if (!Number.isInteger(this.#row) || this.#row < 0 || this.#row >= sheetRows)
      throw outside({ row: String(r ?? this.#row + 1) });
    if (ht !== undefined && Number(ht) > 0) {
      this.#count();
      this.#rowHeights[this.#row] = Number(ht);
    }
    if (isTrue(hidden)) {
      this.#count();
      this.#hiddenRows.push(this.#row);
    }
  }

  /** A cell without an address stands to the right of the one before. */
  #openCell(attributes: Attributes): void {
    const { r } = attributes;
    if (r === undefined) this.#column += 1;
    else {
      const { row, column } = placeIn(r);
      this.#column = column;
      this.#row = row;
    }
    this.#cell = attributes;
    this.#formula = undefined;
    this.#formulaText = "";
    this.#content = undefined;
    this.#inline = undefined;
    this.#inlineText = undefined;
  }

  #openInCell(name: string, attributes: Attributes): void {
    if (name === "v") {
      this.#content = "";
      this.#collecting = "content";
    } else if (name === "f") {
      this.#formula = attributes;
      this.#collecting = "formula";
    } else if (name === "is") {
      this.#inline = new TextCollector();
      this.#inline.begin();
      this.#collecting = "inline";
    }
  }

  #endCell(): void {
    const { t: type, s } = this.#cell;
    const cell: Building = { row: this.#row, column: this.#column };
    const hasFormula = this.#formula !== undefined && this.#takeFormula(cell, this.#formula);
    const value = cellValue({ type, content: this.#content, inline: this.#inlineText, hasFormula }, this.#context);
    if (value !== undefined) cell.value = value;
    if (type !== "e" && isErrorCode(value)) cell.isText = true;
    const style = this.#context.styles[Number(s ?? 0)];
    if (style) cell.style = style;
    if (hasFormula || value !== undefined || style) this.#cells.push(cell);
  }

  /** Whether the cell is worked out. */
  #takeFormula(cell: Building, { t: type, ref, si }: Attributes): boolean {
    const text = this.#formulaText;
    if (text.length > longestFormula) {
      throw new Refusal({ kind: "long formula", length: text.length, most: longestFormula });
    }
    if (type === "dataTable") {
      if (ref !== undefined) this.#dataTables.push(areaIn(ref));
      return false;
    }
    if (type === "shared" && si !== undefined) {
      if (text !== "") this.#masters.set(si, { formula: new MovableFormula(text), row: cell.row, column: cell.column });
      else {
        if (!this.#follow(cell, si)) this.#waiting.push({ cell, group: si });
        return true;
      }
    }
    if (text === "") return false;
    cell.formula = `=${fromFileFormula(text)}`;
    if (type === "array") {
      const area = ref === undefined ? undefined : areaIn(ref);
      const size = { rows: area?.rows ?? 1, columns: area?.columns ?? 1 };
      cell.spill = this.#cell.cm === undefined ? { ...size, isFixed: true } : size;
    }
    return true;
  }

  /** Gives a cell the formula that it shares; false where that has not come yet. */
  #follow(cell: Building, group: string): boolean {
    const master = this.#masters.get(group);
    if (!master) return false;
    const text = master.formula.moved(cell.row - master.row, cell.column - master.column);
    cell.formula = `=${fromFileFormula(text)}`;
    return true;
  }

  #openBeside(name: string, attributes: Attributes): void {
    this.#elements.add(name);
    if (name === "col") this.#takeColumns(attributes);
    else if (name === "mergeCell") this.#take(this.#merges, [areaIn(attributes.ref ?? "")]);
    else if (name === "hyperlink") this.#takeLink(attributes);
    else if (name === "dataValidation") this.#takeRanges(this.#validations, attributes);
    else if (name === "conditionalFormatting") this.#takeRanges(this.#conditionalFormats, attributes);
    else if (name === "sqref" || name === "oddFooter") this.#beginSide(name);
    else if (name === "pane") this.#takePane(attributes);
    else if (name === "pageSetUpPr") this.#page.fitToPage = isTrue(attributes.fitToPage);
    else if (name === "pageSetup") this.#takePage(attributes);
  }

  #closeBeside(name: string): void {
    if (name === "oddFooter") this.#page.footer = this.#sideText;
    if (name === "sqref") this.#take(this.#ranges, areasIn(this.#sideText));
    this.#collecting = undefined;
  }

  #beginSide(name: "sqref" | "oddFooter"): void {
    this.#collecting = name;
    this.#sideText = "";
  }

  /** Younger kinds say their ranges in an element of their own, inside. */
  #takeRanges(ranges: Area[], { sqref }: Attributes): void {
    this.#ranges = ranges;
    this.#take(ranges, areasIn(sqref));
  }

  #takePane({ state, ySplit }: Attributes): void {
    if (state?.startsWith("frozen")) this.#frozenRows = Math.trunc(Number(ySplit ?? 0)) || 0;
  }

  #takePage({ orientation, fitToWidth, paperSize }: Attributes): void {
    this.#page.landscape = orientation === "landscape";
    this.#page.fitToWidth = Number(fitToWidth ?? 1);
    this.#page.paperNumber = Number(paperSize ?? 0);
  }

  #takeColumns({ min, max, width, hidden }: Attributes): void {
    const [first, last] = [Number(min) - 1, Number(max) - 1];
    if (!(first >= 0 && last >= first)) return;
    this.#take(this.#columns, [
      { first, last, width: width === undefined ? undefined : Number(width), isHidden: isTrue(hidden) },
    ]);
  }

  #takeLink(attributes: Attributes): void {
    const { ref, location: place } = attributes;
    if (ref === undefined) return;
    this.#take(this.#links, [{ area: areaIn(ref), relation: attribute(attributes, "id"), place }]);
  }

  #take<Thing>(list: Thing[], things: readonly Thing[]): void {
    for (const thing of things) {
      this.#count();
      list.push(thing);
    }
  }

  /** No honest file says so much beside its cells. */
  #count(): void {
    this.#things += 1;
    if (this.#things > mostCells) {
      throw new Refusal("many merges and the like");
    }
  }
}
