import { op, table } from "arquero";
import { bind } from "../cells/bind";
import { seasonTable } from "../core/season/season-table";
import { sheetRows } from "../workbook/sheet-size";
import { steadyTime } from "./rows-of-cells";
import { column, type SeasonRows, seasonRows } from "./season-rows";
import { type Comparison, sideBySide } from "./side-by-side";

/** As many rows as a worksheet has below a heading. */
const wholeSheet = sheetRows - 1;
export const groupCount = 40;

const call = bind(seasonTable);

const nestedCells = (rows: SeasonRows) => [column(rows.groups), column(rows.fresh), column(rows.finished)] as const;

/** Groups and sums of the same rows by a library for tables, from flat columns. */
function byLibrary({ groups, fresh, finished }: SeasonRows): unknown {
  return table({ groups, fresh, finished })
    .groupby("groups")
    .rollup({ lots: op.count(), fresh: op.sum("fresh"), finished: op.sum("finished") })
    .objects();
}

type Cells = ReturnType<typeof nestedCells>;

/** The same cells added up by their groups as they stand: no row is looked at twice, none is doubted. */
function byBareLoop([groups, fresh, finished]: Cells): unknown {
  const sums = new Map<string, { lots: number; fresh: number; finished: number }>();
  for (let row = 0; row < groups.length; row += 1) {
    const name = groups[row]?.[0] as string;
    let sum = sums.get(name);
    if (sum === undefined) {
      sum = { lots: 0, fresh: 0, finished: 0 };
      sums.set(name, sum);
    }
    sum.lots += 1;
    sum.fresh += fresh[row]?.[0] as number;
    sum.finished += finished[row]?.[0] as number;
  }
  return sums;
}

export function compareSeasonTable(): Comparison[] {
  const rows = seasonRows(wholeSheet, groupCount);
  const cells = nestedCells(rows);
  const what = "SEASONTABLE of 1,048,575 rows, 40 groups";
  const ours = { name: "nested cells of a host", run: () => call(...cells) };
  return [
    sideBySide(what, ours, { name: "one bare loop with a Map, the same cells", run: () => byBareLoop(cells) }, 2),
    sideBySide(what, ours, { name: "arquero, flat arrays", run: () => byLibrary(rows) }, 1),
  ];
}

/** One contestant alone, for a process whose memory is then read. */
export function seasonOnce(contestant: string): void {
  const rows = seasonRows(wholeSheet, groupCount);
  if (contestant === "arquero") byLibrary(rows);
  else {
    const cells = nestedCells(rows);
    if (contestant === "ours") call(...cells);
  }
}

/** Nanoseconds for each row. */
export function growthOfSeason(counts: readonly number[]): number[] {
  return counts.map((count) => {
    const cells = nestedCells(seasonRows(count, groupCount));
    return (steadyTime(() => call(...cells)) / count) * 1e6;
  });
}
