import { openInNode } from "../engine/node-workbook";
import type { Cell, Workbook } from "../workbook/workbook";
import { type SeasonRows, seasonRows } from "./season-rows";
import { groupCount } from "./season-table";
import { type Comparison, comparison } from "./side-by-side";
import { timeOfCalculation } from "./time-of-calculation";

/** The table as one formula, and the same numbers as a formula a cell, each in the embedded engine. */
export async function compareWithWorksheetFormulas(): Promise<Comparison> {
  const count = 10_000;
  const rows = seasonRows(count, groupCount);
  const ours = openInNode(
    bookWith(rows, [{ row: 0, column: 4, formula: `=TEA.SEASONTABLE(A1:A${count},B1:B${count},C1:C${count})` }]),
  );
  const plain = openInNode(bookWith(rows, worksheetFormulas(rows, count)));
  const times: [number[], number[]] = [[], []];
  for (let round = 0; round < 5; round += 1) {
    times[0].push(await timeOfCalculation(ours));
    times[1].push(await timeOfCalculation(plain));
  }
  ours.close();
  plain.close();
  return comparison(
    "season table of 10,000 rows in the embedded engine",
    { name: "one SEASONTABLE", times: times[0] },
    { name: "SUMIFS and COUNTIFS", times: times[1] },
    0.05,
  );
}

function bookWith(rows: SeasonRows, formulas: readonly Cell[]): Workbook {
  const cells: Cell[] = rows.groups.flatMap((group, row) => [
    { row, column: 0, value: group },
    { row, column: 1, value: rows.fresh[row] as number },
    { row, column: 2, value: rows.finished[row] as number },
  ]);
  const sheet = { name: "Season", cells: [...cells, ...formulas], columnWidths: {}, rowHeights: {}, merges: [] };
  return { name: "Season", sheets: [sheet] };
}

/** For each group: lots, open, fresh, finished, outturn, leaf ratio and share, as SEASONTABLE has them. */
function worksheetFormulas({ groups }: SeasonRows, count: number): Cell[] {
  const names = [...new Set(groups)];
  const range = (letter: string) => `$${letter}$1:$${letter}$${count}`;
  const group = range("A");
  const fresh = range("B");
  const finished = range("C");
  return names.flatMap((name, row) => {
    const at = row + 1;
    const formulas = [
      `=COUNTIFS(${group},E${at},${fresh},">0",${finished},">0")`,
      `=COUNTIFS(${group},E${at},${fresh},">0",${finished},"")`,
      `=SUMIFS(${fresh},${group},E${at},${finished},">0")`,
      `=SUMIFS(${finished},${group},E${at},${fresh},">0")`,
      `=I${at}/H${at}`,
      `=H${at}/I${at}`,
      `=I${at}/SUM($I$1:$I$${names.length})`,
    ];
    return [
      { row, column: 4, value: name },
      ...formulas.map((formula, index) => ({ row, column: 5 + index, formula })),
    ];
  });
}
