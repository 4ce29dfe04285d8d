/**
 * Fingers on the sheet. The engine's sheet is made for a mouse: under a finger it selects where it should scroll. Here
 * a swipe scrolls, a tap selects, a tap on the selected cell types, and a long press selects a range. Two fingers are
 * the browser's, which enlarges the page.
 */
import { type ICellWithCoord, ICommandService, type Injector } from "@univerjs/core";
import {
  IRenderManagerService,
  SetScrollRelativeCommand,
  SHEET_VIEWPORT_KEY,
  SheetSkeletonManagerService,
  Vector2,
} from "@univerjs/preset-sheets-core";
import type { Api } from "./grid";

/** A finger never holds quite still. */
const tremor = 10;
const longPress = 450;
/** Nearer to the edge of a cell lie the handles that a mouse drags the selection by. */
const awayFromHandles = 12;
/** A swipe this much steeper than it is wide goes straight. */
const straight = 2;
/** What is left of a swipe's speed after each frame, and the speed, in pixels a millisecond, at which it rests. */
const slide = 0.95;
const rest = 0.02;

interface Spot {
  readonly x: number;
  readonly y: number;
}

interface Finger {
  readonly start: Spot;
  last: Spot;
  lastAt: number;
  /** Pixels a millisecond. */
  speed: Spot;
  is: "resting" | "scrolling" | "selecting";
  /** The axis that a straight swipe keeps to. */
  only: "x" | "y" | undefined;
}

const cellViewports: readonly string[] = [
  SHEET_VIEWPORT_KEY.VIEW_MAIN,
  SHEET_VIEWPORT_KEY.VIEW_MAIN_LEFT,
  SHEET_VIEWPORT_KEY.VIEW_MAIN_TOP,
  SHEET_VIEWPORT_KEY.VIEW_MAIN_LEFT_TOP,
];

/** Lets fingers work the sheet in the element. */
export function startTouch(container: HTMLElement, api: Api, injector: Injector): void {
  const canvas = container.querySelector<HTMLCanvasElement>("canvas[id^=univer-sheet-main-canvas]");
  const book = api.getActiveWorkbook();
  const render = book && injector.get(IRenderManagerService).getRenderById(book.getId());
  if (!canvas || !book || !render) throw new Error("the sheet is not drawn yet");
  const { scene } = render;
  const commands = injector.get(ICommandService);
  canvas.style.touchAction = "pinch-zoom";

  let finger: Finger | undefined;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  let sliding: number | undefined;

  const scroll = ({ x, y }: Spot): void => {
    const { scaleX, scaleY } = scene.getAncestorScale();
    void commands.executeCommand(SetScrollRelativeCommand.id, { offsetX: -x / scaleX, offsetY: -y / scaleY });
  };

  /** The cell at a place on the screen, with where it lies on the canvas; undefined on the headings. */
  const cellAt = (spot: Spot): { cell: ICellWithCoord["mergeInfo"]; inside: Spot } | undefined => {
    const skeleton = render.with(SheetSkeletonManagerService).getCurrentParam()?.skeleton;
    const { left, top } = canvas.getBoundingClientRect();
    const [x, y] = [spot.x - left, spot.y - top];
    const viewport = scene.getActiveViewportByCoord(Vector2.FromArray([x, y]));
    if (!skeleton || !viewport || !cellViewports.includes(viewport.viewportKey)) return undefined;
    const { scaleX, scaleY } = scene.getAncestorScale();
    const scrolled = { x: viewport.viewportScrollX, y: viewport.viewportScrollY };
    const { row, column } = skeleton.getCellIndexByOffset(x, y, scaleX, scaleY, scrolled);
    const cell = skeleton.getCellWithCoordByIndex(row, column).mergeInfo;
    return {
      cell,
      inside: {
        x: left + within(x, (cell.startX - scrolled.x) * scaleX, (cell.endX - scrolled.x) * scaleX),
        y: top + within(y, (cell.startY - scrolled.y) * scaleY, (cell.endY - scrolled.y) * scaleY),
      },
    };
  };

  /** What the engine does with a mouse, at a place away from the selection's handles. */
  const mouse = (type: "pointerdown" | "pointermove" | "pointerup", at: Spot): void => {
    const { x, y } = cellAt(at)?.inside ?? at;
    const button = type === "pointermove" ? -1 : 0;
    const buttons = type === "pointerup" ? 0 : 1;
    canvas.dispatchEvent(
      new PointerEvent(type, { clientX: x, clientY: y, button, buttons, isPrimary: true, bubbles: true }),
    );
  };

  const isSelected = (at: Spot): boolean => {
    const cell = cellAt(at)?.cell;
    const selected = book.getActiveSheet().getActiveRange()?.getRange();
    return (
      cell !== undefined &&
      selected !== undefined &&
      selected.startRow === cell.startRow &&
      selected.endRow === cell.endRow &&
      selected.startColumn === cell.startColumn &&
      selected.endColumn === cell.endColumn
    );
  };

  const tap = (at: Spot): void => {
    if (!book.isCellEditing() && isSelected(at)) {
      showKeyboard(container, true);
      book.startEditing();
      return;
    }
    mouse("pointerdown", at);
    mouse("pointerup", at);
  };

  const letGo = (): void => {
    clearTimeout(waiting);
    if (finger?.is === "selecting") mouse("pointerup", finger.last);
    finger = undefined;
  };

  const slideOn = (speed: Spot, since: number): void => {
    sliding = requestAnimationFrame((now) => {
      scroll({ x: speed.x * (now - since), y: speed.y * (now - since) });
      const slower = { x: speed.x * slide, y: speed.y * slide };
      if (Math.hypot(slower.x, slower.y) > rest) slideOn(slower, now);
    });
  };

  container.addEventListener(
    "touchstart",
    (event) => {
      if (sliding !== undefined) cancelAnimationFrame(sliding);
      const [touch] = event.targetTouches;
      if (event.target !== canvas || !touch) return;
      letGo();
      // The second finger enlarges the page.
      if (event.touches.length > 1) return;
      if (!book.isCellEditing()) showKeyboard(container, false);
      const start = { x: touch.clientX, y: touch.clientY };
      finger = { start, last: start, lastAt: event.timeStamp, speed: { x: 0, y: 0 }, is: "resting", only: undefined };
      waiting = setTimeout(() => {
        if (finger?.is !== "resting") return;
        finger.is = "selecting";
        mouse("pointerdown", start);
      }, longPress);
    },
    { passive: true },
  );

  canvas.addEventListener(
    "touchmove",
    (event) => {
      const [touch] = event.targetTouches;
      if (!finger || !touch) return;
      // The page stays where it is.
      if (event.cancelable) event.preventDefault();
      const spot = { x: touch.clientX, y: touch.clientY };
      if (finger.is === "resting") {
        const [across, down] = [Math.abs(spot.x - finger.start.x), Math.abs(spot.y - finger.start.y)];
        if (Math.hypot(across, down) < tremor) return;
        clearTimeout(waiting);
        finger.is = "scrolling";
        finger.only = down > straight * across ? "y" : across > straight * down ? "x" : undefined;
      }
      if (finger.is === "selecting") mouse("pointermove", spot);
      else {
        const moved = {
          x: finger.only === "y" ? 0 : spot.x - finger.last.x,
          y: finger.only === "x" ? 0 : spot.y - finger.last.y,
        };
        const time = Math.max(1, event.timeStamp - finger.lastAt);
        finger.speed = { x: moved.x / time, y: moved.y / time };
        scroll(moved);
      }
      finger.last = spot;
      finger.lastAt = event.timeStamp;
    },
    { passive: false },
  );

  canvas.addEventListener(
    "touchend",
    (event) => {
      if (!finger) return;
      // Otherwise the browser makes a mouse's click of it, which takes the keyboard from the sheet.
      if (event.cancelable) event.preventDefault();
      const { is, start, speed, lastAt } = finger;
      letGo();
      if (is === "resting") tap(start);
      // A finger that stopped before it left wants no sliding.
      if (is === "scrolling" && event.timeStamp - lastAt < 50) slideOn(speed, performance.now());
    },
    { passive: false },
  );
  canvas.addEventListener("touchcancel", letGo);

  for (const type of ["pointerdown", "pointermove", "pointerup", "pointercancel", "contextmenu"] as const) {
    container.addEventListener(
      type,
      (event) => {
        // What is made up above is not trusted; what comes from a mouse or a pen is the engine's as ever.
        if (event.target !== canvas || !event.isTrusted) return;
        if ((event as PointerEvent).pointerType === "touch") {
          event.stopPropagation();
          if (type === "contextmenu") event.preventDefault();
        } else if (type === "pointerdown") showKeyboard(container, true);
      },
      { capture: true },
    );
  }
}

/** As near to `place` as the handles at both ends allow; the middle of what is too small for that. */
const within = (place: number, start: number, end: number): number =>
  end - start < 2 * awayFromHandles
    ? (start + end) / 2
    : Math.min(Math.max(place, start + awayFromHandles), end - awayFromHandles);

/** The engine gives the field for its keys the focus with every selection; a keyboard on the screen waits for more. */
function showKeyboard(container: HTMLElement, isWanted: boolean): void {
  for (const field of container.querySelectorAll<HTMLElement>("[data-u-comp=editor]")) {
    if (isWanted === (field.inputMode !== "none")) continue;
    field.inputMode = isWanted ? "" : "none";
    // A field that has the focus already brings no keyboard up.
    if (isWanted && field === document.activeElement) field.blur();
  }
}
