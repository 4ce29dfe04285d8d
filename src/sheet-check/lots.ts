import type { At } from "./headed-cells";
import type { KnownCell, TeaFormula } from "./known-cell";
import type { Role } from "./roles";

/** The fresh and finished weight of one lot, with its moistures where they are written down. */
export interface Lot {
  readonly fresh: KnownCell;
  readonly finished: KnownCell;
  readonly aired: KnownCell | undefined;
  readonly freshMoisture: KnownCell | undefined;
  readonly finishedMoisture: KnownCell | undefined;
}

/** The fresh weight of a lot and its weight after airing, be it finished or not. */
export interface Airing {
  readonly fresh: KnownCell;
  readonly after: KnownCell;
}

/** So many rows from its fresh weight a form may still be about the same lot. */
export const longestForm = 12;

/** Lots by the rows of a book, by forms with their labels at the left, and by the functions that take both weights. */
export function lotsOf(
  cells: readonly KnownCell[],
  formulas: readonly TeaFormula[],
  knownAt: (at: At) => KnownCell | undefined,
): Lot[] {
  const lots = new Map<KnownCell, Lot>();
  const add = (group: readonly KnownCell[], roleOf: (cell: KnownCell) => Role | undefined) => {
    const of = (role: Role) => {
      const cells = group.filter((cell) => roleOf(cell) === role);
      return cells.find(({ value }) => typeof value === "number") ?? cells[0];
    };
    const [fresh, finished] = [of("fresh weight"), of("finished weight")];
    if (fresh === undefined || finished === undefined || lots.has(finished)) return;
    const others = {
      aired: of("aired weight"),
      freshMoisture: of("fresh moisture"),
      finishedMoisture: of("finished moisture"),
    };
    lots.set(finished, { fresh, finished, ...others });
  };
  const written = cells.filter(({ heading }) => heading !== undefined);
  for (const row of grouped(written, (cell) => `${cell.row} ${cell.headingRow ?? "label"}`)) {
    for (const book of booksIn(row)) add(book, ({ role }) => role);
  }
  for (const form of formsOf(written)) add(form, ({ role }) => role);
  for (const { reads } of formulas) {
    const single = reads.flatMap((read) => knownAt(read) ?? []);
    if (single.length <= 12) add(single, ({ fedAs }) => fedAs);
  }
  return [...lots.values()];
}

/** Fresh and aired weights by the rows of a book and by forms. */
export function airingsOf(cells: readonly KnownCell[]): Airing[] {
  const written = cells.filter(({ heading }) => heading !== undefined);
  const rows = grouped(written, (cell) => `${cell.row} ${cell.headingRow ?? "label"}`).flatMap(booksIn);
  return [...rows, ...formsOf(written)].flatMap((group) => {
    const fresh = group.find(({ role }) => role === "fresh weight");
    const after = group.find(({ role }) => role === "aired weight");
    return fresh === undefined || after === undefined ? [] : [{ fresh, after }];
  });
}

/** A row of books beside each other, parted where the lot of the next one is named. */
function booksIn(row: readonly KnownCell[]): KnownCell[][] {
  const books: KnownCell[][] = [[]];
  for (const cell of row) {
    if (cell.role === "lot" && books.at(-1)?.some(({ role }) => role === "lot")) books.push([]);
    books.at(-1)?.push(cell);
  }
  return books;
}

/** Labelled cells below each other, each form from a fresh weight to the next. */
export function formsOf(cells: readonly KnownCell[]): KnownCell[][] {
  const labelled = cells.filter(({ headingRow }) => headingRow === undefined);
  return grouped(labelled, ({ column }) => String(column)).flatMap((column) => {
    const forms: KnownCell[][] = [];
    for (const cell of column) {
      if (cell.role === "fresh weight") forms.push([]);
      const form = forms.at(-1);
      const top = form?.[0]?.row ?? cell.row;
      if (cell.row - top <= longestForm) form?.push(cell);
    }
    return forms;
  });
}

export function grouped<Cell>(cells: readonly Cell[], keyOf: (cell: Cell) => string): Cell[][] {
  const groups = new Map<string, Cell[]>();
  for (const cell of cells) {
    const group = groups.get(keyOf(cell));
    if (group === undefined) groups.set(keyOf(cell), [cell]);
    else group.push(cell);
  }
  return [...groups.values()];
}
