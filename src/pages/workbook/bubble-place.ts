/** Where a message about a cell may stand: over neither the cell nor those that are typed into next. */

/** In pixels from the upper left corner of the sheet's picture. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A cell, and the two that come after it: with Tab, and with Enter. */
export interface CellBoxes {
  readonly cell: Box;
  readonly right: Box | undefined;
  readonly below: Box | undefined;
}

/** Which of a cell's sides a bubble stands on. */
export type Side = "right" | "above" | "below";

/** Between a bubble and what it keeps clear of. */
const gap = 6;

/**
 * Beside a cell, with nothing of `clear` under it and nothing of it outside of `room`; undefined where there is no such
 * place. The sides are tried in their order.
 */
export function besideCell(
  { width, height }: Size,
  { cell, right, below }: CellBoxes,
  clear: readonly Box[],
  room: Box,
  sides: readonly Side[],
): (Spot & { readonly side: Side }) | undefined {
  const all = [...clear, ...boxesOf({ cell, right, below })];
  const across = between(cell.left, room.left, room.right - width);
  const down = between(cell.top, room.top, room.bottom - height);
  const spots: Readonly<Record<Side, Spot>> = {
    right: { x: (right ?? cell).right + gap, y: down },
    above: { x: across, y: cell.top - gap - height },
    below: { x: across, y: (below ?? cell).bottom + gap },
  };
  for (const side of sides) {
    const { x, y } = spots[side];
    const box = { left: x, top: y, right: x + width, bottom: y + height };
    if (isWithin(box, room) && !all.some((each) => overlap(box, each))) return { x, y, side };
  }
  return undefined;
}

/**
 * Along the lower or the upper edge of the room, wherever nothing of `clear` lies, with the height that is left there:
 * what is higher is scrolled. In a wide room, on the other side than what is kept clear.
 */
export function atEdge({ width, height }: Size, clear: readonly Box[], room: Box): Spot & { readonly height: number } {
  const inRoom = clear.filter((each) => overlap(each, room));
  const above = Math.min(room.bottom, ...inRoom.map(({ top }) => top)) - room.top - 2 * gap;
  const below = room.bottom - Math.max(room.top, ...inRoom.map(({ bottom }) => bottom)) - 2 * gap;
  const isBelow = below >= height || below >= above;
  const fitting = Math.max(0, Math.min(height, isBelow ? below : above));
  const isLeft = Math.min(...inRoom.map(({ left }) => left)) > (room.left + room.right) / 2;
  return {
    x: isLeft ? room.left + gap : Math.max(room.left + gap, room.right - gap - width),
    y: isBelow ? room.bottom - gap - fitting : room.top + gap,
    height: fitting,
  };
}

export const boxesOf = ({ cell, right, below }: CellBoxes): Box[] =>
  [cell, right, below].filter((each) => each !== undefined);

export const overlap = (one: Box, other: Box): boolean =>
  one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;

const isWithin = (inner: Box, outer: Box): boolean =>
  inner.left >= outer.left && inner.right <= outer.right && inner.top >= outer.top && inner.bottom <= outer.bottom;

const between = (value: number, least: number, most: number): number => Math.max(least, Math.min(value, most));

export const common = (one: Box, other: Box): Box => ({
  left: Math.max(one.left, other.left),
  top: Math.max(one.top, other.top),
  right: Math.min(one.right, other.right),
  bottom: Math.min(one.bottom, other.bottom),
});
