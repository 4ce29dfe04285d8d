import { typedNumbers } from "../../cells/typed-number";
import { words } from "./words";

/** What a text typed into a cell is taken for. `remark` says how it was read, where that can be doubted. */
export type TypedCell =
  | { readonly is: "number"; readonly plain: string; readonly isPercent: boolean; readonly remark?: string }
  | { readonly is: "doubtful"; readonly remark: string }
  | { readonly is: "other" };

/**
 * Reads numbers as people write them where the decimal mark is this one: 1,234 is a number only where the comma marks
 * decimals; elsewhere it may as well be 1234, and stays a text. What has one reading only is read in any language.
 * Dates, times and texts are left to the engine.
 */
export function typedCell(text: string, decimalMark: string): TypedCell {
  const typed = text.normalize("NFKC").trim();
  if (/^[-+]?\d+\.?\d*e[-+]?\d+$/i.test(typed)) return { is: "number", plain: String(Number(typed)), isPercent: false };
  const [, digits = "", sign] = /^(.*?)\s*(%?)$/.exec(typed) ?? [];
  const readings = typedNumbers(digits);
  const isPercent = sign === "%";
  const behind = isPercent ? "%" : "";
  const asDecimal = readings.find((reading) => reading.includes("."));
  const [first, ...others] = readings;
  if (first === undefined) return { is: "other" };
  // No share is written with a mark between thousands.
  const plain = (others.length === 0 || asDecimal === undefined) && !isPercent ? first : (asDecimal ?? first);
  if (others.length > 0 && decimalMark !== "," && !isPercent) {
    return {
      is: "doubtful",
      remark: words().typed.doubtful(typed, readings),
    };
  }
  const isDoubted =
    decimalMark === ","
      ? /^[-−+]?[1-9]\d{0,2}\.\d{3}$/.test(digits)
      : asDecimal !== undefined && digits.lastIndexOf(",") > digits.lastIndexOf(".");
  return {
    is: "number",
    plain,
    isPercent,
    ...(isDoubted && { remark: words().typed.readAs(typed, `${plain}${behind}`) }),
  };
}

/** The mark before decimals in a language. */
export const decimalMarkOf = (language: string): string =>
  new Intl.NumberFormat(language).formatToParts(1.5).find(({ type }) => type === "decimal")?.value ?? ".";
