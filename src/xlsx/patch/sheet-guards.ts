/** Cells that cannot be changed alone, and why, in one sentence. */
import { addressOf } from "../../workbook/addresses";
import { AreaIndex } from "../../workbook/area-index";
import { sheetInFormula } from "../../workbook/references";
import type { Area } from "../../workbook/workbook";
import type { PackageParts } from "../container/package-parts";
import { elementAt } from "../container/xml-tree";
import { areaIn } from "../read/cell-address";
import { readTables } from "../read/tables";
import type { AreaFormula, SheetPlaces } from "./sheet-places";
import { childrenOf, valueIn } from "./tag-scanner";

type Guarded = Area & { readonly why: (place: string) => string; readonly free?: { row: number; column: number } };

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
  refusal(row: number, column: number): string | undefined {
    const found = this.#guarded.at(row, column);
    if (!found || (found.free?.row === row && found.free.column === column)) return undefined;
    return found.why(`${sheetInFormula(this.#sheet)}!${addressOf(row, column)}`);
  }

  /** The area into which the formula in a cell spills. */
  spillFrom(row: number, column: number): Area | undefined {
    const found = this.#spills.at(row, column);
    return found && found.formula.row === row && found.formula.column === column ? found : undefined;
  }
}

const inTheProgram = "do that in your spreadsheet program";

function guardedFormula({ is, row, column, area }: AreaFormula): Guarded {
  const holder = addressOf(row, column);
  if (is === "dataTable") {
    return {
      ...area,
      why: (place) => `${place} belongs to a table of inputs, which is changed as a whole: ${inTheProgram}.`,
    };
  }
  // The formula of a spill may be changed, and one that has its area for itself.
  const isAlone = is === "dynamic" || (area.rows === 1 && area.columns === 1);
  return {
    ...area,
    ...(isAlone && { free: { row, column } }),
    why: (place) =>
      is === "dynamic"
        ? `${place} is filled by the formula in ${holder}: change that one.`
        : `${place} belongs to the array formula in ${holder}, which is changed as a whole: ${inTheProgram}.`,
  };
}

const guardedMerge = (area: Area): Guarded => ({
  ...area,
  free: area,
  why: (place) => `${place} lies under merged cells: change ${addressOf(area.row, area.column)}, the first of them.`,
});

function mergesIn(places: SheetPlaces): Area[] {
  const list = places.child("mergeCells");
  if (!list) return [];
  return childrenOf(places.text, list).map((merge) => areaIn(valueIn(places.tagOf(merge), "ref") ?? ""));
}

function tableEdges(parts: PackageParts, path: string): Guarded[] {
  return readTables(parts, path).flatMap(({ name, area, hasTotals }): Guarded[] => {
    const edge = (row: number, what: string): Guarded => ({
      ...area,
      row,
      rows: 1,
      why: (place) => `${place} is ${what} of the table ${name}, which the file says twice: ${inTheProgram}.`,
    });
    return [edge(area.row, "a heading"), ...(hasTotals ? [edge(area.row + area.rows, "a total")] : [])];
  });
}

const pivots = (parts: PackageParts, path: string): Guarded[] =>
  pivotAreas(parts, path).map((area) => ({
    ...area,
    why: (place) => `${place} belongs to a pivot table, which fills it: ${inTheProgram}.`,
  }));

/** The cells that the pivot tables of a sheet fill. */
export const pivotAreas = (parts: PackageParts, path: string): Area[] =>
  parts.relations(path).flatMap(({ kind, target }) => {
    const location = kind === "pivotTable" ? elementAt(parts.tree(target), "location")?.attributes.ref : undefined;
    return location === undefined ? [] : [areaIn(location)];
  });
