import type { Block, CellContent, CellPlace, WrittenCell } from "./workbook-host";

/** Every place that a block needs for itself: the cells that it writes, and those that their answers spill into. */
export function placesOf(block: Block, at: CellPlace): { readonly row: number; readonly column: number }[] {
  const places = new Map<string, { row: number; column: number }>();
  for (const { row, column, spill = { rows: 1, columns: 1 } } of block.cells) {
    for (let down = 0; down < spill.rows; down += 1) {
      for (let right = 0; right < spill.columns; right += 1) {
        const place = { row: at.row + row + down, column: at.column + column + right };
        places.set(`${place.row},${place.column}`, place);
      }
    }
  }
  return [...places.values()].sort((one, other) => one.row - other.row || one.column - other.column);
}

/** Whether a cell is to hold a formula. */
export const holdsFormula = ({ content, isConstant }: Pick<WrittenCell, "content" | "isConstant">): boolean =>
  isFormula(content) && !isConstant;

/** Text that begins with an equals sign is a formula. */
export const isFormula = (content: CellContent): content is string =>
  typeof content === "string" && content.startsWith("=");
