import type { Area } from "./workbook";

/** Rows that share a list of the areas that reach into them. */
const bandRows = 64;
/** Areas over more bands than this are few, and have a list of their own. */
const mostBands = 32;

/** Finds the areas that hold a cell without asking every one of them. */
export class AreaIndex<Found extends Area> {
  readonly #bands = new Map<number, Found[]>();
  readonly #tall: Found[] = [];

  constructor(areas: readonly Found[]) {
    for (const area of areas) {
      const [first, last] = [Math.floor(area.row / bandRows), Math.floor((area.row + area.rows - 1) / bandRows)];
      if (last - first >= mostBands) this.#tall.push(area);
      else for (let band = first; band <= last; band += 1) this.#bandAt(band).push(area);
    }
  }

  /** The first area that holds the cell. */
  at(row: number, column: number): Found | undefined {
    const holds = (area: Found) =>
      row >= area.row && row < area.row + area.rows && column >= area.column && column < area.column + area.columns;
    return this.#bands.get(Math.floor(row / bandRows))?.find(holds) ?? this.#tall.find(holds);
  }

  #bandAt(band: number): Found[] {
    const known = this.#bands.get(band);
    if (known) return known;
    const made: Found[] = [];
    this.#bands.set(band, made);
    return made;
  }
}
