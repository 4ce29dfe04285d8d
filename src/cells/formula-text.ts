/** What people type, made into a formula as worksheets write it: `=TEA.TARGETWEIGHT(320,0.75,0.6)`. */

/** Quoted text and array constants, which keep their commas and semicolons. */
const kept = /("(?:[^"]|"")*"|\{[^}]*\})/;

/**
 * Semicolons between arguments become commas, and then a comma inside a number is a decimal comma. The equals sign
 * may be left out, and signs of the full width of an East Asian script are read as the plain ones. Throws, in words,
 * for what a worksheet would not read either.
 */
export function worksheetFormula(typed: string): string {
  const text = typed.trim().replace(/^[=＝]\s*/, "");
  if (text === "") throw new Error("a formula must be given; got nothing behind the equals sign");
  const parts = text.split(kept).map((part, index) => (isKept(index) ? part : withPlainSigns(part)));
  const separates = parts.some((part, index) => !isKept(index) && part.includes(";"));
  const outside = parts.map((part, index) => (isKept(index) ? '""' : part)).join("");
  refuseOpen(outside.replaceAll('""', ""));
  refuseUnreadable(outside, separates);
  return `=${parts.map((part, index) => (isKept(index) ? part : plain(part, separates))).join("")}`;
}

/** What a formula holds beside quoted texts and array constants, which are left blank. */
export const outsideTexts = (formula: string): string =>
  formula
    .split(kept)
    .map((part, index) => (isKept(index) ? '""' : part))
    .join("");

/** The formula of a cell with semicolons between its arguments, as worksheets write it; others stay as they are. */
export function withCommasBetween(formula: string): string {
  const parts = formula.split(kept);
  if (!parts.some((part, index) => !isKept(index) && part.includes(";"))) return formula;
  return parts.map((part, index) => (isKept(index) ? part : plain(part, true))).join("");
}

const isKept = (index: number): boolean => index % 2 === 1;

/** ，（）；＝ and the like, each 0xFEE0 above its plain sign. */
const withPlainSigns = (part: string): string =>
  part.replace(/[！-～]/g, (sign) => (sign === "＂" ? sign : String.fromCodePoint(sign.charCodeAt(0) - 0xfee0)));

/** Whether a comma may have been meant as a decimal comma: it stands between digits, and no semicolon separates. */
export function hasDecimalCommas(typed: string): boolean {
  const outside = withPlainSigns(
    typed
      .split(kept)
      .filter((_, index) => !isKept(index))
      .join('""'),
  );
  return /\d,\d/.test(outside) && !outside.includes(";");
}

function plain(part: string, semicolonsSeparate: boolean): string {
  const commas = semicolonsSeparate ? part.replace(/(\d),(?=\d)/g, "$1.").replaceAll(";", ",") : part;
  // The engine reads .5 as text.
  return commas.replace(/(?<![\w.])\.(?=\d)/g, "0.");
}

function refuseOpen(text: string): void {
  if (text.includes('"')) throw new Error("a quotation mark must be closed");
  const opened = text.split("(").length - 1;
  const closed = text.split(")").length - 1;
  if (opened !== closed || /[{}]/.test(text)) {
    throw new Error(`brackets must be closed; got ${opened} that open and ${closed} that close`);
  }
}

/** What often stands in a formula and never can, by what it looks like; the first one that is found is named. */
const unreadable: readonly (readonly [pattern: RegExp, inWords: (found: string) => string])[] = [
  [/[“”„‟«»‘’‚＂]/u, (sign) => `a text must stand in straight quotation marks, "like this"; got ${sign}`],
  [
    /(?<![\w.$:])\d{1,2}:[0-5]\d(?::[0-5]\d)?(?![\w:])/,
    (time) => {
      const [hours, minutes, seconds = 0] = time.split(":").map(Number);
      return `a time must be written as TIME(${hours},${minutes},${seconds}); got ${time}`;
    },
  ],
  [
    /(?<![\w.$:])\d{1,3}(?:['’\s_\u00a0\u2009\u202f]\d{3})+(?:[.,]\d+)?(?![\w.])/,
    (number) => `a number must have no separator between thousands; got ${number}`,
  ],
  [
    /(?<![\p{L}\w.$:])\d+(?:\.\d+)?(?!e[+-]?\d)\s*[°µ]?\p{L}[\p{L}²³]*(?![\w(])/iu,
    (number) => `a number must stand without a unit; got ${number}`,
  ],
];

function refuseUnreadable(outside: string, semicolonsSeparate: boolean): void {
  for (const [pattern, inWords] of unreadable) {
    const [found] = pattern.exec(outside) ?? [];
    if (found !== undefined) throw new Error(inWords(found));
  }
  const [grouped] = (semicolonsSeparate && /\d+(?:\.\d{3})+,\d+|\d+(?:,\d{3})+\.\d+/.exec(outside)) || [];
  if (grouped !== undefined) throw new Error(`a number must have no separator between thousands; got ${grouped}`);
  const word = bareWord(outside);
  if (word !== undefined) throw new Error(`a text must stand in quotation marks: "${word}"; got ${word} without them`);
}

/** Words that are no function, no cell, no TRUE or FALSE. Only LET and LAMBDA give names to anything here. */
function bareWord(outside: string): string | undefined {
  if (/(?<![\w.])(?:LET|LAMBDA)\s*\(/i.test(outside)) return undefined;
  const words = outside.match(wordsTogether) ?? [];
  return words.find((word) => word.split(/[ -]+/).some((part) => !/^(?:TRUE|FALSE|[A-Z]{1,3}\d+)$/i.test(part)));
}

/** One word or several, `fresh leaf`, `air-dry`, with no bracket, colon or exclamation mark behind them. */
const wordsTogether =
  /(?<![\p{L}\w.$#:])[\p{L}_][\p{L}\p{M}\w.]*(?:[ -]+[\p{L}_][\p{L}\p{M}\w.]*)*(?!\s*[\p{L}\w.(!:])/giu;

/** The names in the formula that are called as functions, in capitals. */
export function calledNames(formula: string): string[] {
  const outside = formula.split(kept).filter((_, index) => index % 2 === 0);
  return outside.flatMap((part) => [...part.matchAll(/([A-Z_][\w.]*)(?=\()/gi)].map(([name]) => name.toUpperCase()));
}

type Constant = number | string | boolean | null;

interface PlainCall {
  /** In capitals, with its namespace. */
  readonly name: string;
  readonly given: readonly (Constant | readonly (readonly Constant[])[])[];
}

/** One function of constants, and nothing else; undefined for every other formula. */
export function plainCall(formula: string): PlainCall | undefined {
  const [, name, inside] = /^=\s*([A-Z][\w.]*)\s*\((.*)\)\s*$/is.exec(formula) ?? [];
  if (name === undefined || inside === undefined) return undefined;
  const given = inside.trim() === "" ? [] : splitOutside(inside, ",").map(argumentOf);
  return given.includes(undefined) ? undefined : { name: name.toUpperCase(), given: given as PlainCall["given"] };
}

/** Splits where the separator stands neither in quotes nor in an array constant. */
function splitOutside(text: string, separator: "," | ";"): string[] {
  const found = [""];
  text.split(kept).forEach((part, index) => {
    const pieces = index % 2 === 1 ? [part] : part.split(separator);
    found.push(`${found.pop()}${pieces[0]}`, ...pieces.slice(1));
  });
  return found;
}

function argumentOf(text: string): PlainCall["given"][number] | undefined {
  const [, array] = /^\s*\{([^{}]*)\}\s*$/.exec(text) ?? [];
  if (array === undefined) return text.trim() === "" ? null : constantOf(text);
  const rows = splitOutside(array, ";").map((row) => splitOutside(row, ",").map(constantOf));
  const isWhole = rows.every((row) => row.length === rows[0]?.length && !row.includes(undefined));
  return isWhole ? (rows as Constant[][]) : undefined;
}

/** A number, a percentage, a quoted text, TRUE or FALSE. */
function constantOf(text: string): Constant | undefined {
  const constant = text.trim();
  const [, number, percent] = /^([+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)\s*(%?)$/i.exec(constant) ?? [];
  if (number !== undefined) return percent ? Number(number) / 100 : Number(number);
  if (/^"(?:[^"]|"")*"$/.test(constant)) return constant.slice(1, -1).replaceAll('""', '"');
  if (/^true$/i.test(constant)) return true;
  if (/^false$/i.test(constant)) return false;
  return undefined;
}
