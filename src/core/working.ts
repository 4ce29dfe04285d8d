/** What the workings of the functions share: how a step is written, with the numbers in the place of the symbols. */
import type { Step } from "./define";
import type { Quantity } from "./quantities";

/** Significant digits of a number in a working: enough to work it out again, few enough to read. */
const digits = 7;

/** What stands in the place of a symbol: a number, or something written out already, such as "76 %". */
export type Inserted = number | string;

/** A number as a working shows it. */
export const workingNumber = (value: number): string => {
  const text = String(Number(value.toPrecision(digits)));
  return value < 0 ? text.replace("-", "−") : text;
};

/** A share as a working shows it: 0.76 is 76 %. */
export const percent = (share: number): string => `${workingNumber(share * 100)} %`;

/** A symbol: letters with their digits, indices and primes, such as W, M₀, Wt or Σy. */
const symbol = /\p{L}[\p{L}\p{Nd}₀-₉_′]*/gu;

/** The formula with numbers in the place of its symbols; symbols that are not named stay. */
export const inserted = (symbols: string, values: Readonly<Record<string, Inserted>>): string =>
  symbols.replace(symbol, (name) => {
    const value = values[name];
    if (value === undefined) return name;
    if (typeof value === "string") return value;
    return value < 0 ? `(${workingNumber(value)})` : workingNumber(value);
  });

/** Terms added up, as many as a line can hold. */
export function sumOf(terms: readonly string[]): string {
  return terms.length > 6 ? `${terms.slice(0, 4).join(" + ")} + … + ${terms[terms.length - 1]}` : terms.join(" + ");
}

/** A step. `values` stand in the place of the symbols, or are the whole line with the numbers, written out. */
export const step = <
  const Says extends string,
  const Symbols extends string,
  const Values extends Readonly<Record<string, Inserted>> | string,
>(
  says: Says,
  symbols: Symbols,
  values: Values,
  gives: Step["gives"],
  quantity?: Quantity,
): Step<Says, Symbols, Values extends string ? Values : string> => ({
  says,
  symbols,
  numbers: (typeof values === "string" ? values : inserted(symbols, values)) as Values extends string ? Values : string,
  gives,
  ...(quantity && { quantity }),
});
