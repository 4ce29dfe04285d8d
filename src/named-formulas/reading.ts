/** How a named formula reads one cell: by the rules of cells/read-cell.ts, out of the same quantity. */
import { leastAmount, limits, mostAmount } from "../core/bounds";
import { plainName } from "../core/describe";
import type { Quantity } from "../core/quantities";
import { literal, rowOf } from "./words";

/** The name that reads the words of a choice. */
export const wordsName = ({ name }: Quantity): string =>
  `_${plainName(`WORD_${name.toUpperCase().replaceAll(/[^A-Z]+/g, "_")}`)}`;

/** What a cell holds for a quantity: the value, `""` for a blank, the error that stood in it, or the refusal. */
export function reading(quantity: Quantity, held: string): string {
  switch (quantity.holds) {
    case "number":
      return `_TEA_NUMBER(${held},${inside(quantity, held)},${literal(excludesZero(quantity))})`;
    case "yesNo":
      return `_TEA_YESNO(${held})`;
    case "choice":
      return `${wordsName(quantity)}(${held})`;
    case "text":
      return `_TEA_TEXT(${held})`;
  }
}

/** As core/bounds.ts has it, but with bounds that fifteen digits can say. */
function inside({ bounds }: Quantity, held: string): string {
  const { above, atLeast, below, atMost, whole } = bounds;
  const low = above === 0 ? `>=${literal(leastAmount)}` : `>${literal(above ?? -mostAmount)}`;
  const high = below === undefined ? `<=${literal(mostAmount)}` : `<${literal(below)}`;
  const parts = [
    `(${held}${atLeast === undefined ? low : `>=${literal(atLeast)}`})`,
    `(${held}${atMost === undefined ? high : `<=${literal(atMost)}`})`,
    ...(whole ? [`(INT(${held})=${held})`] : []),
  ];
  return parts.join("*");
}

/** Where 0 can be no reading, it is a blank. */
const excludesZero = ({ bounds }: Quantity): boolean => limits(bounds).low > 0;

/** The formula behind that name: every spelling of a word beside the word itself. */
export function wordsFormula({ choices = {} }: Quantity): string {
  const spellings = Object.entries(choices).flatMap(([word, aliases]) =>
    [word, ...aliases].map((spelling) => [spelling, word] as const),
  );
  const [spelled, words] = [0, 1].map((side) => rowOf(spellings.map((pair) => pair[side] as string)));
  return `LAMBDA(held,_TEA_WORD(held,${spelled},${words}))`;
}
