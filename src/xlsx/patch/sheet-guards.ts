/** Cells that cannot be changed alone, and why. */
import { addressOf } from "../../workbook/addresses";
import { AreaIndex } from "../../workbook/area-index";
import { sheetInFormula } from "../../workbook/references";
import type { Area } from "../../workbook/workbook";
import type { PackageParts } from "../container/package-parts";
import { elementAt } from "../container/xml-tree";
import { areaIn } from "../read/cell-address";
import { readTables } from "../read/tables";
import type { CellBond, FileRefusal } from "../refusals";
import type { AreaFormula, SheetPlaces } from "./sheet-places";
import { childrenOf, valueIn } from "./tag-scanner";

type Guarded = Area & { readonly bond: CellBond; readonly free?: { row: number; column: number } };

export class SheetGuards {
  readonly #sheet: string;
  readonly #guarded: AreaIndex<Guarded>;
  readonly #spills: AreaIndex<Area & { readonly formula: AreaFormula }>;

  constructor(parts: PackageParts, sheet: { readonly name: string; readonly path: string }, places: SheetPlaces) {
    this.#sheet = sheet.name;
    const { areaFormulas } = places;
    this.#guarded = new AreaIndex([
      ...areaFormulas.map(guardedFormula),
      ...mergesIn(places).map(guardedMerge),
      ...tableEdges(parts, sheet.path),
      ...pivots(parts, sheet.path),
    ]);
    this.#spills = new AreaIndex(
      areaFormulas.flatMap((formula) => (formula.is === "dynamic" ? [{ ...formula.area, formula }] : [])),
    );
  }

  /** Why what is typed into a cell cannot be saved; undefined where it can. */
  refusal(row: number, column: number): FileRefusal | undefined {
    const found = this.#guarded.at(row, column);
    if (!found || (found.free?.row === row && found.free.column === column)) return undefined;
    return { kind: "cell", place: `${sheetInFormula(this.#sheet)}!${addressOf(row, column)}`, bond: found.bond };
  }

  /** The area into which the formula in a cell spills. */
  spillFrom(row: number, column: number): Area | undefined {
    const found = this.#spills.at(row, column);
    return found && found.formula.row === row && found.formula.column === column ? found : undefined;
  }
}

function guardedFormula({ is, row, column, area }: AreaFormula): Guarded {
  if (is === "dataTable") return { ...area, bond: "table of inputs" };
  // The formula of a spill may be changed, and one that has its area for itself.
  const isAlone = is === "dynamic" || (area.rows === 1 && area.columns === 1);
  return {
    ...area,
    ...(isAlone && { free: { row, column } }),
    bond: { kind: is === "dynamic" ? "spill" : "array formula", holder: addressOf(row, column) },
  };
}

const guardedMerge = (area: Area): Guarded => ({
  ...area,
  free: area,
  bond: { kind: "merged", first: addressOf(area.row, area.column) },
});

function mergesIn(places: SheetPlaces): Area[] {
  const list = places.child("mergeCells");
  if (!list) return [];
  return childrenOf(places.text, list).map((merge) => areaIn(valueIn(places.tagOf(merge), "ref") ?? ""));
}

/** Headings and totals, which the file says twice. */
function tableEdges(parts: PackageParts, path: string): Guarded[] {
  return readTables(parts, path).flatMap(({ name, area, hasTotals }): Guarded[] => {
    const edge = (row: number, kind: "heading" | "total"): Guarded => ({
      ...area,
      row,
      rows: 1,
      bond: { kind, table: name },
    });
    return [edge(area.row, "heading"), ...(hasTotals ? [edge(area.row + area.rows, "total")] : [])];
  });
}

const pivots = (parts: PackageParts, path: string): Guarded[] =>
  pivotAreas(parts, path).map((area) => ({ ...area, bond: "pivot table" }));

/** The cells that the pivot tables of a sheet fill. */
export const pivotAreas = (parts: PackageParts, path: string): Area[] =>
  parts.relations(path).flatMap(({ kind, target }) => {
    const location = kind === "pivotTable" ? elementAt(parts.tree(target), "location")?.attributes.ref : undefined;
    return location === undefined ? [] : [areaIn(location)];
  });
