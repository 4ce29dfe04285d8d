/** The rooms and their arrows as a picture: each row imports from the rows below it only. */
import { escaped } from "./blocks";
import { type Room, roomsImportedBy } from "./rooms";

const box = { width: 132, height: 46 };
/** The room that an arrow has on its way through a row. */
const passage = 18;
const gap = 22;
const rowHeight = 104;
const edge = 24;
const heading = 58;

/** From each room to those that it imports from. */
type Arrows = ReadonlyMap<string, readonly string[]>;

/** What stands in a row: a room, or an arrow that passes by; it leads to others in the row below. */
interface Item {
  readonly room?: Room;
  readonly row: number;
  readonly below: Item[];
  x: number;
}

export function roomsPicture(rooms: readonly Room[]): string {
  const rows = placed(itemsOf(rooms));
  const height = heading + (rows.length - 1) * rowHeight + box.height + edge;
  const width = 2 * edge + Math.max(...rows.map(rowWidth));
  const top = ({ row }: Item): number => heading + (rows.length - 1 - row) * rowHeight;
  const items = rows.flat();
  const lines = items.flatMap((item) => item.below.map((next) => line(item, next, top)));
  const boxes = items.flatMap((item) => (item.room ? [drawnRoom(item.room, item.x, top(item))] : []));
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${-width / 2} 0 ${width} ${height}" width="${width}" height="${height}" role="img" font-family="sans-serif">
<title>The rooms of src and what imports what</title>
<desc>Written by npm run generate from the imports.</desc>
<defs><marker id="tip" viewBox="0 0 8 8" refX="7" refY="4" markerWidth="7" markerHeight="7" orient="auto"><path d="M0 0 L8 4 L0 8 z" fill="#5b6b62"/></marker></defs>
<rect x="${-width / 2}" width="${width}" height="${height}" fill="#ffffff"/>
<text y="26" text-anchor="middle" font-size="13" fill="#24312a">An arrow leads to what is imported. Where the way leads by other rooms, it is not drawn again.</text>
${[...lines, ...boxes].join("\n")}
</svg>
`;
}

function itemsOf(rooms: readonly Room[]): Item[] {
  const arrows: Arrows = new Map(
    rooms.map(({ name, files }) => [name, [...new Set(files.flatMap((file) => roomsImportedBy(file, rooms)))].sort()]),
  );
  const inRooms = new Map<string, Item>(
    rooms.map((room) => [room.name, { room, row: rowOf(room.name, arrows), below: [], x: 0 }]),
  );
  const items = [...inRooms.values()];
  for (const [name, item] of inRooms) {
    for (const target of drawnFrom(name, arrows).map((other) => inRooms.get(other) as Item)) {
      let from = item;
      for (let row = item.row - 1; row > target.row; row -= 1) {
        const passing: Item = { row, below: [], x: 0 };
        from.below.push(passing);
        items.push(passing);
        from = passing;
      }
      from.below.push(target);
    }
  }
  return items;
}

/** How many steps lead down from a room at most: whatever it imports stands further down. */
function rowOf(name: string, arrows: Arrows, way: readonly string[] = []): number {
  if (way.includes(name)) throw new Error(`Rooms import in a circle: ${[...way, name].join(" → ")}`);
  return Math.max(-1, ...(arrows.get(name) ?? []).map((next) => rowOf(next, arrows, [...way, name]))) + 1;
}

/** What is drawn from a room: what it imports and no other of its imports leads to. */
function drawnFrom(name: string, arrows: Arrows): string[] {
  const direct = arrows.get(name) ?? [];
  const leadsTo = (from: string, to: string): boolean =>
    (arrows.get(from) ?? []).some((next) => next === to || leadsTo(next, to));
  return direct.filter((target) => !direct.some((other) => other !== target && leadsTo(other, target)));
}

/** The rows from the bottom, each in an order that lets few arrows cross: near the middle of what an item leads to. */
function placed(items: readonly Item[]): Item[][] {
  const rows: Item[][] = [];
  for (const item of items) rows[item.row] = [...(rows[item.row] ?? []), item];
  const above = (item: Item): Item[] => items.filter(({ below }) => below.includes(item));
  for (const row of rows) spread(row);
  for (let sweep = 0; sweep < 8; sweep += 1) {
    const goesUp = sweep % 2 === 1;
    for (const row of goesUp ? rows : [...rows].reverse()) {
      const middles = new Map(row.map((item) => [item, middleOf(goesUp ? item.below : above(item)) ?? item.x]));
      row.sort((one, other) => (middles.get(one) ?? 0) - (middles.get(other) ?? 0));
      spread(row);
    }
  }
  return rows;
}

const middleOf = (items: readonly Item[]): number | undefined =>
  items.length === 0 ? undefined : items.reduce((sum, { x }) => sum + x, 0) / items.length;

const widthOf = ({ room }: Item): number => (room ? box.width : passage);
const rowWidth = (row: readonly Item[]): number => row.reduce((sum, item) => sum + widthOf(item) + gap, -gap);

/** Side by side around the middle of the picture. */
function spread(row: readonly Item[]): void {
  let left = -rowWidth(row) / 2;
  for (const item of row) {
    item.x = left + widthOf(item) / 2;
    left += widthOf(item) + gap;
  }
}

/** From one row to the next, and straight past the boxes of a row that it only passes. */
function line(from: Item, to: Item, top: (item: Item) => number): string {
  const [start, end] = [top(from) + box.height, top(to) - (to.room ? 2 : 0)];
  const bend = (end - start) / 2;
  const passing = to.room ? "" : ` V${end + box.height}`;
  const tip = to.room ? ' marker-end="url(#tip)"' : "";
  return `<path d="M${from.x} ${start} C${from.x} ${start + bend} ${to.x} ${end - bend} ${to.x} ${end}${passing}" fill="none" stroke="#5b6b62" stroke-width="1.2"${tip}/>`;
}

function drawnRoom({ name, mayName }: Room, x: number, top: number): string {
  const kinds = [mayName.page ? "a page" : "", mayName.node ? "Node" : "", mayName.worker ? "a worker" : ""];
  const named = kinds.filter((kind) => kind !== "").join(" and ");
  return [
    `<rect x="${x - box.width / 2}" y="${top}" width="${box.width}" height="${box.height}" rx="6" fill="${named === "" ? "#e8f1ea" : "#f4f1e6"}" stroke="#5b6b62"/>`,
    `<text x="${x}" y="${top + 20}" text-anchor="middle" font-size="13" font-weight="bold" fill="#24312a">${escaped(name)}</text>`,
    `<text x="${x}" y="${top + 36}" text-anchor="middle" font-size="11" fill="#5b6b62">${named === "" ? "plain language" : `names ${named}`}</text>`,
  ].join("");
}
