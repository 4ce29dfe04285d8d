/** A cell as a sheet's part writes it. */
import { toFileFormula } from "../../workbook/formula-names";
import { type Cell, isErrorCode, isErrorResult } from "../../workbook/workbook";
import { escaped } from "../read/escaped-text";
import type { Content } from "./edit";
import { inText } from "./tag-scanner";

/** The attribute `t`, and the elements that hold the value. */
interface WrittenValue {
  readonly type: string | undefined;
  readonly elements: string;
}

/** `prefix` with its colon, as the sheet's own elements have it. */
export function writtenConstant({ value, isText }: Extract<Content, { is: "constant" }>, prefix: string): WrittenValue {
  if (typeof value === "string" && (isText || !isErrorCode(value))) {
    return { type: "inlineStr", elements: element(prefix, "is", element(prefix, "t", textOf(value), value)) };
  }
  return writtenResult(value, isText, prefix);
}

/** What a formula comes to: texts stand in `v` as well. */
export function writtenResult(value: Cell["value"], isText: true | undefined, prefix: string): WrittenValue {
  const content = (text: string) => element(prefix, "v", text);
  if (value === undefined) return { type: undefined, elements: "" };
  if (typeof value === "boolean") return { type: "b", elements: content(value ? "1" : "0") };
  if (typeof value === "number") return { type: undefined, elements: content(String(value)) };
  if (!isText && isErrorResult(value)) return { type: "e", elements: content(value) };
  return { type: "str", elements: element(prefix, "v", textOf(value), value) };
}

export const writtenFormula = (formula: string, prefix: string, attributes = ""): string =>
  element(prefix, "f", inText(toFileFormula(formula).slice(1)), "", attributes);

const textOf = (value: string): string => inText(escaped(value));

/** Spaces at an end, and breaks of lines, are kept by every program only where the element says so. */
function element(prefix: string, name: string, content: string, text = "", attributes = ""): string {
  const space = /^\s|\s$|\n/.test(text) ? ' xml:space="preserve"' : "";
  return `<${prefix}${name}${attributes}${space}>${content}</${prefix}${name}>`;
}
