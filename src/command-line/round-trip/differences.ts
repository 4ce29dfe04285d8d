/** What is not as it was in a file that was saved, apart from what was to change. */
import { addressOf } from "../../workbook/addresses";
import type { Cell, Workbook } from "../../workbook/workbook";
import { Archive, type Entry } from "../../xlsx/container/archive";
import type { Edit } from "../../xlsx/patch/edit";
import { type RowPlace, SheetPlaces } from "../../xlsx/patch/sheet-places";

export interface Saved {
  readonly before: Uint8Array;
  readonly after: Uint8Array;
  /** Paths of the sheets' parts that hold an edit, with the edits. */
  readonly edited: ReadonlyMap<string, readonly Edit[]>;
}

/** The parts that follow when a formula comes or goes: they may change, and the last of them go. */
const mayFollow = /^\[Content_Types\]\.xml$|^xl\/_rels\/workbook\.xml\.rels$|(?:^|\/)calcChain\.xml$/i;

/** Entries that have other bytes, another header or another place; nothing for those that may. */
export function differencesOfParts({ before, after, edited }: Saved): string[] {
  const [old, young] = [new Archive(before), new Archive(after)];
  const problems: string[] = [];
  for (const entry of old.entries) {
    const now = young.entry(entry.path);
    if (edited.has(entry.path) || mayFollow.test(entry.path)) continue;
    if (!now) problems.push(`${entry.path} is gone`);
    else if (!same(rawOf(old, entry), rawOf(young, now))) problems.push(`${entry.path} has other bytes`);
  }
  const order = (archive: Archive) =>
    [...archive.entries].sort((one, other) => one.localAt - other.localAt).map(({ path }) => path);
  const kept = order(old).filter((path) => young.entry(path));
  if (order(young).join("\n") !== kept.join("\n")) problems.push("the parts stand in another order, or some came");
  return problems;
}

/** The header and the compressed bytes. */
const rawOf = ({ bytes }: Archive, { localAt, dataAt, packedSize }: Entry): Uint8Array =>
  bytes.subarray(localAt, dataAt + packedSize);

const same = (one: Uint8Array, other: Uint8Array): boolean =>
  one.length === other.length && one.every((byte, index) => byte === other[index]);

/** What of the text of the edited sheets moved besides the edited cells, new rows and the sheet's dimension. */
export function differencesOfText({ before, after, edited }: Saved): string[] {
  return [...edited].flatMap(([path, edits]) => {
    const [old, young] = [sheetIn(before, path), sheetIn(after, path)];
    const beside = (places: SheetPlaces) =>
      places.children
        .filter(({ name }) => name !== "sheetData" && name !== "dimension")
        .map(({ start, end }) => places.text.slice(start, end))
        .join("\n");
    const problems = beside(old) === beside(young) ? [] : [`${path}: something beside its cells has moved`];
    const isEdited = new Set(edits.map(({ row, column }) => `${row},${column}`));
    for (const row of young.rows) {
      const was = old.rowAt(row.row);
      const cells = textsOf(young, row);
      const had = was ? textsOf(old, was) : new Map<number, string>();
      if (was && openingOf(old, was) !== openingOf(young, row)) problems.push(`${path}: row ${row.row + 1} is another`);
      for (const column of new Set([...cells.keys(), ...had.keys()])) {
        const isSame = cells.get(column) === had.get(column);
        if (!isSame && !isEdited.has(`${row.row},${column}`))
          problems.push(`${path}: ${addressOf(row.row, column)} is another`);
      }
    }
    for (const row of old.rows) if (!young.rowAt(row.row)) problems.push(`${path}: row ${row.row + 1} is gone`);
    return problems;
  });
}

const sheetIn = (bytes: Uint8Array, path: string): SheetPlaces => {
  const archive = new Archive(bytes);
  const entry = archive.entry(path);
  return new SheetPlaces(entry ? new TextDecoder().decode(archive.content(entry)) : "<worksheet/>");
};

/** An empty row opens when it gets its first cell. */
const openingOf = ({ text }: SheetPlaces, { start, inside }: RowPlace): string =>
  text.slice(start, inside).replace(/\s*\/?>$/, "");

const textsOf = (places: SheetPlaces, row: RowPlace): Map<number, string> =>
  new Map(places.cellsIn(row).map(({ column, start, end }) => [column, places.text.slice(start, end)]));

/** What our reader finds otherwise: every cell but the edited ones, which hold what was written. */
export function differencesOfCells(before: Workbook, after: Workbook, edits: readonly Edit[]): string[] {
  const problems: string[] = [];
  before.sheets.forEach((sheet, index) => {
    const [had, has] = [byPlace(sheet.cells), byPlace(after.sheets[index]?.cells ?? [])];
    const wanted = new Map(
      edits.flatMap((edit) => (edit.sheet === sheet.name ? [[placeOf(edit), edit] as const] : [])),
    );
    for (const place of new Set([...had.keys(), ...has.keys(), ...wanted.keys()])) {
      const [was, is, edit] = [had.get(place), has.get(place), wanted.get(place)];
      const isRight = edit ? holds(is, edit, was) : JSON.stringify(was) === JSON.stringify(is);
      if (!isRight) problems.push(`${sheet.name}!${place}: ${JSON.stringify(was)} became ${JSON.stringify(is)}`);
    }
  });
  return problems;
}

const placeOf = ({ row, column }: { row: number; column: number }): string => addressOf(row, column);
const byPlace = (cells: readonly Cell[]): Map<string, Cell> => new Map(cells.map((cell) => [placeOf(cell), cell]));

function holds(cell: Cell | undefined, { content }: Edit, before: Cell | undefined): boolean {
  if (before && JSON.stringify(cell?.style) !== JSON.stringify(before.style)) return false;
  if (content?.is === "constant") return cell?.value === content.value && cell.formula === undefined;
  return content?.is === "formula" && cell?.formula === content.formula && cell.value === content.value;
}
