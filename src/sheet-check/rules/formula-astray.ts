import { placeOf } from "../../workbook/addresses";
import type { Finding } from "../finding";
import type { At } from "../headed-cells";
import type { KnownSheet } from "../known-sheet";

/** So many formulas below each other that point alike say how the column is meant, three quarters of them at the least. */
const fewestAlike = 3;
const shareAlike = 0.75;
/** So many cells without a formula, such as a blank line and headings again, part no column. */
const widestGap = 3;

interface Line {
  readonly along: "row" | "column";
  readonly cells: readonly At[];
}

interface Pointing {
  readonly at: At;
  readonly formula: string;
  /** What its references are along the line, as steps from its own cell. */
  readonly points: string;
}

/** A formula that is like those above and below it, or beside it, but for the row or the column that it points to. */
export function formulaAstray(sheet: KnownSheet): Finding[] {
  const found = new Map<string, Finding>();
  for (const { along, cells } of linesOf(sheet)) {
    for (const formulas of stretchesOf(cells, sheet)) {
      let run: Pointing[] = [];
      let shape = "";
      const end = () => {
        for (const finding of astrayIn(run)) found.set(`${finding.row} ${finding.column}`, finding);
        run = [];
      };
      for (const at of formulas) {
        const formula = sheet.formulaAt(at);
        const steps: number[] = [];
        const own = shapeOf(formula, along, (to) => steps.push(to - at[along]));
        if (own !== shape) end();
        shape = own;
        run.push({ at, formula, points: steps.join(" ") });
      }
      end();
    }
  }
  return [...found.values()];
}

/** The formulas of a line, parted where more than a few cells hold none; too few to show what is usual are left out. */
function stretchesOf(cells: readonly At[], { formulaAt, isSpilled }: KnownSheet): At[][] {
  const stretches: At[][] = [[]];
  let gap = 0;
  for (const at of cells) {
    const hasFormula = formulaAt(at) !== "" && !isSpilled(at);
    gap = hasFormula ? 0 : gap + 1;
    if (hasFormula) stretches.at(-1)?.push(at);
    else if (gap > widestGap && stretches.at(-1)?.length !== 0) stretches.push([]);
  }
  return stretches.filter(({ length }) => length > fewestAlike);
}

/** The columns of the sheet, whose formulas differ by rows, and its rows, whose formulas differ by columns. */
function linesOf({ area }: KnownSheet): Line[] {
  const rows = Array.from({ length: area.rows }, (_, down) => area.row + down);
  const columns = Array.from({ length: area.columns }, (_, right) => area.column + right);
  return [
    ...columns.map((column): Line => ({ along: "row", cells: rows.map((row) => ({ row, column })) })),
    ...rows.map((row): Line => ({ along: "column", cells: columns.map((column) => ({ row, column })) })),
  ];
}

function astrayIn(run: readonly Pointing[]): Finding[] {
  const counts = new Map<string, number>();
  for (const { points } of run) counts.set(points, (counts.get(points) ?? 0) + 1);
  const [usual, count] = [...counts].sort(([, one], [, other]) => other - one)[0] ?? ["", 0];
  if (count < fewestAlike || count < shareAlike * run.length) return [];
  return run.flatMap(({ at, formula, points }, index): Finding[] => {
    const isBeside = [run[index - 1], run[index + 1]].every((near) => near === undefined || near.points === usual);
    if (points === usual || !isBeside) return [];
    const like = (run[index - 1] ?? run[index + 1])?.formula ?? "";
    return [{ rule: "a formula that reads another row", ...at, details: { formula, like } }];
  });
}

/** A formula without the rows, or the columns, of its references, which are told; those held fast by a dollar stay, and so does text. */
const shapeOf = (formula: string, along: Line["along"], tell: (to: number) => void): string =>
  formula
    .split(/("[^"]*")/)
    .map((part, index) =>
      index % 2 === 1
        ? part
        : part.replace(
            /(?<![\w$.])(\$?)([A-Z]{1,3})(\$?)([1-9]\d{0,6})(?![\w(.])/gi,
            (whole, heldColumn, letters, heldRow, row) => {
              if (along === "row" ? heldRow : heldColumn) return whole;
              tell(placeOf(`${letters}${row}`)[along]);
              return along === "row" ? `${heldColumn}${letters}#` : `#${heldRow}${row}`;
            },
          ),
    )
    .join("");
