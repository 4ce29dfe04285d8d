import { openInNode } from "../engine/node-workbook";
import type { Cell, Workbook } from "../workbook/workbook";
import { type Comparison, comparison } from "./side-by-side";
import { timeOfCalculation } from "./time-of-calculation";

const count = 10_000;
const rounds = 7;

/** A column filled down, as a book of weights is: one call a row, against the same arithmetic typed out. */
export async function compareColumnsOfCells(): Promise<Comparison[]> {
  return [
    await compareColumns(
      "TARGETWEIGHT",
      (row) => `TEA.TARGETWEIGHT(A${row},B${row},0.6)`,
      (row) => `A${row}*(1-B${row})/(1-0.6)`,
    ),
    // The least arithmetic that a function does: what a call costs beside it shows most.
    await compareColumns(
      "DRYMATTER",
      (row) => `TEA.DRYMATTER(A${row},B${row})`,
      (row) => `A${row}*(1-B${row})`,
    ),
  ];
}

async function compareColumns(name: string, call: InRow, arithmetic: InRow): Promise<Comparison> {
  const ours = openInNode(columnOf(call));
  const plain = openInNode(columnOf(arithmetic));
  const times: [number[], number[]] = [[], []];
  for (let round = 0; round < rounds; round += 1) {
    times[0].push(await timeOfCalculation(ours));
    times[1].push(await timeOfCalculation(plain));
  }
  const [answer, check] = [ours, plain].map((book) => Number(book.value("Weights", `C${count}`))) as [number, number];
  ours.close();
  plain.close();
  // Not a rounding error apart, or the two did different work.
  if (!(Math.abs(answer / check - 1) < 1e-12)) throw new Error(`the columns end in ${answer} and ${check}`);
  return comparison(
    "10,000 cells filled down in the embedded engine",
    { name: `${name} in each`, times: times[0] },
    { name: "its arithmetic in each", times: times[1] },
    1.5,
  );
}

type InRow = (row: number) => string;

function columnOf(formula: InRow): Workbook {
  const cells: Cell[] = Array.from({ length: count }, (_, row): Cell[] => [
    { row, column: 0, value: 200 + (row % 250) },
    { row, column: 1, value: 0.7 + (row % 90) / 1000 },
    { row, column: 2, formula: `=${formula(row + 1)}` },
  ]).flat();
  return { name: "Weights", sheets: [{ name: "Weights", cells, columnWidths: {}, rowHeights: {}, merges: [] }] };
}
