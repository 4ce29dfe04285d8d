/** Plants slips on sheets, has the engine calculate them, and counts what the check finds, misses and makes up. */
import { catalogue } from "../../../src/core/catalogue";
import { openInNode } from "../../../src/engine/node-workbook";
import type { CellContent, ReadArea } from "../../../src/host/workbook-host";
import { seededNumbers } from "../../../src/sample-books/season/seeded-numbers";
import type { Finding } from "../../../src/sheet-check/finding";
import { findingsOf } from "../../../src/sheet-check/findings-of";
import { cellsIn, rangesIn } from "../../../src/sheet-check/formula-forms";
import { addressOf, areaOf, placeOf } from "../../../src/workbook/addresses";
import type { Area, Cell, Workbook } from "../../../src/workbook/workbook";
import { type FarmSheet, keyOf, type Place } from "./farm-sheet";
import { type Layout, layouts } from "./layouts";
import { withOddities } from "./oddities";
import { type Slip, slips } from "./slips";

export interface Count {
  readonly slip: string;
  readonly planted: number;
  /** A question stands on the cell itself, or on one of its lot. */
  readonly found: number;
  readonly missed: number;
  /** Questions about sound cells that no slip explains. */
  readonly alarms: number;
  /** Flags of an outturn elsewhere that come with the slip: a book whose lots have changed is judged anew. */
  readonly flags: number;
}

export interface Counts {
  readonly sound: { readonly sheets: number; readonly alarms: readonly string[] };
  readonly slips: readonly Count[];
  /** Slip and sheet of each that was found, and of each that was missed. */
  readonly found: readonly string[];
  readonly missed: readonly string[];
  /** What was missed and made up, to look into: layout, seed, slip and cells. */
  readonly notes: readonly string[];
}

interface Case {
  readonly sheet: FarmSheet;
  readonly seed: number;
  readonly slip?: Slip;
  readonly changed: readonly Place[];
  /** Another cell that is wrong as well. */
  readonly text?: Place;
}

/** Sheets that one workbook holds at once: the engine looks through all of them for each formula. */
const together = 60;

/** With `besideText`, a weight of another lot is a text as well: one wrong text must not hide other slips. */
export async function count(seeds: readonly number[], besideText = false): Promise<Counts> {
  const cases = seeds
    .flatMap((seed) => layouts.flatMap((layout, place) => casesOf(layout, seed, place)))
    .flatMap((each) => (besideText ? withText(each) : each));
  const looked: (readonly [Case, readonly Finding[]])[] = [];
  for (let first = 0; first < cases.length; first += together) {
    const part = cases.slice(first, first + together);
    const found = await findingsIn(part.map(({ sheet }) => sheet));
    for (const [index, each] of part.entries()) looked.push([each, found[index] ?? []]);
  }
  return tally(looked);
}

/** A sound sheet, and with each slip the same sheet once more. */
function casesOf(layout: Layout, seed: number, place: number): Case[] {
  const sound = layout(numbersFrom(seed, place, 0));
  const planted = slips.flatMap((slip, index): Case[] => {
    const planted = slip.plant(sound, numbersFrom(seed, place, index + 1));
    return planted === undefined ? [] : [{ ...planted, seed, slip }];
  });
  const odd = withOddities(sound, numbersFrom(seed, place, slips.length + 1));
  return [{ sheet: sound, seed, changed: [] }, { sheet: odd, seed, changed: [] }, ...planted];
}

/** The same with a text in place of the last weight of another lot; nothing where there is no other. */
function withText(planted: Case): Case[] {
  const { sheet, changed, slip } = planted;
  if (slip === undefined) return [planted];
  const lots = new Set(changed.map(({ lot }) => lot));
  const text = sheet.places.findLast(
    ({ holds, lot }) => (holds === "fresh" || holds === "stage weight") && !lots.has(lot),
  );
  if (text === undefined) return [];
  const cells = new Map(sheet.cells);
  const key = keyOf(text.row, text.column);
  cells.set(key, { ...cells.get(key), content: `${cells.get(key)?.content} g` });
  return [{ ...planted, sheet: { ...sheet, cells }, text }];
}

/** Small seeds begin alike: the first numbers are let go by. */
function numbersFrom(seed: number, layout: number, slip: number) {
  const random = seededNumbers(1 + seed * 7919 + layout * 104_729 + slip * 611_953);
  for (let count = 0; count < 10; count += 1) random.next();
  return random;
}

async function findingsIn(sheets: readonly FarmSheet[]): Promise<Finding[][]> {
  const workbook: Workbook = {
    name: "Otter Bend",
    sheets: sheets.map(({ cells }, index) => ({
      ...{ name: `Sheet${index}`, columnWidths: {}, rowHeights: {}, merges: [] },
      cells: [...cells].map(([address, { content, format }]): Cell => {
        const isFormula = typeof content === "string" && content.startsWith("=");
        return {
          ...placeOf(address),
          ...(isFormula ? { formula: content, value: "" } : { value: content }),
          ...(format === undefined ? {} : { style: { format } }),
        };
      }),
    })),
  };
  const open = openInNode(workbook);
  await open.calculate();
  const calculated = open.toWorkbook();
  open.close();
  return calculated.sheets.map(({ name, cells }) => {
    const { area, spills } = asRead(name, cells);
    return findingsOf(area, catalogue, spills);
  });
}

/** A sheet as a host would read it, and the spills that a host would tell. */
function asRead(sheet: string, cells: readonly Cell[]): { area: ReadArea; spills: Area[] } {
  const rows = Math.max(0, ...cells.map(({ row }) => row)) + 1;
  const columns = Math.max(0, ...cells.map(({ column }) => column)) + 1;
  const grid = <Content>(blank: Content, of: (cell: Cell) => Content | undefined): Content[][] => {
    const lines = Array.from({ length: rows }, () => new Array<Content>(columns).fill(blank));
    for (const cell of cells) (lines[cell.row] as Content[])[cell.column] = of(cell) ?? blank;
    return lines;
  };
  return {
    area: {
      ...{ sheet, row: 0, column: 0, rows, columns },
      values: grid<CellContent>("", ({ value }) => value),
      formulas: grid("", ({ formula }) => formula),
      formats: grid("General", ({ style }) => style?.format),
    },
    spills: cells.flatMap(({ row, column, spill }) => (spill ? [{ row, column, ...spill }] : [])),
  };
}

function tally(looked: readonly (readonly [Case, readonly Finding[]])[]): Counts {
  const notes: string[] = [];
  const [foundSlips, missedSlips]: [string[], string[]] = [[], []];
  const soundAlarms: string[] = [];
  const known = new Map<string, ReadonlySet<string>>();
  let soundSheets = 0;
  const counts = new Map(
    slips.map(({ name }) => [name, { slip: name, planted: 0, found: 0, missed: 0, alarms: 0, flags: 0 }]),
  );
  for (const [{ sheet, seed, slip, changed, text }, findings] of looked) {
    const where = `${sheet.layout}, seed ${seed}`;
    if (slip === undefined) {
      soundSheets += 1;
      known.set(where, new Set(findings.map(lineOf)));
      soundAlarms.push(...findings.filter((each) => !isTrue(sheet, each)).map((each) => `${where}: ${lineOf(each)}`));
      continue;
    }
    const count = counts.get(slip.name);
    if (count === undefined) continue;
    const before = known.get(where) ?? new Set();
    const lots = new Set(changed.map(({ lot }) => lot));
    const isOfLot = ({ row, column }: Finding) =>
      changed.some((each) => each.row === row && each.column === column) ||
      sheet.places.some((each) => each.row === row && each.column === column && lots.has(each.lot));
    const isAnswer = (each: Finding) => slip.rules.includes(each.rule) && isOfLot(each);
    const isFound = findings.some(isAnswer);
    const follows = dependentsOf(sheet, text === undefined ? changed : [...changed, text]);
    const others = findings.filter(
      (each) =>
        !isAnswer(each) &&
        !before.has(lineOf(each)) &&
        !(each.rule === "a TEA function with an error" && follows.has(keyOf(each.row, each.column))),
    );
    // Another question about the very cell or lot is about the slip all the same, if not the best one.
    const alarms = others.filter((each) => !isOfLot(each) && !isAt(each, text));
    count.planted += 1;
    if (isFound) count.found += 1;
    else count.missed += 1;
    (isFound ? foundSlips : missedSlips).push(`${slip.name}: ${where}`);
    const flags = alarms.filter(({ rule }) => rule === "outturn far from the others").length;
    count.flags += flags;
    count.alarms += alarms.length - flags;
    const at = changed.map(({ row, column }) => keyOf(row, column)).join(" ");
    if (!isFound) notes.push(`missed: ${slip.name}: ${where}: ${at} [${findings.map(lineOf).join("; ")}]`);
    for (const each of alarms) notes.push(`alarm: ${slip.name} at ${at}: ${where}: ${lineOf(each)}`);
  }
  return {
    sound: { sheets: soundSheets, alarms: soundAlarms },
    slips: [...counts.values()],
    found: foundSlips,
    missed: missedSlips,
    notes,
  };
}

const isAt = ({ row, column }: Finding, place: Place | undefined): boolean =>
  place?.row === row && place.column === column;

const lineOf = ({ rule, row, column }: Finding): string => `${rule}: ${addressOf(row, column)}`;

/** A finished weight that really is still to come. */
const isTrue = ({ cells }: FarmSheet, { rule, row, column }: Finding): boolean =>
  rule === "waits for a weight" && !cells.has(keyOf(row, column));

/** The formulas that calculate from these cells, one after the other. */
function dependentsOf({ cells }: FarmSheet, changed: readonly Place[]): Set<string> {
  const reached = new Set(changed.map(({ row, column }) => keyOf(row, column)));
  for (let size = -1; size !== reached.size; ) {
    size = reached.size;
    for (const [address, { content }] of cells) {
      if (typeof content !== "string" || !content.startsWith("=")) continue;
      const ranges = rangesIn(content).map((range) => areaOf(range.replaceAll("$", "")));
      const single = cellsIn(content).map((at) => ({ ...at, rows: 1, columns: 1 }));
      const reads = [...ranges, ...single].some((area) =>
        [...reached]
          .map(placeOf)
          .some(
            ({ row, column }) =>
              row >= area.row &&
              row < area.row + area.rows &&
              column >= area.column &&
              column < area.column + area.columns,
          ),
      );
      if (reads) reached.add(address);
    }
  }
  return reached;
}
