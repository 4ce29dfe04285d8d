import { openInNode } from "../engine/node-workbook";
import type { Workbook } from "../workbook/workbook";
import { writeWorkbook } from "../xlsx/write-workbook";
import { dayAndPacking } from "./day-and-packing";
import { excelCheck } from "./excel-check";
import { moistureBench } from "./moisture-bench";
import { oneLot } from "./one-lot";
import { seasonBook } from "./season";

/** Every file of sample-workbooks/, with what builds it. */
export const sampleBooks: Readonly<Record<string, () => Workbook>> = {
  "one-lot.xlsx": oneLot,
  "season.xlsx": seasonBook,
  "day-and-packing.xlsx": dayAndPacking,
  "moisture-bench.xlsx": moistureBench,
  "excel-check.xlsx": excelCheck,
};

/** The book with the results that the engine gives its formulas. */
export async function calculated(book: Workbook): Promise<Workbook> {
  const open = openInNode(book);
  try {
    await open.calculate();
    return open.toWorkbook();
  } finally {
    open.close();
  }
}

/** The bytes of a sample file. */
export const sampleFile = async (build: () => Workbook): Promise<Uint8Array> =>
  writeWorkbook(await calculated(build()));
