/** What stands on farms' sheets besides the books, and is no slip. */
import type { SeededNumbers } from "../../../src/sample-books/season/seeded-numbers";
import { placeOf } from "../../../src/workbook/addresses";
import { type Content, type FarmSheet, keyOf, oneOf } from "./farm-sheet";

const nothingRead = ["–", "n/a", "see note", "forgot", "未记"];

const below: readonly (readonly Content["content"][])[] = [
  ["Bags in store", 14],
  ["Price per kg", 48.5],
  ["Gas bottle, kg", 11],
  ["Next picking when the upper rows have four leaves, not before the weekend of the fair"],
  ["Phone of the carrier", "0171 555 0100"],
  ["Firewood, baskets", 6],
];

const beside: readonly (readonly Content["content"][])[] = [
  ["Scale", "Reads to, g", "Bought"],
  ["kitchen", 0.1, 2019],
  ["platform", 50, 2022],
  ["letter", 0.01, 2016],
];

/** The sheet with a reading that nobody took, notes below it, and a list of scales beside it. */
export function withOddities(sheet: FarmSheet, random: SeededNumbers): FarmSheet {
  const cells = new Map(sheet.cells);
  const places = [...cells.keys()].map(placeOf);
  const bottom = Math.max(...places.map(({ row }) => row));
  const right = Math.max(...places.map(({ column }) => column));
  const isRead = (address: string) =>
    [...cells.values()].some(
      ({ content }) => typeof content === "string" && content.startsWith("=") && content.includes(address),
    );
  const unread = oneOf(
    random,
    sheet.places.filter(({ row, column, holds }) => /moisture|aired|span/.test(holds) && !isRead(keyOf(row, column))),
  );
  if (unread) cells.set(keyOf(unread.row, unread.column), { content: oneOf(random, nothingRead) ?? "–" });
  const put = (lines: typeof below, top: number, left: number) => {
    for (const [down, line] of lines.entries()) {
      for (const [across, content] of line.entries()) cells.set(keyOf(top + down, left + across), { content });
    }
  };
  // An answer that spills needs the room below it.
  const spills = [...cells.values()].some(({ content }) => /TURNTIMES/.test(String(content)));
  put(below, bottom + (spills ? 12 : 3), 0);
  put(beside, 1, right + 3);
  return { ...sheet, layout: `${sheet.layout}, with oddities`, cells };
}
