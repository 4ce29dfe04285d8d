import { HostProblem } from "../../host/host-problem";
import type { CellPlace } from "../../host/workbook-host";
import { addressOf } from "../../workbook/addresses";
import { parseA1Ref, stringifyA1Ref, type Token, tokenize } from "../../workbook/formula";
import { isOwnPart } from "./table-cells";

/**
 * A part of the formula in a cell, written so that it means the same wherever it stands: in a name Excel would count
 * references from whatever cell is selected. Every reference gets its sheet and dollars, `@` of a range the cell that it
 * means, ROW() and COLUMN() their cell, and parts of the formula's own table or row the addresses that are given for them.
 */
export function expressionAlone(
  expression: string,
  place: CellPlace,
  ownParts: ReadonlyMap<string, string> = new Map(),
): string {
  const tokens: readonly Token[] = tokenize(expression, { withLocation: false });
  // A space stays: between two ranges it means where they cross.
  const beside = (index: number, step: 1 | -1): Token | undefined =>
    isBlank(tokens[index + step]) ? beside(index + step, step) : tokens[index + step];
  return tokens
    .map((token, index) => {
      const { type, value } = token;
      const [before, after] = [beside(index, -1), beside(index, 1)];
      // A quoted path to another file, say: what stands behind it must not be taken for cells of this sheet.
      if (type === "unknown") throw onlyThere(expression);
      if (value === "@" && !isCells(after)) throw onlyThere(expression);
      if (value === "@") return "";
      if (isCells(token)) return referenceAlone(value, before?.value === "@", place);
      if (type === "structured" && isOwnPart(value)) {
        const address = ownParts.get(value);
        if (address === undefined) throw onlyThere(value);
        return referenceAlone(address, false, place);
      }
      const opensOwn = value === "(" && /^(ROW|COLUMN)$/i.test(before?.value ?? "") && after?.value === ")";
      return opensOwn ? `(${referenceAlone(ownCell(place), false, place)}` : value;
    })
    .join("");
}

/** The parts of the formula's own table, or of its row of a table. */
export const ownPartsIn = (expression: string): readonly string[] =>
  tokenize(expression, { withLocation: false }).flatMap(({ type, value }) =>
    type === "structured" && isOwnPart(value) ? [value] : [],
  );

const isBlank = (token: Token | undefined): boolean => token?.type === "whitespace" || token?.type === "newline";

/** What only the cell of the formula can say. */
const onlyThere = (expression: string): HostProblem =>
  new HostProblem("unknown", { kind: "only in its own cell", expression });

const isCells = (token: Token | undefined): boolean =>
  token !== undefined && ["range", "range_beam", "range_ternary"].includes(token.type);

const ownCell = ({ row, column }: CellPlace): string => addressOf(row, column);

/** `isPicked`: of a range that stands in one column or row, the cell beside the formula. */
function referenceAlone(text: string, isPicked: boolean, { sheet, row, column }: CellPlace): string {
  const reference = parseA1Ref(text, { allowTernary: true });
  if (!reference || !("range" in reference) || !reference.range) return text;
  const { top, bottom, left, right } = reference.range;
  const isColumn = isPicked && left !== null && left === right && row >= (top ?? 0) && row <= (bottom ?? row);
  const isRow = isPicked && top !== null && top === bottom && column >= (left ?? 0) && column <= (right ?? column);
  const { context = [] } = reference;
  const range = {
    ...reference.range,
    ...(isColumn && { top: row, bottom: row }),
    ...(isRow && { left: column, right: column }),
    ...{ $top: true, $bottom: true, $left: true, $right: true },
  };
  const picked = isPicked && !isColumn && !isRow ? "@" : "";
  return picked + stringifyA1Ref({ context: context.length === 0 ? [sheet] : context, range });
}
