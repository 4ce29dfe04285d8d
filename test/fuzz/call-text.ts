import { CellError } from "../../src/cells/values";
import type { FunctionSpec } from "../../src/core/define";
import { typed } from "../../src/core/describe";
import { namespace } from "../../src/core/namespace";

/** `TEA.OUTTURN(640,{150;«NaN»})`: a formula, with what cannot be typed between « and ». */
export const callText = ({ id }: FunctionSpec, given: readonly unknown[]): string =>
  `${namespace}.${id}(${given.map(argumentText).join(",")})`;

function argumentText(given: unknown): string {
  if (!Array.isArray(given)) return cellText(given);
  if (given.length > 20) return `«${given.length} rows: ${given.slice(0, 4).map(argumentText).join(";")};…»`;
  if (!given.every((row) => Array.isArray(row))) return `«[${given.map(argumentText).join(", ")}]»`;
  return `{${given.map((row) => row.map(argumentText).join(",")).join(";")}}`;
}

function cellText(cell: unknown): string {
  if (cell === null) return "";
  if (typeof cell === "string") return JSON.stringify(cell.length > 60 ? `${cell.slice(0, 60)}…` : cell);
  if (typeof cell === "boolean") return typed(cell);
  if (typeof cell === "number")
    return Number.isFinite(cell) && !Object.is(cell, -0) ? typed(cell) : `«${numberText(cell)}»`;
  if (cell instanceof CellError) return cell.code ?? "«an error without a code»";
  return cell === undefined ? "«undefined»" : `«${Object.prototype.toString.call(cell)}»`;
}

const numberText = (value: number): string => (Object.is(value, -0) ? "-0" : String(value));
