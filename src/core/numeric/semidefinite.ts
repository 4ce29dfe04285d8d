/** A factored symmetric matrix without negative eigenvalues, for solving many right-hand sides. */
interface Factored {
  /** Rows that do not follow from the rows before them. */
  readonly rank: number;
  /** For a row that follows from earlier ones, the solution is 0 and what it contradicts them by is left over. */
  readonly solve: (right: readonly number[]) => { readonly solution: number[]; readonly leftovers: number[] };
}

/** Below this share of its diagonal a pivot is what rounding left of nothing. */
const nothing = 1e-13;

/**
 * M = L·D·Lᵀ without square roots, rows that depend on earlier ones passed over. `band` is how far from the diagonal
 * entries may stand: 1 for a chain of balances, size − 1 for any matrix.
 */
export function factored(size: number, band: number, entry: (row: number, column: number) => number): Factored {
  const pivots: number[] = [];
  const lower: Float64Array[] = [];
  const first = (row: number): number => Math.max(0, row - band);

  for (let row = 0; row < size; row += 1) {
    const factors = new Float64Array(row);
    lower.push(factors);
    const diagonal = entry(row, row);
    let pivot = diagonal;
    for (let column = first(row); column < row; column += 1) {
      const above = lower[column] as Float64Array;
      let value = entry(row, column);
      for (let inner = first(row); inner < column; inner += 1) {
        value -= at(factors, inner) * at(above, inner) * at(pivots, inner);
      }
      factors[column] = at(pivots, column) === 0 ? 0 : value / at(pivots, column);
      pivot -= at(factors, column) ** 2 * at(pivots, column);
    }
    pivots.push(pivot > nothing * diagonal ? pivot : 0);
  }

  const solve: Factored["solve"] = (right) => {
    const solution: number[] = [];
    for (let row = 0; row < size; row += 1) {
      let value = at(right, row);
      for (let column = first(row); column < row; column += 1) {
        value -= at(lower[row] as Float64Array, column) * at(solution, column);
      }
      solution.push(value);
    }
    const leftovers = solution.map((value, row) => (at(pivots, row) === 0 ? value : 0));
    for (let row = size - 1; row >= 0; row -= 1) {
      let value = at(pivots, row) === 0 ? 0 : at(solution, row) / at(pivots, row);
      for (let below = row + 1; below < size && below <= row + band; below += 1) {
        value -= at(lower[below] as Float64Array, row) * at(solution, below);
      }
      solution[row] = at(pivots, row) === 0 ? 0 : value;
    }
    return { solution, leftovers };
  };

  return { rank: pivots.filter((pivot) => pivot > 0).length, solve };
}

const at = (list: ArrayLike<number>, place: number): number => list[place] as number;
