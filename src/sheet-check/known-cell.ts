import type { CellContent } from "../host/workbook-host";
import type { TeaCall } from "../working/formula-reading";
import type { At } from "./headed-cells";
import type { Role } from "./roles";
import type { InUnit, WeightUnit } from "./units";

/** A cell that is known to hold something. */
export interface KnownCell extends At {
  readonly role: Role;
  readonly value: CellContent;
  /** Whether it was typed, and does not come from a formula. */
  readonly typed: boolean;
  /** What stands over its column, or at its left. */
  readonly heading: string | undefined;
  /** What the functions that read it take there; undefined where none reads it. */
  readonly fedAs: Role | undefined;
  /** The unit of weight that its heading, label or format names. */
  readonly unit: WeightUnit | undefined;
  /** The row of its heading; undefined for a label and for a function. */
  readonly headingRow: number | undefined;
  /** Cells that hold the same of one lot after another share one; undefined where a cell stands alone. */
  readonly series: string | undefined;
  /** A moisture as a share: 0.76 also where its heading says percent and 76 stands there. */
  readonly share: number | undefined;
}

/** A formula with functions of the catalogue. */
export interface TeaFormula extends At {
  readonly calls: readonly TeaCall[];
  readonly value: CellContent;
  /** Cells of this sheet that it reads for itself, no whole ranges. */
  readonly reads: readonly (At & {
    readonly role: Role | undefined;
    readonly series: string | undefined;
    readonly takesNumber: boolean;
  })[];
}

/** A weight with its unit, for a comparison; a cell without a number weighs nothing. */
export const weightOf = ({ value, unit }: KnownCell): InUnit => ({
  value: typeof value === "number" ? value : 0,
  unit,
});
