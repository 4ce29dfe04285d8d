/** The lots of one workbook, as its headings say, and what is left out of it. */
import type { CellContent, ReadArea } from "../../host/workbook-host";
import { isDateFormat } from "../../sheet-check/formats";
import { headedLots } from "../../sheet-check/headed-lots";
import type { KnownCell } from "../../sheet-check/known-cell";
import type { Lot } from "../../sheet-check/lots";
import { longestForm } from "../../sheet-check/lots";
import type { WeightUnit } from "../../sheet-check/units";
import type { Taken, TakenHeading, WhyNotCounted } from "../../words/commands";
import { addressOf } from "../../workbook/addresses";
import type { Workbook } from "../../workbook/workbook";
import { FileHost } from "../check/file-host";
import { type NamedColumns, SheetColumns, textsIn } from "./columns";
import { isOfOthers, whatIsWrong } from "./weights";

interface Place {
  readonly sheet: string;
  /** `C17`; undefined for a whole sheet. */
  readonly cell?: string;
}

interface LeftOut extends Place {
  readonly why: WhyNotCounted;
  /** Nothing is missing by it. */
  readonly isMeant?: true;
}

/** A weight as it stands in its book. */
export interface Weight {
  readonly value: number;
  readonly unit: WeightUnit | undefined;
}

interface FoundLot {
  readonly sheet: string;
  /** As the sheet counts them, from 1. */
  readonly row: number;
  /** Where the fresh weight stands. */
  readonly cell: string;
  readonly lot: string | number;
  /** A day as spreadsheets count them, or what somebody wrote. */
  readonly date: string | number;
  readonly plot: string;
  readonly fresh: Weight;
  /** undefined while the lot is in the making. */
  readonly finished: Weight | undefined;
}

export interface LotsOfBook {
  readonly lots: readonly FoundLot[];
  readonly leftOut: readonly LeftOut[];
  readonly columns: readonly TakenHeading[];
  /** Every text of it that may be a heading, as headings are compared. */
  readonly texts: ReadonlySet<string>;
}

export function lotsIn(workbook: Workbook, named: NamedColumns): LotsOfBook {
  const host = new FileHost(workbook);
  const lots: FoundLot[] = [];
  const leftOut: LeftOut[] = [];
  const columns = new Map<string, TakenHeading>();
  const texts = new Set<string>();
  for (const { name: sheet, isHidden, cells } of workbook.sheets) {
    const area = host.used(sheet);
    if (!area) {
      if (cells.some(({ value }) => value !== undefined)) leftOut.push({ sheet, why: "far apart" });
      continue;
    }
    const own = textsIn(area.values);
    for (const text of own) texts.add(text);
    const found = new SheetLots(area, host.spills(sheet), new SheetColumns(named, own));
    if (found.lots.length + found.leftOut.length === 0) continue;
    if (isHidden) leftOut.push({ sheet, why: "hidden" });
    else {
      lots.push(...found.lots);
      leftOut.push(...found.leftOut);
      for (const column of found.columns) columns.set(JSON.stringify(column), column);
    }
  }
  return { lots, leftOut, columns: [...columns.values()], texts };
}

class SheetLots {
  readonly lots: FoundLot[] = [];
  readonly leftOut: LeftOut[] = [];
  readonly columns: TakenHeading[] = [];
  readonly #area: ReadArea;
  readonly #columns: SheetColumns;
  readonly #inOrder = new Map<string, readonly { readonly heading: string; readonly right: number }[]>();

  constructor(area: ReadArea, spills: Parameters<typeof headedLots>[1], columns: SheetColumns) {
    this.#area = area;
    this.#columns = columns;
    const { lots, cells } = headedLots(area, spills, columns.roleOf);
    let others = 0;
    for (const lot of lots) {
      if (this.#isOfOthers(lot)) others += 1;
      else this.#read(lot);
    }
    if (others > 0) {
      this.leftOut.push({ sheet: area.sheet, why: { kind: "rows of others", rows: others }, isMeant: true });
    }
    this.#noteWeights(cells);
  }

  #read({ fresh, finished }: Lot): void {
    const { sheet } = this.#area;
    if ((isNothing(fresh.value) || isWaiting(fresh)) && (isNothing(finished.value) || isWaiting(finished))) return;
    const wrong = whatIsWrong(fresh, finished);
    if (wrong) {
      this.leftOut.push({ sheet, cell: addressOf(wrong.at.row, wrong.at.column), why: wrong.why });
      return;
    }
    const lot = this.#beside(fresh, "lot");
    const plot = this.#beside(fresh, "plot");
    this.lots.push({
      sheet,
      row: fresh.row + 1,
      cell: addressOf(fresh.row, fresh.column),
      lot: typeof lot === "boolean" ? String(lot) : lot,
      date: this.#dateOf(fresh),
      plot: String(plot).trim(),
      fresh: weightOf(fresh),
      finished: isNothing(finished.value) ? undefined : weightOf(finished),
    });
  }

  #isOfOthers({ fresh, finished }: Lot): boolean {
    const formulaOf = (cell: KnownCell) => this.#formulaAt(cell.row - this.#area.row, cell.column - this.#area.column);
    const isFinishedTyped = !isNothing(finished.value) && !isOfOthers(formulaOf(finished));
    return isOfOthers(formulaOf(fresh)) && !isFinishedTyped;
  }

  #dateOf(fresh: KnownCell): string | number {
    const date = this.#beside(fresh, "date");
    return typeof date === "boolean" ? "" : date;
  }

  /** What stands in the row of a lot under such a heading, or in its form behind such a label; "" where nothing does. */
  #beside(fresh: KnownCell, key: "lot" | "date" | "plot"): CellContent {
    const places = fresh.headingRow === undefined ? this.#inForm(fresh) : this.#inRow(fresh, fresh.headingRow);
    for (const { heading, down, right } of places) {
      if (!this.#columns.holds(heading, key)) continue;
      const value = this.#valueAt(down, right);
      const isDate = typeof value === "number" && isDateFormat(this.#area.formats[down]?.[right] ?? "");
      if (isNothing(value) || (key === "date" ? typeof value === "number" && !isDate : isDate)) continue;
      this.#note(key, heading);
      return value;
    }
    return "";
  }

  /** At the left of the weight first, the nearest before the others: books may stand beside each other. */
  #inRow(fresh: KnownCell, headingRow: number): { heading: string; down: number; right: number }[] {
    const [down, own] = [fresh.row - this.#area.row, fresh.column - this.#area.column];
    const key = `${headingRow} ${own}`;
    let columns = this.#inOrder.get(key);
    if (!columns) {
      const distance = (right: number) => (right < own ? own - right : this.#area.columns + right - own);
      columns = (this.#area.values[headingRow] ?? [])
        .flatMap((heading, right) => (typeof heading === "string" && right !== own ? [{ heading, right }] : []))
        .sort((one, other) => distance(one.right) - distance(other.right));
      this.#inOrder.set(key, columns);
    }
    return columns.map((column) => ({ ...column, down }));
  }

  /** The labels of a form, or of lots in columns, with what stands in the column of the weight. */
  #inForm(fresh: KnownCell): { heading: string; down: number; right: number }[] {
    const [own, right] = [fresh.row - this.#area.row, fresh.column - this.#area.column];
    let labels = right - 1;
    while (labels > 0 && this.#valueAt(own, labels) !== fresh.heading) labels -= 1;
    const found: { heading: string; down: number; right: number }[] = [];
    for (const step of [-1, 1]) {
      for (let down = own + step; Math.abs(down - own) <= longestForm; down += step) {
        const label = this.#valueAt(down, labels);
        if (label === fresh.heading) break;
        if (typeof label === "string" && label !== "") found.push({ heading: label, down, right });
      }
    }
    return found;
  }

  /** Which columns the weights were taken from, and which could have been meant as well. */
  #noteWeights(cells: readonly KnownCell[]): void {
    if (this.lots.length === 0) return;
    for (const [as, role] of [
      ["fresh", "fresh weight"],
      ["finished", "finished weight"],
    ] as const) {
      const byHeadingRow = new Map<number | undefined, Map<string, KnownCell>>();
      for (const cell of cells) {
        if (cell.role !== role || cell.heading === undefined) continue;
        const headings = byHeadingRow.get(cell.headingRow) ?? new Map<string, KnownCell>();
        byHeadingRow.set(cell.headingRow, headings);
        if (!headings.has(cell.heading)) headings.set(cell.heading, cell);
      }
      for (const [headingRow, headings] of byHeadingRow) {
        const [first, ...others] = [...headings.values()].sort((one, other) => one.column - other.column);
        if (!first) continue;
        const instead = headingRow === undefined ? [] : others.map(({ heading }) => heading ?? "");
        this.columns.push({
          as,
          heading: first.heading ?? "",
          ...(first.unit !== undefined && { unit: first.unit }),
          ...(instead.length > 0 && { instead }),
        });
      }
    }
  }

  #note(as: Taken, heading: string): void {
    if (!this.columns.some((column) => column.as === as && column.heading === heading)) {
      this.columns.push({ as, heading });
    }
  }

  #valueAt = (down: number, right: number): CellContent => this.#area.values[down]?.[right] ?? "";
  #formulaAt = (down: number, right: number): string => this.#area.formulas[down]?.[right] ?? "";
}

const isNothing = (value: CellContent): boolean => value === "" || (typeof value === "string" && value.trim() === "");

/** A formula filled down ahead of the lots. */
const isWaiting = ({ value, typed }: KnownCell): boolean => value === 0 && !typed;

const weightOf = ({ value, unit }: KnownCell): Weight => ({ value: value as number, unit });
