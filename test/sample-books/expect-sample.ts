import { readFileSync } from "node:fs";
import { expect } from "vitest";
import { readWorkbook } from "../../src/xlsx/read-workbook";

/** Numbers at ten decimals, so that the last bit of another machine's arithmetic does not count. */
const rounded = (_: string, value: unknown) => (typeof value === "number" ? Number(value.toFixed(10)) : value);

const textOf = (file: Uint8Array): string => JSON.stringify(readWorkbook(file), rounded, 1);

/** Expects of a file in sample-workbooks that it holds what this one does, formulas and results alike. */
export function expectSample(name: string, made: Uint8Array): void {
  expect(textOf(new Uint8Array(readFileSync(`sample-workbooks/${name}`)))).toBe(textOf(made));
}
