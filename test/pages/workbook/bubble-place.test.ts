import fc from "fast-check";
import { expect, test } from "vitest";
import { atEdge, type Box, besideCell, overlap, type Side } from "../../../src/pages/workbook/bubble-place";

const room: Box = { left: 46, top: 20, right: 380, bottom: 600 };
const box = (left: number, top: number, width: number, height: number): Box => ({
  left,
  top,
  right: left + width,
  bottom: top + height,
});
/** A cell with those at its right and below. */
const at = (left: number, top: number, width = 80, height = 24) => ({
  cell: box(left, top, width, height),
  right: box(left + width, top, width, height),
  below: box(left, top + height, width, height),
});
const down: readonly Side[] = ["right", "above", "below"];

test("a bubble stands beyond the next column, where there is room", () => {
  const wide = { ...room, right: 1200 };
  expect(besideCell({ width: 340, height: 60 }, at(200, 200), [], wide, down)).toEqual({
    side: "right",
    x: 366,
    y: 200,
  });
});

test("on a narrow screen it stands above the cell, and in the first rows below the next", () => {
  expect(besideCell({ width: 320, height: 60 }, at(200, 200), [], room, down)).toEqual({
    side: "above",
    x: 60,
    y: 134,
  });
  expect(besideCell({ width: 320, height: 60 }, at(200, 30), [], room, down)).toEqual({ side: "below", x: 60, y: 84 });
});

test("where no place is free there is none", () => {
  const low = { ...room, bottom: 110 };
  expect(besideCell({ width: 320, height: 60 }, at(200, 50), [], low, down)).toBeUndefined();
});

test("wherever it stands, it covers neither the cell nor the next ones nor what is kept clear, and is in the room", () => {
  const place = fc.record({ left: fc.integer({ min: 0, max: 400 }), top: fc.integer({ min: 0, max: 620 }) });
  const size = fc.record({ width: fc.integer({ min: 40, max: 340 }), height: fc.integer({ min: 20, max: 200 }) });
  let found = 0;
  fc.assert(
    fc.property(place, place, size, ({ left, top }, other, size) => {
      const cells = at(left, top);
      const { cell, right, below } = at(other.left, other.top);
      const clear = [cell, right, below];
      const spot = besideCell(size, cells, clear, room, down);
      if (!spot) return;
      found += 1;
      const bubble = box(spot.x, spot.y, size.width, size.height);
      for (const each of [cells.cell, cells.right, cells.below, ...clear]) expect(overlap(bubble, each)).toBe(false);
      expect(bubble.left >= room.left && bubble.right <= room.right).toBe(true);
      expect(bubble.top >= room.top && bubble.bottom <= room.bottom).toBe(true);
    }),
  );
  expect(found).toBeGreaterThan(10);
});

test("at an edge of the sheet it covers nothing that is kept clear, however little height that leaves", () => {
  fc.assert(
    fc.property(fc.integer({ min: 20, max: 550 }), fc.integer({ min: 20, max: 900 }), (top, height) => {
      const { cell, right, below } = at(200, top);
      const spot = atEdge({ width: 320, height }, [cell, right, below], room);
      const bubble = box(spot.x, spot.y, 320, spot.height);
      for (const each of [cell, right, below]) expect(overlap(bubble, each)).toBe(false);
      expect(spot.height).toBeLessThanOrEqual(height);
      // At the better one of the two edges.
      expect(spot.height).toBeGreaterThanOrEqual(Math.min(height, (room.bottom - room.top - 48) / 2 - 12));
    }),
  );
});

test("in a wide room it leaves the side of the selected cell free", () => {
  const wide = { ...room, right: 1200 };
  expect(atEdge({ width: 600, height: 60 }, [box(200, 200, 80, 24)], wide)).toEqual({ x: 594, y: 534, height: 60 });
  expect(atEdge({ width: 600, height: 60 }, [box(900, 200, 80, 24)], wide)).toEqual({ x: 52, y: 534, height: 60 });
});
