import type { FunctionSpec } from "../core/define";
import type { Quantity } from "../core/quantities";

export interface AnswerColumn {
  readonly name: string;
  readonly quantity: Quantity;
  /** Which of the columns that stand once for each target. */
  readonly repeat?: number;
}

/** The columns of a row or table that is so many wide. */
export function columnsOf({ result }: FunctionSpec, width: number): AnswerColumn[] {
  if (result.shape !== "row" && result.shape !== "table") return [];
  return Array.from({ length: width }, (_, index) => {
    const { name, quantity, repeats } = result.columns[Math.min(index, result.columns.length - 1)] as {
      name: string;
      quantity: Quantity;
      repeats?: boolean;
    };
    return { name, quantity, ...(repeats && { repeat: index - result.columns.length + 2 }) };
  });
}
