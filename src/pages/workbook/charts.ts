/**
 * The charts of a sheet, over the cells that they lie over in the workbook: they scroll and grow with them, follow
 * their numbers, and let clicks and swipes through to the grid.
 */
import "./charts.css";
import { IRenderManagerService, SHEET_VIEWPORT_KEY, SheetSkeletonManagerService } from "@univerjs/preset-sheets-core";
import { keptIn } from "../../engine/snapshot";
import type { Area, Chart } from "../../workbook/workbook";
import { type ChartData, chartData, chartInWords } from "./chart-data";
import type { Grid } from "./grid";

/** Numbers that change one after the other are drawn once. */
const pause = 120;

interface Standing {
  readonly figure: HTMLElement;
  /** What is drawn in it, and how large. */
  drawn: string;
}

export function showCharts(grid: Grid, container: HTMLElement): void {
  const canvas = container.querySelector<HTMLCanvasElement>("canvas[id^=univer-sheet-main-canvas]");
  const book = grid.api.getActiveWorkbook();
  const render = book && grid.injector.get(IRenderManagerService).getRenderById(book.getId());
  if (!canvas || !book || !render) throw new Error("the sheet is not drawn yet");
  const { scene, engine } = render;
  const overlay = document.createElement("div");
  overlay.className = "charts";
  canvas.after(overlay);
  const standing: Standing[] = [];

  /** The window on the cells that scroll: charts leave headings, frozen rows and scrollbars free. */
  const placeOverlay = () => {
    const view = scene.getViewport(SHEET_VIEWPORT_KEY.VIEW_MAIN);
    if (!view) return undefined;
    const { left, top, viewportScrollX: scrollX, viewportScrollY: scrollY } = view;
    const { width = 0, height = 0 } = view;
    const { scaleX, scaleY } = scene.getAncestorScale();
    const bar = view.getScrollBar();
    const [beside, below] = [bar?.hasVerticalThumb() ? bar.totalSize : 0, bar?.hasHorizonThumb() ? bar.totalSize : 0];
    setPlace(overlay, `translate(${left}px, ${top}px)`, (width ?? 0) - beside, (height ?? 0) - below);
    return { left, top, scrollX, scrollY, scaleX, scaleY };
  };

  const areaOnSheet = ({ row, column, rows, columns }: Area) => {
    const skeleton = render.with(SheetSkeletonManagerService).getCurrentParam()?.skeleton;
    if (!skeleton) return undefined;
    const first = skeleton.getCellWithCoordByIndex(row, column);
    const last = skeleton.getCellWithCoordByIndex(row + rows - 1, column + columns - 1);
    return { x: first.startX, y: first.startY, width: last.endX - first.startX, height: last.endY - first.startY };
  };

  /** Lays the charts where the grid has just drawn their cells. */
  const place = () => {
    const charts = chartsShown();
    overlay.hidden = charts.length === 0;
    if (charts.length === 0) return;
    const view = placeOverlay();
    if (!view) return;
    for (const [index, { figure }] of standing.entries()) {
      const area = charts[index] && areaOnSheet(charts[index].area);
      figure.hidden = area === undefined;
      if (!area) continue;
      const x = (area.x - view.scrollX) * view.scaleX - view.left;
      const y = (area.y - view.scrollY) * view.scaleY - view.top;
      const hasNewSize = setPlace(
        figure,
        `translate(${x}px, ${y}px) scale(${view.scaleX}, ${view.scaleY})`,
        area.width,
        area.height,
      );
      if (hasNewSize) drawSoon();
    }
  };

  const chartsShown = (): readonly Chart[] => keptIn(book.getActiveSheet().getSheet().getConfig()).charts ?? [];

  const draw = async () => {
    const charts = chartsShown();
    const sheet = book.getActiveSheet().getSheetName();
    while (standing.length > charts.length) standing.pop()?.figure.remove();
    while (standing.length < charts.length) standing.push({ figure: newFigure(overlay), drawn: "" });
    place();
    if (charts.length === 0) return;
    const { chartPicture, ownColor } = await import("./chart-picture");
    for (const [index, chart] of charts.entries()) {
      const spot = standing[index];
      const area = areaOnSheet(chart.area);
      if (!spot || !area) continue;
      const data = chartData(chart, sheet, (name, row, column) => {
        const id = book.getSheetByName(name)?.getSheetId();
        return id === undefined ? undefined : grid.value(id, row, column);
      });
      const drawn = JSON.stringify([data, area.width, area.height]);
      if (drawn === spot.drawn) continue;
      spot.drawn = drawn;
      fill(spot.figure, data, area, chartPicture, ownColor);
    }
  };

  let waiting: ReturnType<typeof setTimeout> | undefined;
  const drawSoon = () => {
    clearTimeout(waiting);
    // A part that cannot be fetched is asked for again with the next change.
    waiting = setTimeout(() => void draw().catch(() => undefined), pause);
  };

  let shownSheet = "";
  engine.endFrame$.subscribe(() => {
    const sheet = book.getActiveSheet().getSheetId();
    if (sheet !== shownSheet) {
      shownSheet = sheet;
      for (const { figure } of standing.splice(0)) figure.remove();
      drawSoon();
    }
    place();
  });
  grid.onChange(drawSoon);
  drawSoon();
}

function newFigure(overlay: HTMLElement): HTMLElement {
  const figure = document.createElement("figure");
  figure.className = "chart";
  figure.setAttribute("role", "img");
  overlay.append(figure);
  return figure;
}

/** Says whether the size is another than before. Frames are many: only what changes is written. */
function setPlace({ style }: HTMLElement, transform: string, width: number, height: number): boolean {
  if (style.transform !== transform) style.transform = transform;
  const size = [`${width}px`, `${height}px`] as const;
  if (style.width === size[0] && style.height === size[1]) return false;
  [style.width, style.height] = size;
  return true;
}

/** What is above the picture and around it, in pixels. */
const around = { across: 10, caption: 30, key: 18 };

type Draw = typeof import("./chart-picture");

function fill(
  figure: HTMLElement,
  data: ChartData,
  { width, height }: { width: number; height: number },
  chartPicture: Draw["chartPicture"],
  ownColor: Draw["ownColor"],
): void {
  figure.setAttribute("aria-label", chartInWords(data));
  const caption = document.createElement("figcaption");
  caption.textContent = data.title;
  const hasKey = data.series.length > 1;
  const room = { width: width - around.across, height: height - around.caption - (hasKey ? around.key : 0) };
  const picture = room.width > 80 && room.height > 60 ? [chartPicture(data, room.width, room.height)] : [];
  figure.replaceChildren(caption, ...(hasKey ? [keyTo(data, ownColor)] : []), ...picture);
}

/** Which sign is which series. */
function keyTo({ series }: ChartData, ownColor: Draw["ownColor"]): HTMLElement {
  const key = document.createElement("ul");
  key.className = "key";
  for (const [index, { name, color }] of series.entries()) {
    const sign = document.createElement("span");
    sign.textContent = "●◆▲■"[index % 4] ?? "●";
    sign.style.color = ownColor(color);
    const item = document.createElement("li");
    item.append(sign, ` ${name}`);
    key.append(item);
  }
  return key;
}
