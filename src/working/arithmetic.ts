/**
 * Plain arithmetic on values that the pane knows already, for arguments such as `B4-B5` or `SUM(B:B)`; whatever is more
 * than that is left to the workbook, and gives undefined.
 */
export function arithmetic(
  operator: string,
  operands: readonly (readonly (readonly unknown[])[])[],
): number | undefined {
  const all = operands.flat(2);
  switch (operator) {
    case "SUM":
    case "AVERAGE":
    case "MIN":
    case "MAX":
      return aggregate(operator, all);
  }
  const numbers = all.map((value) => (value === null ? 0 : value));
  if (numbers.length !== operands.length || !numbers.every((value) => typeof value === "number")) return undefined;
  return finite(combined(operator, numbers as number[]));
}

function combined(operator: string, [one = 0, other]: readonly number[]): number {
  if (other === undefined) return operator === "-" ? -one : operator === "%" ? one / 100 : one;
  switch (operator) {
    case "+":
      return one + other;
    case "-":
      return one - other;
    case "*":
      return one * other;
    case "/":
      return one / other;
    default:
      // Spreadsheets do not agree on 0 to the power of 0.
      return one === 0 && other === 0 ? Number.NaN : one ** other;
  }
}

/** Of cells: texts and blanks are passed over, and an error is none of our business. */
function aggregate(name: "SUM" | "AVERAGE" | "MIN" | "MAX", values: readonly unknown[]): number | undefined {
  if (values.some((value) => typeof value === "object" && value !== null)) return undefined;
  const numbers = values.filter((value) => typeof value === "number");
  const sum = numbers.reduce((total, value) => total + value, 0);
  if (name === "SUM") return sum;
  if (numbers.length === 0) return undefined;
  if (name === "AVERAGE") return sum / numbers.length;
  return numbers.reduce((found, value) => (name === "MIN" ? Math.min(found, value) : Math.max(found, value)));
}

const finite = (value: number): number | undefined => (Number.isFinite(value) ? value : undefined);
