import type { Answer, BookCell, BookColumn } from "../define";
import { isSheetError, must, noAnswer, shortened } from "../errors";
import { area } from "../quantities";
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

const namesAreas = { mentions: ["areaNames"] };

/** A name is text or a number: plots are often numbered. */
export const isName = (cell: BookCell): cell is string | number =>
  (typeof cell === "number" && Number.isFinite(cell)) || (typeof cell === "string" && cell.trim() !== "");

export function groupAreas(areaNames: BookColumn | undefined, areas: BookColumn | undefined): GroupAreas {
  if (areas === undefined) {
    if (areaNames !== undefined) throw must("areas", "be given where areaNames are", "got a blank", namesAreas);
    return { of: () => undefined, shared: false };
  }
  return areaNames === undefined ? sharedArea(areas) : namedAreas(areaNames, areas);
}

/** Where the areas begin. A single cell is no heading, whatever stands in it. */
const firstArea = (areas: BookColumn): number => (areas.length > 1 ? firstRow(areas) : 0);

function sharedArea(areas: BookColumn): GroupAreas {
  const first = firstArea(areas);
  if (areas.length - first !== 1) {
    const got = `got ${areas.length - first} areas without names`;
    throw must("areas", "be one number for all groups, or have areaNames beside them", got, namesAreas);
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
      if (hasArea)
        throw must("areaNames", "be filled in beside every area", `row ${row + 1} is not`, { item: row + 1 });
      continue;
    }
    const before = byKey.get(groupKey(name));
    if (before !== undefined) {
      const rows = `rows ${before.row + 1} and ${row + 1}`;
      throw must("areaNames", "name each group once", `"${shortened(String(name).trim())}" stands in ${rows}`, {
        item: row + 1,
      });
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
  noAnswer("areas", `hold an area of "${shortened(String(group))}"`, "got none");
