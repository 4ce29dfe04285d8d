import type { CellContent, ReadArea } from "../host/workbook-host";
import { areaOf } from "../workbook/addresses";
import { isWords, standsForNumber } from "./meant-as-number";
import { type RoleOf, roleOfHeading } from "./roles";
import { isUnitAlone } from "./units";

/** What a row is to the headings above it; most are none of these. */
type RowKind =
  /** Sums up the rows above: its numbers are no lot and no weighing. */
  | "summary"
  /** Something else begins here: the headings above end. */
  | "beginning"
  /** Words for the columns below. */
  | "headings";

const summaryWords =
  /^\s*(Σ|(grand |sub)?totals?|sums?|means?|averages?|avg|medians?|min|max|minimum|maximum|lowest|highest|counts?|days? (worked|of|in|plucked)|working days|days)\b|^\s*(合计|总计|小计|共计|总共|平均|中位|最大|最小|天数|工作日|采摘天数)/iu;
/** A season with its year, and nothing else. */
const seasonAlone =
  /^\s*((whole |the )?(spring|summer|autumn|fall|winter|season|year)\s*[/\d-]*|\d{4}\s*(spring|summer|autumn|fall|winter|season)|(\d{4}\s*年?\s*)?[春夏秋冬]季?茶?(\s*\d{4}\s*年?)?|全年|全季)\s*$/i;
const sumsUp = /^=\s*(SUM|SUBTOTAL|AGGREGATE|AVERAGE|MEDIAN|COUNTA?|MIN|MAX)\(/i;

/**
 * The rows of a sheet that do not belong to the book above them: totals and what is written below the one total of a
 * book, a row that begins with the word of a summary, and what follows a blank row without looking like the rows
 * before it.
 */
export function rowKinds(area: ReadArea, roleOf: RoleOf = roleOfHeading): (RowKind | undefined)[] {
  const kinds: (RowKind | undefined)[] = area.values.map(() => undefined);
  const books: { readonly totals: number[]; last: number }[] = [];
  let names = new Set<string>();
  let afterBlank = false;
  area.values.forEach((row, index) => {
    const first = row.find((value) => value !== "");
    if (first === undefined) {
      afterBlank = true;
      return;
    }
    const hasNumber = row.some(standsForNumber);
    const hasHeadings = isHeadings(row) && !isRowOfTexts(row, names, roleOf);
    const goesOn = hasNumber ? names.size === 0 || names.has(looks(first)) : isTitleWithin(area.values, index, names);
    const begins = afterBlank && !goesOn;
    afterBlank = false;
    if (begins || hasHeadings || books.length === 0) {
      names = new Set();
      books.push({ totals: [], last: index });
      if (begins) kinds[index] = "beginning";
      if (hasHeadings) kinds[index] = begins ? "beginning" : "headings";
      if (begins || hasHeadings) return;
    }
    const book = books.at(-1);
    if (book !== undefined) book.last = index;
    const isTotal = row.some((_, right) => isTotalAt(area, index, right));
    if (isTotal) book?.totals.push(index);
    if (isTotal || (typeof first === "string" && isSummary(first))) {
      kinds[index] = "summary";
    } else if (hasNumber) names.add(looks(first));
  });
  for (const { totals, last } of books) {
    const [top, bottom] = [totals[0] ?? last, totals.at(-1) ?? last];
    // Subtotals stand among the rows; one total, or a few below each other, stand below them all.
    if (bottom - top !== totals.length - 1) continue;
    for (let index = bottom + 1; index <= last; index += 1) kinds[index] ??= "summary";
  }
  return kinds;
}

/** Whether a word says that numbers sum up others. */
export const isSummary = (word: string): boolean => summaryWords.test(word) || seasonAlone.test(word);

/** A word alone, such as a day, above a row that looks like those before. */
function isTitleWithin(rows: ReadArea["values"], index: number, names: ReadonlySet<string>): boolean {
  const filled = (rows[index] ?? []).filter((value) => value !== "");
  const next = rows[index + 1] ?? [];
  return (
    filled.length === 1 && next.some(standsForNumber) && names.has(looks(next.find((value) => value !== "") ?? ""))
  );
}

/** Two words or more, and no number; a label and the unit of what is still to be filled in are none. */
export function isHeadings(row: readonly CellContent[]): boolean {
  const words = row.filter(isWords);
  return words.length >= 2 && !row.some(standsForNumber) && words.filter((word) => !isUnitAlone(word)).length !== 1;
}

/** A lot like those above with words where they have numbers, such as “about 350”: not headings of another book. */
const isRowOfTexts = (row: readonly CellContent[], names: ReadonlySet<string>, roleOf: RoleOf): boolean =>
  names.has(looks(row.find((value) => value !== "") ?? "")) &&
  !row.some((value) => isWords(value) && roleOf(value) !== undefined);

/** A name by its kind: `L12` is like `L3`, a word like a word, and a number like a number. */
const looks = (value: CellContent): string =>
  typeof value === "string"
    ? value.replace(/\p{L}+/gu, (letters) => (letters.length === 1 ? "a" : "word")).replace(/\d+/g, "9")
    : typeof value;

/** Whether a cell sums up rows above it in its own column: a running mean of another column is no total. */
function isTotalAt(area: ReadArea, index: number, right: number): boolean {
  const formula = area.formulas[index]?.[right] ?? "";
  if (!sumsUp.test(formula)) return false;
  const ranges = formula.match(/(?<![!\w$])\$?[A-Z]{1,3}\$?[1-9]\d*:\$?[A-Z]{1,3}\$?[1-9]\d*/gi) ?? [];
  const own = area.column + right;
  return ranges
    .map((range) => areaOf(range.replaceAll("$", "")))
    .some(
      ({ row, rows, column, columns }) => column <= own && own < column + columns && row + rows <= area.row + index,
    );
}
