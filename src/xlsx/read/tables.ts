/** The tables of a sheet, as formulas name them. */
import type { Table } from "../../workbook/workbook";
import type { PackageParts } from "../container/package-parts";
import { areaIn } from "./cell-address";

/** A row of totals under a table is not part of its area. A table without headings is none for formulas here. */
export function readTables(parts: PackageParts, sheetPath: string): Table[] {
  return parts.relations(sheetPath).flatMap(({ kind, target }) => {
    const {
      displayName: name,
      ref,
      headerRowCount,
      totalsRowCount,
    } = (kind === "table" && parts.tree(target)?.attributes) || {};
    if (name === undefined || ref === undefined || headerRowCount === "0") return [];
    const area = areaIn(ref);
    const hasTotals = Number(totalsRowCount ?? 0) > 0;
    return [{ name, area: hasTotals ? { ...area, rows: area.rows - 1 } : area, ...(hasTotals && { hasTotals }) }];
  });
}
