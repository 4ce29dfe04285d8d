import type { Answer, BookCell, BookColumn } from "../define";
import { must, mustBe, noAnswer } from "../errors";
import { area } from "../quantities";
import { isSheetError } from "../sheet-error";
import { amountProblem, cellIn, firstRow, isAmount, isBlankAmount } from "./lots";

/** The area of a group, or the error that stands in its place; nothing where no areas were given. */
export interface GroupAreas {
  readonly of: (group: string | number) => Answer | undefined;
  /** One area for all groups: flushes of the same land share it, and so does the total. */
  readonly shared: boolean;
}

/**
 * Groups are told apart as SUMIFS tells them apart: letters large or small, and spaces around them, make no difference.
 */
export const groupKey = (cell: BookCell): string => String(cell).trim().toLowerCase();

/** A name is text or a number: plots are often numbered. */
export const isName = (cell: BookCell): cell is string | number =>
  (typeof cell === "number" && Number.isFinite(cell)) || (typeof cell === "string" && cell.trim() !== "");

export function groupAreas(areaNames: BookColumn | undefined, areas: BookColumn | undefined): GroupAreas {
  if (areas === undefined) {
    if (areaNames !== undefined) throw mustBe("areas", { kind: "given with", argument: "areaNames" }, null);
    return { of: () => undefined, shared: false };
  }
  return areaNames === undefined ? sharedArea(areas) : namedAreas(areaNames, areas);
}

/** Where the areas begin. A single cell is no heading, whatever stands in it. */
const firstArea = (areas: BookColumn): number => (areas.length > 1 ? firstRow(areas) : 0);

function sharedArea(areas: BookColumn): GroupAreas {
  const first = firstArea(areas);
  if (areas.length - first !== 1) {
    throw must(
      "areas",
      { be: { kind: "one for all groups", names: "areaNames" } },
      { kind: "areas", count: areas.length - first },
    );
  }
  const shared = areaIn(areas, first);
  return { of: () => shared, shared: true };
}

function namedAreas(areaNames: BookColumn, areas: BookColumn): GroupAreas {
  const byKey = new Map<string, { readonly area: Answer | undefined; readonly row: number }>();
  for (let row = firstArea(areas); row < areas.length; row += 1) {
    const name = cellIn(areaNames, row);
    const hasArea = !isBlankAmount(cellIn(areas, row));
    if (!isName(name)) {
      if (hasArea) {
        throw must("areaNames", { be: "filled in beside every area" }, { kind: "unnamed row", row: row + 1 });
      }
      continue;
    }
    const before = byKey.get(groupKey(name));
    if (before !== undefined) {
      const found = { kind: "twice", name: String(name).trim(), rows: [before.row + 1, row + 1] } as const;
      throw must("areaNames", { do: "name each group once" }, found);
    }
    byKey.set(groupKey(name), { area: hasArea ? areaIn(areas, row) : undefined, row });
  }
  return {
    of: (group) => {
      const named = byKey.get(groupKey(group));
      // Named and still blank: it waits. Not named at all may be a slip of the pen, and must be seen.
      return named === undefined ? withoutArea(group) : (named.area ?? "");
    },
    shared: false,
  };
}

/** An area that is none stands as an error in the cells it would be needed in, and spares the others. */
function areaIn(areas: BookColumn, row: number): Answer {
  const cell = cellIn(areas, row);
  if (isAmount(cell)) return cell;
  return isSheetError(cell) ? cell : amountProblem("areas", area, cell, row);
}

const withoutArea = (group: string | number): Answer =>
  noAnswer("areas", { do: { kind: "area of", group } }, "got none");
