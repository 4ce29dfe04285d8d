import type { CellContent, ReadArea } from "../host/workbook-host";
import { placeNumber } from "../workbook/sheet-size";
import { isDateFormat } from "./formats";
import { isWords, meantAsNumber } from "./meant-as-number";
import { isReading, isWeight, type Role, type RoleOf, roleOfHeading, saysWeight } from "./roles";
import { isHeadings, isSummary, rowKinds } from "./row-kinds";
import { isUnitAlone, unitIn, unitInFormat, type WeightUnit } from "./units";

/** A cell of the sheet, by its row and column there. */
export interface At {
  readonly row: number;
  readonly column: number;
}

/** What tells the cells of a sheet apart. */
export const keyOf = ({ row, column }: At): number => placeNumber(row, column);

/** A cell whose kind is written down: over its column, or at its left. */
interface HeadedCell extends At {
  readonly role: Role;
  readonly heading: string;
  readonly unit: WeightUnit | undefined;
  /** The row of the heading; undefined where a label says it. */
  readonly headingRow: number | undefined;
  /** Cells that hold the same of one lot after another share one; undefined for a label's single cell. */
  readonly series: string | undefined;
}

interface Heading {
  readonly role: Role | undefined;
  readonly heading: string;
  readonly unit: WeightUnit | undefined;
  readonly headingRow: number;
}

/** Longer texts are sentences. */
const longestLabel = 60;

/** So many rows above a label its title may stand. */
const longestBlock = 12;

/** Over numbers that say how sure others are. */
const aboutErrors =
  /\b(sure|uncertain\p{L}*|errors?|accura\p{L}*|precis\p{L}*|tolerances?)(?!\p{L})|±|误差|允差|公差|不确定|精度|可靠/iu;

interface Looking {
  /** What headings and labels say. */
  readonly roleOf: RoleOf;
  /** Cells with words count too, where a number is expected: for whoever says what is wrong with them. */
  readonly keepsWords: boolean;
}

const asUsual: Looking = { roleOf: roleOfHeading, keepsWords: false };

/**
 * Cells below a heading that names their kind, down to the next heading in that column or to where something else
 * begins, and single cells at the right of such a word.
 */
export function headedCells(area: ReadArea, isSpilled: (at: At) => boolean, looking = asUsual): HeadedCell[] {
  const sheet = new HeadedSheet(area, isSpilled, looking);
  for (let right = 0; right < area.columns; right += 1) sheet.readColumn(right);
  sheet.readLabels();
  for (let right = 0; right < area.columns; right += 1) sheet.readRows(right);
  return [...sheet.found.values()];
}

class HeadedSheet {
  readonly found = new Map<number, HeadedCell>();
  readonly #area: ReadArea;
  readonly #isSpilled: (at: At) => boolean;
  readonly #roleOf: RoleOf;
  readonly #keepsWords: boolean;
  readonly #kinds: ReturnType<typeof rowKinds>;
  readonly #isHeadingRow: readonly boolean[];
  /** What stands over a cell, a word or not. */
  readonly #over = new Map<number, Heading>();

  constructor(area: ReadArea, isSpilled: (at: At) => boolean, { roleOf, keepsWords }: Looking) {
    this.#area = area;
    this.#isSpilled = isSpilled;
    this.#roleOf = roleOf;
    this.#keepsWords = keepsWords;
    this.#kinds = rowKinds(area, roleOf);
    this.#isHeadingRow = area.values.map(
      (row, down) => this.#kinds[down] === "headings" || (this.#kinds[down] === "beginning" && isHeadings(row)),
    );
  }

  readColumn(right: number): void {
    let over: Heading | undefined;
    for (let down = 0; down < this.#area.rows; down += 1) {
      if (this.#kinds[down] === "beginning") over = undefined;
      if (this.#isSpilled(this.#at(down, right))) {
        over = undefined;
        continue;
      }
      const word = this.#wordAt(down, right);
      if (word !== undefined && over !== undefined && over.headingRow === down - 1 && isUnitAlone(word)) {
        over = { ...over, unit: unitIn(word) };
        continue;
      }
      const role = word === undefined || this.#isUnderErrors(down) ? undefined : this.#roleOf(word);
      const isHeading =
        this.#isHeadingRow[down] === true ||
        (role !== undefined && !this.#isNumber(down, right + 1) && this.#isNumber(down + 1, right));
      if (word !== undefined && isHeading) over = { role, heading: word, unit: unitIn(word), headingRow: down };
      else if (over !== undefined) this.#put(down, right, over, word);
    }
  }

  /** A word of a cell that has a heading counts as a name only, unless it is the name of a row. */
  #put(down: number, right: number, over: Heading, word: string | undefined): void {
    const { role, ...heading } = over;
    const at = this.#at(down, right);
    this.#over.set(keyOf(at), over);
    if (role === undefined || this.#kinds[down] === "summary" || this.#isDate(down, right)) return;
    if (word !== undefined && !this.#keepsWords && role !== "stage" && role !== "lot") return;
    const unit = heading.unit ?? this.#unitOfFormat(down, right);
    const series = `column ${right} ${heading.headingRow} ${heading.heading}`;
    this.found.set(keyOf(at), { ...at, ...heading, unit, role, series });
  }

  /** A word with its number at the right is a label, unless both stand in one book, where the heading says more. */
  readLabels(): void {
    for (let down = 0; down < this.#area.rows; down += 1) {
      if (this.#isHeadingRow[down]) continue;
      for (let right = 0; right + 1 < this.#area.columns; right += 1) {
        const word = this.#wordAt(down, right);
        if (word === undefined || word.length > longestLabel) continue;
        const role = this.#roleOf(word);
        // The finished weight of a lot in the making is still to come.
        const isToCome = role === "finished weight" && this.#isOpen(down, right + 1);
        if (role === undefined || !(isToCome || this.#isMeantAsNumber(down, right + 1))) continue;
        if (this.#isDate(down, right + 1) || this.#isAmongErrors(down, right)) continue;
        const at = this.#at(down, right + 1);
        if (this.#isOfBook(this.#at(down, right), at)) continue;
        const unit = unitIn(word) ?? this.#unitBehind(down, right + 1) ?? this.#unitOfFormat(down, right + 1);
        // “Fresh leaf spread” may be a height, and “finished rolling” a time.
        if (isWeight(role) && unit === undefined && !saysWeight(word)) continue;
        this.found.set(keyOf(at), { ...at, role, heading: word, unit, headingRow: undefined, series: undefined });
      }
    }
  }

  /** Labels below each other with a column for each lot at their right. */
  readRows(right: number): void {
    for (let top = 0; top < this.#area.rows; top += 1) {
      const labels: { readonly down: number; readonly word: string }[] = [];
      for (let down = top; down < this.#area.rows; down += 1) {
        const word = this.#wordAt(down, right);
        if (word === undefined) break;
        labels.push({ down, word });
      }
      this.#readLotsInColumns(right, labels);
      top += labels.length;
    }
  }

  #readLotsInColumns(right: number, labels: readonly { readonly down: number; readonly word: string }[]): void {
    const rows = labels.flatMap(({ down, word }) => {
      const role = word.length > longestLabel ? undefined : this.#roleOf(word);
      return role === undefined || this.#isAmongErrors(down, right) ? [] : [{ down, word, role }];
    });
    const readings = rows.filter(({ role }) => isReading(role));
    if (new Set(readings.map(({ role }) => role)).size < 2) return;
    const names = rows.find(({ role, down }) => role === "lot" && down < (readings[0]?.down ?? 0));
    for (const column of names === undefined ? this.#numbersOver(right, readings) : this.#filled(right, names.down)) {
      for (const { down, word, role } of readings) {
        const at = this.#at(down, column);
        const holdsWords = this.#wordAt(down, column) !== undefined;
        if (holdsWords || this.#isSpilled(at) || this.#isDate(down, column)) continue;
        const unit = unitIn(word) ?? this.#unitOfFormat(down, column);
        const cell = { ...at, role, heading: word, unit, headingRow: undefined, series: `row ${down} ${right}` };
        this.found.set(keyOf(at), cell);
      }
    }
  }

  /** The columns with a name of a lot, up to the first gap; none where they are headings of a book. */
  #filled(right: number, down: number): number[] {
    const columns: number[] = [];
    for (let column = right + 1; this.#valueAt(down, column) !== ""; column += 1) {
      const name = this.#valueAt(down, column);
      if (isWords(name) && (this.#roleOf(name) !== undefined || isSummary(name))) break;
      columns.push(column);
    }
    return columns.length < 2 ? [] : columns;
  }

  /** Without names: the columns in which two of the rows hold numbers, three or more without a gap, no sums, under no headings. */
  #numbersOver(right: number, readings: readonly { readonly down: number }[]): number[] {
    const isOpen = (column: number) => {
      const holding = readings.filter(({ down }) => this.#isNumber(down, column));
      const isTyped = holding.some(({ down }) => this.#area.formulas[down]?.[column] === "");
      const isHeaded = holding.some(({ down }) => this.#over.get(keyOf(this.#at(down, column)))?.role !== undefined);
      return holding.length >= 2 && isTyped && !isHeaded;
    };
    const columns: number[] = [];
    for (let column = right + 1; column < this.#area.columns && isOpen(column); column += 1) columns.push(column);
    return columns.length < 3 ? [] : columns;
  }

  /** Whether the row below a title that speaks of errors. */
  #isUnderErrors(down: number): boolean {
    const filled = (this.#area.values[down - 1] ?? []).filter((value) => value !== "");
    return filled.length === 1 && isWords(filled[0] ?? "") && aboutErrors.test(String(filled[0]));
  }

  /** Whether the title above a label, with no blank between, speaks of errors. */
  #isAmongErrors(down: number, right: number): boolean {
    for (let above = down - 1; above >= Math.max(0, down - longestBlock); above -= 1) {
      const word = this.#wordAt(above, right);
      if (word === undefined) return false;
      const isTitle = this.#valueAt(above, right + 1) === "" && this.#roleOf(word) === undefined;
      if (isTitle) return aboutErrors.test(word);
    }
    return false;
  }

  #isOfBook(label: At, value: At): boolean {
    const [overLabel, overValue] = [this.#over.get(keyOf(label)), this.#over.get(keyOf(value))];
    if (overLabel === undefined || overLabel.headingRow !== overValue?.headingRow) return false;
    return overLabel.role === "stage" || overLabel.role === "lot" || overValue.role !== undefined;
  }

  #at = (down: number, right: number): At => ({ row: this.#area.row + down, column: this.#area.column + right });

  #valueAt = (down: number, right: number): CellContent => this.#area.values[down]?.[right] ?? "";

  /** Words that somebody wrote: neither an answer nor a formula shown as text. */
  #wordAt(down: number, right: number): string | undefined {
    const value = this.#valueAt(down, right);
    const isWritten = (this.#area.formulas[down]?.[right] ?? "") === "" && !this.#isSpilled(this.#at(down, right));
    return isWritten && isWords(value) && !/^\s*=/.test(value) ? value : undefined;
  }

  #isNumber(down: number, right: number): boolean {
    return typeof this.#valueAt(down, right) === "number" && !this.#isSpilled(this.#at(down, right));
  }

  #isOpen = (down: number, right: number): boolean =>
    this.#valueAt(down, right) === "" &&
    this.#area.formulas[down]?.[right] === "" &&
    !this.#isSpilled(this.#at(down, right));

  /** A number, or digits that somebody typed as text. */
  #isMeantAsNumber(down: number, right: number): boolean {
    const isTyped = this.#area.formulas[down]?.[right] === "" && !this.#isSpilled(this.#at(down, right));
    return this.#isNumber(down, right) || (isTyped && meantAsNumber(this.#valueAt(down, right)));
  }

  /** A date or a time, also one that is still to be filled in. */
  #isDate(down: number, right: number): boolean {
    return isDateFormat(this.#area.formats[down]?.[right] ?? "");
  }

  /** A unit that stands at the right of a number, also where a formula writes it there. */
  #unitBehind(down: number, right: number): WeightUnit | undefined {
    const behind = this.#valueAt(down, right + 1);
    return isWords(behind) ? unitIn(behind) : undefined;
  }

  #unitOfFormat = (down: number, right: number) => unitInFormat(this.#area.formats[down]?.[right] ?? "");
}
