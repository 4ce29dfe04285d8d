/** Prints how long the sample season takes to be calculated anew, in milliseconds; a process of its own for the bench. */
import { readFileSync } from "node:fs";
import { openInNode } from "../engine/node-workbook";
import { readWorkbook } from "../xlsx/read-workbook";
import { timeOfCalculation } from "./time-of-calculation";

async function run(): Promise<void> {
  const book = openInNode(readWorkbook(readFileSync("sample-workbooks/season.xlsx")));
  const times: number[] = [];
  for (let round = 0; round < 4; round += 1) times.push(await timeOfCalculation(book));
  console.log(Math.min(...times));
  process.exit(0);
}

run();
