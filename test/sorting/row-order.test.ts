import { describe, expect, test } from "vitest";
import { rowOrder } from "../../src/sorting/row-order";

const sorted = (values: readonly (number | string | boolean | undefined)[], direction: "up" | "down") =>
  rowOrder(values, direction, "en").map((place) => values[place]);

describe("the order of rows", () => {
  const mixed = ["lost", 12, undefined, 3, "#N/A", "", -1.5, true, "Hedge", 100, " ", false];

  test("has numbers before text, then yes and no, errors, and blanks last", () => {
    expect(sorted(mixed, "up")).toEqual([-1.5, 3, 12, 100, "Hedge", "lost", false, true, "#N/A", undefined, "", " "]);
  });

  test("turns round only among values of one kind", () => {
    expect(sorted(mixed, "down")).toEqual([100, 12, 3, -1.5, "lost", "Hedge", true, false, "#N/A", undefined, "", " "]);
  });

  test("keeps rows that are alike as they stand, both ways", () => {
    const plots = ["Wall", "hedge", "Hedge", "Wall", "Hedge"];
    expect(rowOrder(plots, "up", "en")).toEqual([1, 2, 4, 0, 3]);
    expect(rowOrder(plots, "down", "en")).toEqual([0, 3, 1, 2, 4]);
  });

  test("reads the numbers in names", () => {
    expect(sorted(["Lot 10", "Lot 9", "Lot 100"], "up")).toEqual(["Lot 9", "Lot 10", "Lot 100"]);
  });
});
