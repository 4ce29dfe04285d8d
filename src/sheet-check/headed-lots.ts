/** Lots by what is written over and beside them alone, whatever their formulas say. */
import type { ReadArea } from "../host/workbook-host";
import type { Area } from "../workbook/workbook";
import { headedCells } from "./headed-cells";
import type { KnownCell } from "./known-cell";
import { insideOf } from "./known-sheet";
import { type Lot, lotsOf } from "./lots";
import type { RoleOf } from "./roles";

interface HeadedLots {
  readonly lots: readonly Lot[];
  readonly cells: readonly KnownCell[];
}

/** With lots whose weights are words as well: it is for the asker to say what is wrong with them. */
export function headedLots(area: ReadArea, spills: readonly Area[], roleOf: RoleOf): HeadedLots {
  const cells = headedCells(area, insideOf(spills, area), { roleOf, keepsWords: true })
    .map((cell): KnownCell => {
      const [down, right] = [cell.row - area.row, cell.column - area.column];
      const typed = (area.formulas[down]?.[right] ?? "") === "";
      return {
        ...cell,
        value: area.values[down]?.[right] ?? "",
        typed,
        fedAs: undefined,
        share: undefined,
      };
    })
    .sort((one, other) => one.row - other.row || one.column - other.column);
  return { lots: lotsOf(cells, [], () => undefined), cells };
}
