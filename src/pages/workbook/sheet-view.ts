/** Where the cells of the open sheet are drawn at the moment. */
import { IRenderManagerService, SHEET_VIEWPORT_KEY, SheetSkeletonManagerService } from "@univerjs/preset-sheets-core";
import { type Box, type CellBoxes, common } from "./bubble-place";
import type { Grid } from "./grid";

export interface SheetView {
  readonly canvas: HTMLCanvasElement;
  /** The part of the picture that shows cells and is on the screen: no headings, no scrollbars, no keyboard over it. */
  room(): Box;
  /** A cell that is in sight, those next to it, and the room around it, without the frozen rows and columns it is not in. */
  cell(row: number, column: number): (CellBoxes & { readonly room: Box }) | undefined;
  /** Calls back whenever something is drawn anew. */
  onDraw(listener: () => void): void;
}

/** So many hidden rows or columns are looked past for the next one. */
const furthest = 50;

export function sheetView({ api, injector }: Grid, container: HTMLElement): SheetView {
  const canvas = container.querySelector<HTMLCanvasElement>("canvas[id^=univer-sheet-main-canvas]");
  const book = api.getActiveWorkbook();
  const render = book && injector.get(IRenderManagerService).getRenderById(book.getId());
  if (!canvas || !book || !render) throw new Error("the sheet is not drawn yet");
  const { scene, engine } = render;
  const skeletonNow = () => render.with(SheetSkeletonManagerService).getCurrentParam()?.skeleton;

  const onScreen = (): Box => {
    const { left, top, width, height } = canvas.getBoundingClientRect();
    const seen = window.visualViewport;
    const [x, y] = [seen?.offsetLeft ?? 0, seen?.offsetTop ?? 0];
    return common(
      { left: 0, top: 0, right: width, bottom: height },
      {
        left: x - left,
        top: y - top,
        right: x - left + (seen?.width ?? innerWidth),
        bottom: y - top + (seen?.height ?? innerHeight),
      },
    );
  };

  /** The window on the cells that scroll. */
  const mainRoom = (): Box | undefined => {
    const view = scene.getViewport(SHEET_VIEWPORT_KEY.VIEW_MAIN);
    if (!view) return undefined;
    const bar = view.getScrollBar();
    const [beside, below] = [bar?.hasVerticalThumb() ? bar.totalSize : 0, bar?.hasHorizonThumb() ? bar.totalSize : 0];
    const { left, top, width, height } = view;
    return { left, top, right: left + (width ?? 0) - beside, bottom: top + (height ?? 0) - below };
  };

  const room = (): Box => {
    const [main, skeleton, { scaleX, scaleY }] = [mainRoom(), skeletonNow(), scene.getAncestorScale()];
    const seen = onScreen();
    if (!main || !skeleton) return seen;
    const [left, top] = [skeleton.rowHeaderWidth * scaleX, skeleton.columnHeaderHeight * scaleY];
    return common(seen, { left, top, right: main.right, bottom: main.bottom });
  };

  const cell: SheetView["cell"] = (row, column) => {
    const [main, skeleton] = [mainRoom(), skeletonNow()];
    if (!main || !skeleton) return undefined;
    const { startRow, startColumn, xSplit, ySplit } = book.getActiveSheet().getSheet().getFreeze();
    const isFrozen = { rows: ySplit > 0 && row < startRow, columns: xSplit > 0 && column < startColumn };
    const view = scene.getViewport(
      isFrozen.rows
        ? SHEET_VIEWPORT_KEY[isFrozen.columns ? "VIEW_MAIN_LEFT_TOP" : "VIEW_MAIN_TOP"]
        : SHEET_VIEWPORT_KEY[isFrozen.columns ? "VIEW_MAIN_LEFT" : "VIEW_MAIN"],
    );
    if (!view) return undefined;
    const { scaleX, scaleY } = scene.getAncestorScale();
    const boxAt = (row: number, column: number): (Box & { endRow: number; endColumn: number }) | undefined => {
      if (row >= skeleton.getRowCount() || column >= skeleton.getColumnCount()) return undefined;
      const { startX, endX, startY, endY, endRow, endColumn } = skeleton.getCellWithCoordByIndex(row, column).mergeInfo;
      return {
        left: (startX - view.viewportScrollX) * scaleX,
        top: (startY - view.viewportScrollY) * scaleY,
        right: (endX - view.viewportScrollX) * scaleX,
        bottom: (endY - view.viewportScrollY) * scaleY,
        endRow,
        endColumn,
      };
    };
    const shownFrom = (boxOf: (step: number) => Box | undefined): Box | undefined => {
      for (let step = 1; step <= furthest; step += 1) {
        const box = boxOf(step);
        if (!box || (box.right > box.left && box.bottom > box.top)) return box;
      }
      return undefined;
    };
    const here = boxAt(row, column);
    if (!here) return undefined;
    const all = room();
    const around = {
      left: isFrozen.columns ? all.left : Math.max(all.left, main.left),
      top: isFrozen.rows ? all.top : Math.max(all.top, main.top),
      right: all.right,
      bottom: all.bottom,
    };
    const seen = common(here, around);
    // Scrolled away, but for a sliver.
    if (seen.right - seen.left < 4 || seen.bottom - seen.top < 4) return undefined;
    return {
      cell: here,
      right: shownFrom((step) => boxAt(row, here.endColumn + step)),
      below: shownFrom((step) => boxAt(here.endRow + step, column)),
      room: around,
    };
  };

  return {
    canvas,
    room,
    cell,
    onDraw: (listener) => {
      engine.endFrame$.subscribe(listener);
    },
  };
}
