import { describe, expect, test } from "vitest";
import { CellError } from "../../src/cells/values";
import { bookList, measured } from "../../src/core/define";
import { text, weight } from "../../src/core/quantities";
import { cellFunction, only } from "./call";

/** Shows what the lists of a call were read as. */
const show = (...lists: unknown[]) => JSON.stringify(lists.map((list) => (list === undefined ? "left out" : list)));

const lots = [
  bookList("lots", "groups", text, { blank: "waits" }),
  bookList("lots", "weights", weight, { blank: "waits" }),
];
const book = cellFunction(lots, show);

describe("a book", () => {
  test("reaches the function as its cells stand: headings, text, gaps and all", () => {
    expect(only(book([["plot"], ["north"], [3]], [["g"], [null], [true]]))).toBe(
      '[[["plot"],["north"],[3]],[["g"],[null],[true]]]',
    );
  });

  test("keeps an error in one of its cells, and gives back one that stands for a list", () => {
    const lost = new CellError("#REF!");
    const hasError = cellFunction(lots, (_, weights: unknown[][]) => String(weights[1]?.[0] === lost));
    expect(only(hasError([["a"], ["b"]], [[3], [lost]]))).toBe("true");
    expect(book([["a"], ["b"]], lost)).toEqual([[lost]]);
  });

  test("may lie in a row, a column or one cell", () => {
    expect(only(book([["a", "b"]], [[3], [4]]))).toBe('[[["a"],["b"]],[[3],[4]]]');
    expect(only(book("a", 3))).toBe('[[["a"]],[[3]]]');
    expect(
      only(
        book("a", [
          [3, 4],
          [5, 6],
        ]),
      ),
    ).toBe("#VALUE! weights must be one row or one column; got 2 × 2 cells");
  });

  test("ends with the last row that is filled in one of its columns", () => {
    expect(only(book([["a"], ["b"], [null], [null]], [[3], [null], [""], [null]]))).toBe(
      '[[["a"],["b"]],[[3],[null]]]',
    );
    expect(only(book([["a"], [""]], [[3], [0]]))).toBe('[[["a"]],[[3]]]');
  });

  test("has columns of one length", () => {
    expect(only(book([["a"], ["b"], ["c"]], [[3], [4]]))).toBe(
      "#VALUE! weights must have as many rows as groups; got 2 and 3",
    );
    expect(only(book([["a"], [null]], [[3], [4], [5]]))).toBe(
      "#VALUE! groups must have as many rows as weights; got 2 and 3",
    );
  });

  test("waits while it is empty, where its lists are readings", () => {
    expect(only(book(null, null))).toBe("");
    expect(only(book([[""], [null]], [[null], [0]]))).toBe("");
  });

  test("is handed over empty where its lists are settings", () => {
    const past = cellFunction([measured("weight", weight), bookList("past", "pastWeights", weight)], show);
    expect(only(past(8, null))).toBe("[8,[]]");
    expect(only(past(null, [[3]]))).toBe("");
  });

  test("stands beside another of another length", () => {
    const land = [
      bookList("land", "names", text, { optional: true }),
      bookList("land", "areas", weight, { optional: true }),
    ];
    const both = cellFunction([...lots, ...land], show);
    expect(only(both([["a"], ["b"]], [[3], [4]], [["a"]], [[7]]))).toBe('[[["a"],["b"]],[[3],[4]],[["a"]],[[7]]]');
    expect(only(both("a", 3))).toBe('[[["a"]],[[3]],"left out","left out"]');
    expect(only(both("a", 3, [[null], [""]], 7))).toBe('[[["a"]],[[3]],"left out",[[7]]]');
  });

  test("of a million rows with blanks below its first is cut to that one", () => {
    const column = (first: unknown) => Array.from({ length: 1_048_575 }, (_, row) => [row === 0 ? first : null]);
    expect(only(book(column("a"), column(3)))).toBe('[[["a"]],[[3]]]');
  });
});
