import { typedNumbers } from "../../cells/typed-number";
import { words } from "./words";

/** What a text typed into a cell is taken for. `remark` says how it was read, where that can be doubted. */
type TypedCell =
  | { readonly is: "number"; readonly plain: string; readonly isPercent: boolean; readonly remark?: string }
  | { readonly is: "doubtful"; readonly remark: string }
  | { readonly is: "other" };

/**
 * Reads numbers as people write them where the decimal mark is this one. Thousands or thousandths, nobody can know:
 * 1,240 stays a text where decimals have a point, and 1.240 where they have a comma. What has one reading only is read
 * in any language. Dates, times and texts are left to the engine.
 */
export function typedCell(text: string, decimalMark: string): TypedCell {
  const typed = text.normalize("NFKC").trim();
  if (/^[-+]?\d+\.?\d*e[-+]?\d+$/i.test(typed)) return { is: "number", plain: String(Number(typed)), isPercent: false };
  const [, digits = "", sign] = /^(.*?)\s*(%?)$/.exec(typed) ?? [];
  const readings = typedNumbers(digits);
  const isPercent = sign === "%";
  const asDecimal = readings.find((reading) => reading.includes("."));
  const [first, ...others] = readings;
  if (first === undefined) return { is: "other" };
  // No share is written with a mark between thousands.
  const doubted = isPercent ? undefined : decimalMark === "," ? doubtedPoint(digits) : others.length > 0 && readings;
  if (doubted) {
    const written = doubted.map((reading) => reading.replace(".", decimalMark));
    return { is: "doubtful", remark: words().typed.doubtful(typed, written) };
  }
  const plain = asDecimal ?? first;
  const isForeign = decimalMark !== "," && hasDecimalComma(digits, asDecimal);
  // 1,240 is 1,24 where decimals have a comma, but its writer may have copied it from where they have a point.
  const isDoubted = decimalMark === "," && !isPercent && others.length > 0;
  const read = isDoubted ? String(Number(plain)).replace(".", ",") : `${plain}${isPercent ? "%" : ""}`;
  const remark = isForeign || isDoubted ? words().typed.readAs(typed, read, isDoubted ? "comma" : "point") : undefined;
  return { is: "number", plain, isPercent, ...(remark && { remark }) };
}

/** Whether a comma was taken for the mark before decimals. */
const hasDecimalComma = (digits: string, asDecimal: string | undefined): boolean =>
  asDecimal !== undefined && digits.lastIndexOf(",") > digits.lastIndexOf(".");

/** Both readings of 1.240, for those who write a point between thousands. */
function doubtedPoint(digits: string): readonly string[] | undefined {
  if (!/^[-−+]?[1-9]\d{0,2}\.\d{3}$/.test(digits)) return undefined;
  return [digits.replace(".", ""), digits];
}

/** The mark before decimals in a language. */
export const decimalMarkOf = (language: string): string =>
  new Intl.NumberFormat(language).formatToParts(1.5).find(({ type }) => type === "decimal")?.value ?? ".";
