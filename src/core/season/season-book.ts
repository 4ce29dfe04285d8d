import { leastAmount, mostAmount } from "../bounds";
import type { BookCell, BookColumn } from "../define";
import { type DomainError, inPlace, mustBe } from "../errors";
import { CompensatedSum } from "../numeric/compensated-sum";
import { groupKey, isName } from "./group-areas";
import { firstRow, isGap, isOpen, lotNames, lotProblem } from "./lots";

/** What lots add up to, those of a group or all of a season. Open lots and rows left out are only counted. */
export class Totals {
  lots = 0;
  open = 0;
  leftOut = 0;
  readonly fresh = new CompensatedSum();
  readonly finished = new CompensatedSum();

  include(other: Totals): void {
    this.lots += other.lots;
    this.open += other.open;
    this.leftOut += other.leftOut;
    this.fresh.add(other.fresh.total);
    this.finished.add(other.finished.total);
  }
}

export class Group extends Totals {
  readonly name: string | number;

  constructor(name: string | number) {
    super();
    this.name = name;
  }
}

export interface SeasonBook {
  /** In the order in which the book first names them, as it first spells them. */
  readonly groups: readonly Group[];
  /** The sum of the groups, with the rows left out that belong to none. */
  readonly total: Totals;
  readonly firstLeftOut: DomainError | undefined;
}

/**
 * Adds a book up by groups. A book may have a million rows: for a row that is a lot, nothing is allocated and nothing
 * of another module is asked, which costs more than the sum where modules are not joined into one script.
 */
export function seasonBook(groupCells: BookColumn, freshWeights: BookColumn, finishedWeights: BookColumn): SeasonBook {
  const known = new KnownGroups();
  const total = new Totals();
  let firstLeftOut: DomainError | undefined;
  for (let row = firstRow(freshWeights, finishedWeights); row < freshWeights.length; row += 1) {
    const fresh = freshWeights[row]?.[0];
    const finished = finishedWeights[row]?.[0];
    const isLot =
      typeof fresh === "number" &&
      typeof finished === "number" &&
      finished >= leastAmount &&
      finished <= fresh &&
      fresh <= mostAmount;
    if (!isLot && isGap(fresh, finished)) continue;
    const name = groupCells[row]?.[0];
    const group = known.at(name);
    if (group === undefined) {
      total.leftOut += 1;
      firstLeftOut ??= inPlace(mustBe("groups", "text or a number", name), row);
    } else if (isLot) {
      group.lots += 1;
      group.fresh.add(fresh);
      group.finished.add(finished);
    } else if (isOpen(fresh, finished)) {
      group.open += 1;
    } else {
      group.leftOut += 1;
      firstLeftOut ??= lotProblem(fresh, finished, row, lotNames);
    }
  }
  const groups = known.inOrder();
  for (const group of groups) total.include(group);
  return { groups, total, firstLeftOut };
}

/** Finds the group of a cell: by the cell as it is spelled, and by its key when the spelling is new. */
class KnownGroups {
  private readonly bySpelling = new Map<BookCell, Group>();
  private readonly byKey = new Map<string, Group>();
  private cellBefore: BookCell;
  private groupBefore: Group | undefined;

  at(cell: BookCell): Group | undefined {
    if (cell === this.cellBefore) return this.groupBefore;
    this.cellBefore = cell;
    this.groupBefore = this.bySpelling.get(cell) ?? this.ofNewSpelling(cell);
    return this.groupBefore;
  }

  inOrder(): readonly Group[] {
    return [...this.byKey.values()];
  }

  private ofNewSpelling(cell: BookCell): Group | undefined {
    if (!isName(cell)) return undefined;
    const key = groupKey(cell);
    const group = this.byKey.get(key) ?? new Group(typeof cell === "string" ? cell.trim() : cell);
    this.byKey.set(key, group);
    this.bySpelling.set(cell, group);
    return group;
  }
}
