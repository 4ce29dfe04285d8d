/**
 * A file that is saved by patching: the archive as it came, with the parts replaced that an edit changes. Of a sheet that
 * changes, the text of the changed cells alone is another.
 */
import { strToU8 } from "fflate";
import { sheetColumns, sheetRows } from "../../workbook/sheet-size";
import { type TableColumns, tablesIn } from "../../workbook/table-references";
import { openArchive } from "../container/kind-of-file";
import { PackageParts } from "../container/package-parts";
import { rewriteArchive } from "../container/rewrite-archive";
import { type Book, type BookSheet, isWorksheet, readBook } from "../read/book";
import { textOfCell } from "../read/shared-strings";
import { readStyles } from "../read/styles";
import { readFile } from "../read-workbook";
import { Refusal } from "../refusal";
import type { FileRefusal } from "../refusals";
import type { SavingRemark } from "../remarks";
import { type Edit, isByHand } from "./edit";
import { withFullCalculation } from "./package-patch";
import { PackageText, textOf } from "./package-text";
import { SheetGuards } from "./sheet-guards";
import { patchedSheet } from "./sheet-patch";
import { SheetPlaces } from "./sheet-places";
import { SpillsPatch } from "./spills-patch";
import { emptyStyles, StylesPatch } from "./styles-patch";
import { typedFormula } from "./typed-formula";

interface SaveOptions {
  /** Something could not be worked out here: the next program is asked to work everything out. */
  readonly asksForCalculation?: boolean;
}

const stylesType = "application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml";
const stylesRelation = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/styles";

/** By the types of parts. */
const savingRemarks: readonly (readonly [SavingRemark, RegExp])[] = [
  ["signature", /digital-signature/],
  ["charts", /drawingml\.chart\+xml|chartex\+xml/],
  ["pivot tables", /pivotTable\+xml/],
];

export class PatchableBook {
  readonly #parts: PackageParts;
  readonly #book: Book;
  readonly #places = new Map<string, SheetPlaces>();
  readonly #guards = new Map<string, SheetGuards>();
  #tables: readonly TableColumns[] | undefined;

  constructor(bytes: Uint8Array) {
    this.#parts = new PackageParts(openArchive(bytes));
    this.#book = readBook(this.#parts);
  }

  /** The path of the part that holds a sheet. */
  pathOf(sheet: string): string {
    return this.#sheet(sheet).path;
  }

  /** Why an edit cannot be saved into this file; undefined where it can. */
  refusal(edit: Edit): FileRefusal | undefined {
    try {
      this.#checked(edit);
      return undefined;
    } catch (problem) {
      if (problem instanceof Refusal) return problem.why;
      throw problem;
    }
  }

  /** What of the file will be out of date once it is saved with changes, for the maker to know before. */
  warnings(): SavingRemark[] {
    const types = this.#parts.paths().map((path) => this.#parts.contentType(path));
    return savingRemarks.filter(([, pattern]) => types.some((type) => pattern.test(type))).map(([remark]) => remark);
  }

  /** The bytes of the file with these edits; throws a Refusal where one of them cannot be saved, and nothing is. */
  saved(edits: readonly Edit[], { asksForCalculation = false }: SaveOptions = {}): Uint8Array {
    const contents = new Map<string, Uint8Array | undefined>();
    const all = this.#withEmptiedSpills(oneForEachCell(edits).map((edit) => this.#checked(edit)));
    const looks = this.#stylesPatch();
    const spills = new SpillsPatch(this.#parts, this.#book);
    let formulasCameOrWent = false;
    for (const [name, inSheet] of bySheet(all)) {
      const { path } = this.#sheet(name);
      const places = this.#placesOf(name);
      const patched = patchedSheet(places, inSheet, { lookFor: looks.lookFor, spillNumber: spills.number });
      if (patched.formulasCameOrWent) formulasCameOrWent = true;
      if (patched.text !== places.text) contents.set(path, strToU8(patched.text));
    }
    const package_ = new PackageText(this.#parts, this.#book);
    looks.writeTo(package_, contents);
    spills.writeTo(package_, contents);
    if (formulasCameOrWent) package_.dropCalculationOrder(contents);
    if (asksForCalculation) {
      contents.set(this.#book.path, strToU8(withFullCalculation(textOf(this.#parts, this.#book.path))));
    }
    package_.writeTo(contents);
    return rewriteArchive(this.#parts.archive, { contents });
  }

  /** The edit as the file takes it. */
  #checked(edit: Edit): Edit {
    const { sheet, row, column, content } = edit;
    this.#sheet(sheet);
    if (!(row >= 0 && row < sheetRows && column >= 0 && column < sheetColumns)) {
      throw new Refusal({ kind: "cell outside", rows: sheetRows, columns: sheetColumns });
    }
    if (!isByHand(edit) || !content) return edit;
    const refusal = this.#guardsOf(sheet).refusal(row, column);
    if (refusal !== undefined) throw new Refusal(refusal);
    if (content.is === "constant" && typeof content.value === "string") textOfCell(content.value);
    if (content.is !== "formula") return edit;
    const formula = typedFormula(content.formula, edit, this.#surroundings());
    return { ...edit, content: { ...content, formula } };
  }

  /** Where a formula that spilled is typed over, what it had filled is blank. */
  #withEmptiedSpills(edits: readonly Edit[]): Edit[] {
    const places = new Set(edits.map(({ sheet, row, column }) => `${sheet}!${row},${column}`));
    const emptied = edits.filter(isByHand).flatMap((edit): Edit[] => {
      const { sheet } = edit;
      const area = this.#guardsOf(sheet).spillFrom(edit.row, edit.column);
      const there = area ? this.#placesOf(sheet) : undefined;
      if (!area || !there) return [];
      const rows = there.rows.filter(({ row }) => row >= area.row && row < area.row + area.rows);
      return rows.flatMap((row) =>
        there
          .cellsIn(row)
          .filter(({ column }) => column >= area.column && column < area.column + area.columns)
          .map(({ column }): Edit => ({ sheet, row: row.row, column, content: { is: "result", value: undefined } }))
          .filter((each) => !places.has(`${sheet}!${each.row},${each.column}`)),
      );
    });
    return [...edits, ...emptied];
  }

  #sheet(name: string): BookSheet {
    const sheet = this.#book.sheets.find((each) => each.name === name && isWorksheet(each));
    if (!sheet) throw new Refusal({ kind: "no such sheet", sheet: name });
    return sheet;
  }

  #placesOf(name: string): SheetPlaces {
    const known = this.#places.get(name);
    if (known) return known;
    const made = new SheetPlaces(textOf(this.#parts, this.#sheet(name).path));
    this.#places.set(name, made);
    return made;
  }

  #guardsOf(name: string): SheetGuards {
    const known = this.#guards.get(name);
    if (known) return known;
    const made = new SheetGuards(this.#parts, this.#sheet(name), this.#placesOf(name));
    this.#guards.set(name, made);
    return made;
  }

  #surroundings() {
    this.#tables ??= tablesIn(readFile(this.#parts.archive.bytes).workbook.sheets);
    return { sheets: new Set(this.#book.sheets.map(({ name }) => name.toUpperCase())), tables: this.#tables };
  }

  /** Reads styles.xml only when a look is to change. */
  #stylesPatch() {
    const path = this.#book.styles;
    let patch: StylesPatch | undefined;
    const made = () => {
      const styles = readStyles(this.#parts, this.#book);
      patch ??= new StylesPatch(
        path === undefined ? emptyStyles : textOf(this.#parts, path),
        (number) => styles[number],
      );
      return patch;
    };
    return {
      lookFor: (before: number, wanted: NonNullable<Edit["style"]>) => made().numberFor(before, wanted),
      writeTo: (package_: PackageText, contents: Map<string, Uint8Array | undefined>) => {
        const text = patch?.written() ?? (patch && path === undefined ? emptyStyles : undefined);
        if (text === undefined) return;
        contents.set(path ?? package_.add("styles.xml", stylesType, stylesRelation), strToU8(text));
      },
    };
  }
}

/** Of several edits of a cell the last counts for what it holds, and the last for how it looks. */
function oneForEachCell(edits: readonly Edit[]): Edit[] {
  const cells = new Map<string, Edit>();
  for (const edit of edits) {
    const key = `${edit.sheet}!${edit.row},${edit.column}`;
    cells.set(key, { ...cells.get(key), ...edit });
  }
  return [...cells.values()];
}

function bySheet(edits: readonly Edit[]): Map<string, Edit[]> {
  const sheets = new Map<string, Edit[]>();
  for (const edit of edits) {
    const known = sheets.get(edit.sheet);
    if (known) known.push(edit);
    else sheets.set(edit.sheet, [edit]);
  }
  return sheets;
}
