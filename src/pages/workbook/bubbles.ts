/**
 * What cells have to say, over the sheet: beside the cell where a place is free that covers neither it nor what is
 * typed into next, and else along an edge of the sheet. Bubbles scroll with their cells and let clicks through.
 */
import "./bubbles.css";
import { addressOf } from "../../workbook/addresses";
import { atEdge, type Box, besideCell, boxesOf, type Side, type Size } from "./bubble-place";
import type { SheetView } from "./sheet-view";
import { words } from "./words";

/** What a cell has to say: why it shows an error, or the note that came with the workbook. */
export interface CellMessage {
  readonly text: string;
  readonly isError: boolean;
}

interface Place {
  readonly row: number;
  readonly column: number;
}

type SpeakingCell = Place & { readonly message: CellMessage };

/** What there is to say about cells of the open sheet. */
interface Telling {
  /** The selected cell. It and those that come after it stay free. */
  readonly selected: Place | undefined;
  /** What must be seen: where there is no room beside the cell, at an edge. */
  readonly said: SpeakingCell | undefined;
  /** Said at an edge of the sheet, for want of room above it. */
  readonly docked: readonly CellMessage[];
}

interface Bubbles {
  tell(telling: Telling): void;
  /** The cell under the pointer. */
  hover(cell: SpeakingCell | undefined): void;
}

/** Two rows. */
const leastHeight = 56;

export function showBubbles(view: SheetView): Bubbles {
  const layer = document.createElement("div");
  layer.className = "bubbles";
  // The line says the same, and a screen reader is told on its own.
  layer.setAttribute("aria-hidden", "true");
  view.canvas.after(layer);
  const parts = { said: part(layer, "bubble"), hovered: part(layer, "bubble"), docked: part(layer, "bubble docked") };
  let telling: Telling = { selected: undefined, said: undefined, docked: [] };
  let hovered: SpeakingCell | undefined;
  /** Where each bubble stood: it stays on its side while it can. */
  let before: { key: string; side: Side } | undefined;

  const clearBoxes = (): Box[] =>
    [telling.selected, telling.said].flatMap((place) => {
      const boxes = place && view.cell(place.row, place.column);
      return boxes ? boxesOf(boxes) : [];
    });

  const sidesFor = (cell: SpeakingCell): readonly Side[] => {
    const isAcross = telling.selected !== undefined && telling.selected.column > cell.column;
    const first: readonly Side[] = isAcross ? ["above", "below", "right"] : ["right", "above", "below"];
    const kept = before?.key === keyOf(cell) ? [before.side] : [];
    return [...kept, ...first];
  };

  /** Gives the place that it found. */
  const lay = (bubble: Part, speaking: SpeakingCell | undefined, clear: readonly Box[]): Box | undefined => {
    const boxes = speaking && view.cell(speaking.row, speaking.column);
    if (!speaking || !boxes) {
      bubble.hide();
      return undefined;
    }
    const size = bubble.say([speaking.message], boxes.room);
    const spot = besideCell(size, boxes, clear, boxes.room, sidesFor(speaking));
    if (!spot) {
      bubble.hide();
      return undefined;
    }
    if (bubble === parts.said) before = { key: keyOf(speaking), side: spot.side };
    bubble.put(spot);
    return { left: spot.x, top: spot.y, right: spot.x + size.width, bottom: spot.y + size.height };
  };

  const place = () => {
    const clear = clearBoxes();
    const { said, docked } = telling;
    if (!said) before = undefined;
    const isInSight = said !== undefined && view.cell(said.row, said.column) !== undefined;
    const beside = lay(parts.said, said, clear);
    const atTheEdge = [...(said && isInSight && !beside ? [away(said)] : []), ...docked];
    const room = view.room();
    if (atTheEdge.length === 0) parts.docked.hide();
    else {
      const size = parts.docked.say(atTheEdge, room);
      const free = atEdge(size, beside ? [...clear, beside] : clear, room);
      // In little room rather over the other bubble than not to be read.
      parts.docked.put(free.height >= Math.min(size.height, leastHeight) ? free : atEdge(size, clear, room));
    }
    lay(parts.hovered, hovered, clear);
  };

  view.onDraw(place);
  for (const event of ["resize", "scroll"]) window.visualViewport?.addEventListener(event, place);
  return {
    tell: (next) => {
      telling = next;
      place();
    },
    hover: (cell) => {
      hovered = cell;
      place();
    },
  };
}

/** With the address of its cell, which is somewhere else. */
export const away = ({ row, column, message: { text, isError } }: SpeakingCell): CellMessage => ({
  text: addressOf(row, column) + words().colon + text,
  isError,
});

const keyOf = ({ row, column, message }: SpeakingCell): string => `${row},${column} ${message.text}`;

interface Part {
  /** Gives the size that the words take in the room; not yet in sight. */
  say(messages: readonly CellMessage[], room: Box): Size;
  put(place: { x: number; y: number; height?: number }): void;
  hide(): void;
}

/** Frames are many: only what changes is written and measured. */
function part(layer: HTMLElement, className: string): Part {
  const element = document.createElement("div");
  element.className = className;
  element.hidden = true;
  layer.append(element);
  let [said, placed] = ["", ""];
  let size: Size = { width: 0, height: 0 };
  return {
    say: (messages, { left, right }) => {
      const widest = Math.floor(right - left) - 12;
      const words = JSON.stringify([widest, messages]);
      if (words === said) return size;
      said = words;
      element.replaceChildren(
        ...messages.map(({ text }) => Object.assign(document.createElement("p"), { textContent: text })),
      );
      element.classList.toggle(
        "has-error",
        messages.some(({ isError }) => isError),
      );
      element.style.setProperty("--widest", `${widest}px`);
      Object.assign(element.style, { height: "", transform: "" });
      placed = "";
      element.hidden = false;
      size = { width: element.offsetWidth, height: element.offsetHeight };
      return size;
    },
    put: ({ x, y, height }) => {
      const next = `${Math.round(x)},${Math.round(y)},${height}`;
      if (next === placed && !element.hidden) return;
      placed = next;
      element.hidden = false;
      element.style.transform = `translate(${Math.round(x)}px, ${Math.round(y)}px)`;
      element.style.height = height === undefined ? "" : `${Math.ceil(height)}px`;
      element.classList.toggle("scrolls", height !== undefined && height < size.height);
    },
    hide: () => {
      element.hidden = true;
    },
  };
}
