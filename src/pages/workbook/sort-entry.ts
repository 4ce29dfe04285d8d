/** The menu's entry that sorts the table of the sheet in sight; what was done is said above the grid, with a way back. */
import { IUndoRedoService, IUniverInstanceService } from "@univerjs/core";
import { keptIn } from "../../engine/snapshot";
import { sortTable } from "../../engine/sort-table";
import { lookersByPlace, movingCells, type Sorting, typedBeside } from "../../sorting/sorted-table";
import { columnName } from "../../workbook/addresses";
import type { Area, Table, Workbook } from "../../workbook/workbook";
import { askHowToSort, type SortAnswer } from "./ask-how-to-sort";
import type { CellMessages } from "./cell-messages";
import type { Grid } from "./grid";
import { focusGrid } from "./keys";
import { byId } from "./show";
import { lookersInWords, sortingRefused, words } from "./words";

export function prepareSortEntry(grid: Grid, remark: CellMessages["remark"]): void {
  const { api } = grid;
  const entry = byId("sort");
  const follow = () => {
    entry.hidden = tableInSight(grid) === undefined;
  };
  api.addEvent(api.Event.ActiveSheetChanged, follow);
  grid.onChange(follow);
  follow();
  entry.addEventListener("click", async () => {
    await grid.finishTyping();
    const table = tableInSight(grid);
    const sheet = api.getActiveWorkbook()?.getActiveSheet().getSheetName();
    if (table && sheet !== undefined) sortAsAsked(grid, sheet, table, remark);
  });
}

/** The table around the selected cell, or the first. */
function tableInSight({ api }: Grid): Table | undefined {
  const sheet = api.getActiveWorkbook()?.getActiveSheet();
  const { tables = [] } = sheet ? keptIn(sheet.getSheet().getConfig()) : {};
  return tables.find(({ area }) => holds(area, selectedIn(sheet))) ?? tables[0];
}

type ActiveSheet = ReturnType<NonNullable<ReturnType<Grid["api"]["getActiveWorkbook"]>>["getActiveSheet"]>;

function selectedIn(sheet: ActiveSheet | undefined): { row: number; column: number } | undefined {
  const cell = sheet?.getSelection()?.getCurrentCell();
  return cell ? { row: cell.actualRow, column: cell.actualColumn } : undefined;
}

const holds = (area: Area, place: { row: number; column: number } | undefined): boolean =>
  place !== undefined &&
  place.row >= area.row &&
  place.row < area.row + area.rows &&
  place.column >= area.column &&
  place.column < area.column + area.columns;

function sortAsAsked(grid: Grid, sheet: string, table: Table, remark: CellMessages["remark"]): void {
  const workbook = grid.workbook();
  const { area } = table;
  const headings = headingsOf(workbook, sheet, area);
  const sortingFor = ({ by, direction, withBeside }: SortAnswer): Sorting => ({
    ...{ sheet, table, direction, withBeside },
    ...{ column: area.column + by, language: navigator.language },
  });
  const usual = sortingFor({ by: 0, direction: "up", withBeside: true });
  const moving = movingCells(workbook, usual);
  if (!moving) {
    remark(words().sorting.nothing);
    return;
  }
  const selected = selectedIn(grid.api.getActiveWorkbook()?.getActiveSheet());
  const question = {
    rows: words().sorting.rows(sheet, moving.top + 1, moving.bottom + 1),
    headings,
    offered: selected && holds(area, selected) ? selected.column - area.column : 0,
    beside: besideInWords(typedBeside(workbook, usual), area),
    warning: lookersInWords(lookersByPlace(workbook, usual), sheet),
  };
  askHowToSort(question, (answer) => {
    const id = grid.api.getActiveWorkbook()?.getId() ?? "";
    const sorted = sortTable(grid.injector, id, grid.workbook(), sortingFor(answer));
    if (sorted.is === "refused") return sortingRefused(sorted.refusal);
    if (sorted.is === "in order") return words().sorting.inOrder;
    remark(words().sorting.done(sheet, headings[answer.by] ?? "", answer.direction), wayBack(grid, id, remark));
    // After the dialog, which gives the keyboard back to where it was: an entry of a menu that is closed by now.
    setTimeout(focusGrid);
    return "";
  });
}

function headingsOf({ sheets }: Workbook, sheet: string, { row, column, columns }: Area): string[] {
  const cells = sheets.find(({ name }) => name === sheet)?.cells.filter((cell) => cell.row === row) ?? [];
  return Array.from({ length: columns }, (_, place) => {
    const heading = String(cells.find((cell) => cell.column === column + place)?.value ?? "").trim();
    return heading || words().sorting.columns(columnName(column + place), columnName(column + place));
  });
}

/** The columns that are no part of the table. */
function besideInWords(wider: Area | undefined, { column, columns }: Area): string | undefined {
  if (!wider) return undefined;
  const parts: string[] = [];
  if (wider.column < column) parts.push(words().sorting.columns(columnName(wider.column), columnName(column - 1)));
  const [end, last] = [column + columns, wider.column + wider.columns - 1];
  if (last >= end) parts.push(words().sorting.columns(columnName(end), columnName(last)));
  return parts.join(", ");
}

/** A button that takes the sorting back, there until something else is done: then it would take that back. */
function wayBack(grid: Grid, bookId: string, remark: CellMessages["remark"]): HTMLElement {
  const back = document.createElement("button");
  back.type = "button";
  back.textContent = words().sorting.undo;
  grid.injector.get(IUniverInstanceService).focusUnit(bookId);
  const steps = grid.injector.get(IUndoRedoService);
  const step = steps.pitchTopUndoElement();
  const watching = steps.undoRedoStatus$.subscribe(() => {
    if (steps.pitchTopUndoElement() === step) return;
    // Not while it is being subscribed to.
    queueMicrotask(() => watching.unsubscribe());
    if (back.isConnected) remark("");
  });
  back.addEventListener("click", () => void grid.api.getActiveWorkbook()?.undo());
  return back;
}
