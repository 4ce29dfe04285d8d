import { expect, test } from "vitest";
import { openInNode } from "../../src/engine/node-workbook";
import { addressOf, placeOf } from "../../src/workbook/addresses";
import type { Cell } from "../../src/workbook/workbook";

const answersOf = async (constants: Readonly<Record<string, Cell["value"]>>, formulas: readonly string[]) => {
  const cells: Cell[] = [
    ...Object.entries(constants).map(([address, value]): Cell => ({ ...placeOf(address), value: value ?? "" })),
    ...formulas.map((formula, row): Cell => ({ row, column: 3, formula })),
  ];
  const open = openInNode({
    name: "compared",
    sheets: [{ name: "S", cells, columnWidths: {}, rowHeights: {}, merges: [] }],
  });
  await open.calculate();
  const answers = formulas.map((formula, row) => [formula, open.value("S", addressOf(row, 3))]);
  open.close();
  return Object.fromEntries(answers);
};

// Each compares with column A, the later ones after others have: answers as every spreadsheet gives them.
test("a 0 is not an empty text, a blank is both, whatever else was compared before", async () => {
  const expected = {
    '=A1=""': false,
    '=IF(A1="","",A1)': 0,
    '=NOT(A1="")': true,
    '=OR(A1="",A2="x")': false,
    '=A1<>""': true,
    "=A3=0": true,
    '=A3=""': true,
    '=IF(""=A1,1,2)': 2,
    '=SUMPRODUCT((A1:A4="")*1)': 1,
    "=SUMPRODUCT((A1:A4=0)*1)": 2,
    "=SUMPRODUCT((A1:A4=5)*1)": 1,
    '=SUMPRODUCT((A1:A4="wall")*1)': 1,
    "=SUMPRODUCT((A1:A3<3)*1)": 2,
  };
  expect(await answersOf({ A1: 0, A2: 5, A4: "Wall" }, Object.keys(expected))).toEqual(expected);
});
