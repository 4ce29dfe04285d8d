import type { Finding } from "../finding";
import type { KnownSheet } from "../known-sheet";

/** So many formulas below each other that point alike say how the column is meant, three quarters of them at the least. */
const fewestAlike = 3;
const shareAlike = 0.75;

/** A formula that is like those above and below it but for the row that it points to. */
export function formulaAstray({ area, formulaAt, isSpilled }: KnownSheet): Finding[] {
  const found: Finding[] = [];
  for (let column = area.column; column < area.column + area.columns; column += 1) {
    let run: { row: number; formula: string; points: string }[] = [];
    let shape = "";
    const end = () => {
      found.push(...astrayIn(run, column));
      run = [];
    };
    for (let row = area.row; row < area.row + area.rows; row += 1) {
      const at = { row, column };
      const formula = isSpilled(at) ? "" : formulaAt(at);
      const own = pointsOf(formula, () => "#");
      if (formula === "" || own !== shape) end();
      shape = own;
      if (formula !== "") run.push({ row, formula, points: pointsOf(formula, (to) => `[${to - row - 1}]`) });
    }
    end();
  }
  return found;
}

function astrayIn(run: readonly { row: number; formula: string; points: string }[], column: number): Finding[] {
  const counts = new Map<string, number>();
  for (const { points } of run) counts.set(points, (counts.get(points) ?? 0) + 1);
  const [usual, count] = [...counts].sort(([, one], [, other]) => other - one)[0] ?? ["", 0];
  if (count < fewestAlike || count < shareAlike * run.length) return [];
  return run.flatMap(({ row, formula, points }, index): Finding[] => {
    const isBeside = [run[index - 1], run[index + 1]].every((near) => near === undefined || near.points === usual);
    if (points === usual || !isBeside) return [];
    const like = (run[index - 1] ?? run[index + 1])?.formula ?? "";
    return [{ rule: "a formula that reads another row", row, column, details: { formula, like } }];
  });
}

/** A formula with the rows of its references exchanged; those held fast by a dollar stay, and so does text. */
const pointsOf = (formula: string, rowAs: (row: number) => string): string =>
  formula
    .split(/("[^"]*")/)
    .map((part, index) =>
      index % 2 === 1
        ? part
        : part.replace(
            /(?<![\w$.])(\$?[A-Z]{1,3})(\d{1,7})(?![\w(.])/gi,
            (_, letters, row) => letters + rowAs(Number(row)),
          ),
    )
    .join("");
