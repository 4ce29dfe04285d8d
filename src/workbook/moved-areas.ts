/** Where tables, charts and pages stand after rows or columns were put in or taken out, as references in formulas do. */
import { addressOf, fixed } from "./addresses";
import { areaWithin, partsOf, sheetInFormula } from "./references";
import type { Area, Chart, PageSetup, Sheet } from "./workbook";

export interface Shift {
  /** The name of the sheet. */
  readonly sheet: string;
  readonly along: "rows" | "columns";
  readonly at: number;
  /** How many are put in before `at`; less than 0: how many are taken out from there on. */
  readonly count: number;
}

/** undefined when all of it is taken out. */
export function movedArea(area: Area, { along, at, count }: Shift): Area | undefined {
  const [first, length] = along === "rows" ? [area.row, area.rows] : [area.column, area.columns];
  const end = first + length;
  let [movedFirst, movedEnd] = [first, end];
  if (count > 0) {
    if (at <= first) movedFirst += count;
    if (at < end) movedEnd += count;
  } else {
    const after = (place: number) => (place <= at ? place : Math.max(at, place + count));
    [movedFirst, movedEnd] = [after(first), after(end)];
  }
  if (movedEnd <= movedFirst) return undefined;
  const moved = movedEnd - movedFirst;
  return along === "rows" ? { ...area, row: movedFirst, rows: moved } : { ...area, column: movedFirst, columns: moved };
}

type Parts = Pick<Sheet, "page" | "tables" | "charts">;

/** What a sheet has besides cells, after a shift in it or in another sheet that its charts draw from. */
export function movedParts({ page, tables, charts }: Parts, ownSheet: string, shift: Shift): Parts {
  const isOwn = shift.sheet === ownSheet;
  const moved = <Part extends { area: Area }>(part: Part): Part[] => {
    const area = isOwn ? movedArea(part.area, shift) : part.area;
    return area ? [{ ...part, area }] : [];
  };
  return {
    ...(page && { page: isOwn ? movedPage(page, shift) : page }),
    ...(tables && { tables: tables.flatMap(moved) }),
    ...(charts && { charts: charts.flatMap(moved).map((chart) => withMovedSeries(chart, ownSheet, shift)) }),
  };
}

function movedPage({ printArea, repeatedRow, ...rest }: PageSetup, shift: Shift): PageSetup {
  const area = printArea && movedArea(printArea, shift);
  const heading =
    repeatedRow === undefined ? undefined : movedArea({ row: repeatedRow, column: 0, rows: 1, columns: 1 }, shift);
  return { ...rest, ...(area && { printArea: area }), ...(heading && { repeatedRow: heading.row }) };
}

/** A series whose cells are all gone has nothing to draw. */
function withMovedSeries(chart: Chart, ownSheet: string, shift: Shift): Chart {
  const series = chart.series.flatMap((each) => {
    const across = movedRange(each.across, ownSheet, shift);
    const up = movedRange(each.up, ownSheet, shift);
    return across === undefined || up === undefined ? [] : [{ ...each, across, up }];
  });
  return { ...chart, series };
}

function movedRange(range: string, ownSheet: string, shift: Shift): string | undefined {
  const { sheet = ownSheet, cells } = partsOf(range);
  // Whole columns and rows, and names, are left as they are.
  const area = /\d/.test(cells) && /[a-z]/i.test(cells) ? areaWithin(cells, { rows: 0, columns: 0 }) : undefined;
  if (sheet !== shift.sheet || !area) return range;
  const moved = movedArea(area, shift);
  if (!moved) return undefined;
  const first = fixed(addressOf(moved.row, moved.column));
  const last = fixed(addressOf(moved.row + moved.rows - 1, moved.column + moved.columns - 1));
  return `${sheetInFormula(sheet)}!${first === last ? first : `${first}:${last}`}`;
}
