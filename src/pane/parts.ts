/** What of the pane comes after the jobs: each part when it is wanted, or all of them ahead. */
import { Part } from "./later";
import { answerPicture } from "./pictures/picture-later";

const catalogueParts = () => import("./catalogue-parts");

export const working = new Part(() => catalogueParts().then(({ Working }) => Working));
export const sheetCheck = new Part(() => catalogueParts().then(({ SheetCheck }) => SheetCheck));
export const reference = new Part(() => catalogueParts().then(({ WholeReference }) => WholeReference));
export const writeBlock = new Part(() => import("./jobs/write-block").then(({ WriteBlock }) => WriteBlock));
/** Offered beside a workbook that changes its formulas; where nobody serves the page later, there is none. */
export const withoutAddIn = new Part(() =>
  import("./without-add-in/without-add-in").then(({ WithoutAddIn }) => WithoutAddIn),
);

/** Fetches whatever the pane may want later, for where the network, or who serves the page, may be gone by then. */
export async function fetchParts(): Promise<void> {
  const parts = [writeBlock, answerPicture, working, sheetCheck, reference];
  await Promise.all(parts.map((part) => part.fetch()));
}
