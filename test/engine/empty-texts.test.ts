import { expect, test } from "vitest";
import { openInNode } from "../../src/engine/node-workbook";
import { placeOf } from "../../src/workbook/addresses";
import type { Cell } from "../../src/workbook/workbook";

const formulas = {
  B1: '=IF(ISBLANK(A1),"",A1)',
  B2: "=IF(ISBLANK(A2),B1,A2)",
  C1: "=ISBLANK(B2)",
  C2: "=ISTEXT(B2)",
  C3: '=IF(OR(ISBLANK(B2),ISTEXT(B2)),"",B2-28.9)',
  D1: '=IF(SEQUENCE(2)=1,"",5)',
  E1: "=ISTEXT(D1)",
};
const book = {
  name: "empty texts",
  sheets: [
    {
      name: "Lot",
      cells: Object.entries(formulas).map(([address, formula]): Cell => ({ ...placeOf(address), formula })),
      columnWidths: {},
      rowHeights: {},
      merges: [],
    },
  ],
};

test("a text of no letters is a text, whether it was made in this calculation or in one before", async () => {
  const open = openInNode(book);
  const shown = () => ["B1", "B2", "C1", "C2", "C3", "E1"].map((address) => open.value("Lot", address));
  // As every spreadsheet has it: a formula's cell is never blank, and "" is a text.
  const asText = ["", "", false, true, "", true];
  await open.calculate();
  expect(shown()).toEqual(asText);
  open.set("Lot", "A2", 1136.2);
  await open.calculate();
  expect(shown()).toEqual(["", 1136.2, false, false, 1136.2 - 28.9, true]);
  open.set("Lot", "A2", null);
  await open.calculate();
  expect(shown()).toEqual(asText);
  open.close();
});

test("a cell that nobody has filled is still blank", async () => {
  const open = openInNode(book);
  open.set("Lot", "F1", "=ISBLANK(A1)");
  open.set("Lot", "A1", 3);
  await open.calculate();
  expect(open.value("Lot", "F1")).toBe(false);
  open.set("Lot", "A1", null);
  await open.calculate();
  expect(open.value("Lot", "F1")).toBe(true);
  open.close();
});
