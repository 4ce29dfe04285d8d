import { expect, test } from "vitest";
import { unfitWords } from "../../src/build/plain-script";

test.each([
  ["new URL('leaf')", ["URL"]],
  ["new TextEncoder().encode('leaf')", ["TextEncoder"]],
  ["setTimeout(() => 1, 10)", ["setTimeout"]],
  ["globalThis.leaf = 1", ["globalThis"]],
  ["console.log(Intl)", ["Intl", "console"]],
  ["const own = fetch; own('leaf')", ["fetch"]],
  ["import 'leaf'", ["an import"]],
  ["import('leaf')", ["an import"]],
  ["export const leaf = 1", ["an export"]],
  ["export default 1", ["an export"]],
  ["class Leaf { #weight; }", ["a field of a class, static or not", "a private field"]],
  ["class Leaf { static weight = 1 }", ["a field of a class, static or not"]],
  ["class Leaf { static { this.weight = 1 } }", ["a static block"]],
  ["async function leaf() { await 1 }", ["an async function", "an await"]],
  ["1n", ["a big integer"]],
  ["({ leaf: URL, [fetch]: 1 })", ["URL", "fetch"]],
  ["({ URL })", ["URL"]],
])("%s may not stand in the script for Google Sheets", (script, unfit) => {
  expect(unfitWords(script)).toEqual(unfit);
});

test.each([
  "function leaf(weight, ...others) { return Math.max(weight, arguments.length, ...others) }",
  "const { URL: leaf, fetch } = { URL: 1, fetch: 2 }; leaf + fetch",
  "class Leaf extends Error { constructor() { super(); this.URL = 1 } get fetch() { return this.URL } setTimeout() {} }",
  "row: for (const leaf of [1]) { try { continue row } catch (problem) { break row } }",
  "typeof SpreadsheetApp === 'undefined' || Utilities.formatDate('fetch')",
])("%s may", (script) => {
  expect(unfitWords(script)).toEqual([]);
});
