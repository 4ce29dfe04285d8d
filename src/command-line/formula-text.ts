/** What people type, made into a formula as worksheets write it: `=TEA.TARGETWEIGHT(350,0.76,0.6)`. */

/** Quoted text and array constants, which keep their commas and semicolons. */
const kept = /("(?:[^"]|"")*"|\{[^}]*\})/;

/**
 * Semicolons between arguments become commas, and then a comma inside a number is a decimal comma. The equals sign
 * may be left out. Throws when a quotation mark or a bracket stays open.
 */
export function worksheetFormula(typed: string): string {
  const text = typed.trim().replace(/^=\s*/, "");
  const parts = text.split(kept);
  const isKept = (index: number): boolean => index % 2 === 1;
  const separates = parts.some((part, index) => !isKept(index) && part.includes(";"));
  refuseOpen(parts.filter((_, index) => !isKept(index)).join(""));
  return `=${parts.map((part, index) => (isKept(index) ? part : plain(part, separates))).join("")}`;
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

/** The names in the formula that are called as functions, in capitals. */
export function calledNames(formula: string): string[] {
  const outside = formula.split(kept).filter((_, index) => index % 2 === 0);
  return outside.flatMap((part) => [...part.matchAll(/([A-Z_][\w.]*)(?=\()/gi)].map(([name]) => name.toUpperCase()));
}

type Constant = number | string | boolean | null;

export interface PlainCall {
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
