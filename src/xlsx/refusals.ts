/**
 * Why a file is not opened, or a cell of it not changed, as data, so that every language has words of its own for it. What
 * comes out of a file is cut to a length that a sentence can hold where the refusal is made.
 */
import type { Damage } from "./damage";

export type FileRefusal =
  | FixedFileRefusal
  | { readonly kind: "damaged"; readonly how: Damage }
  | { readonly kind: "large when unpacked"; readonly megabytes: number }
  | { readonly kind: "packed in another way"; readonly method: number }
  | { readonly kind: "leads out of it"; readonly name: string }
  | { readonly kind: "many elements"; readonly path: string; readonly most: number }
  | { readonly kind: "document type"; readonly path: string }
  | { readonly kind: "encoding"; readonly encoding: string; readonly path: string }
  | { readonly kind: "long text" | "long formula"; readonly length: number; readonly most: number }
  | { readonly kind: "place outside"; readonly place: PlaceInFile; readonly rows: number; readonly columns: number }
  | { readonly kind: "cell outside"; readonly rows: number; readonly columns: number }
  | { readonly kind: "no such sheet"; readonly sheet: string }
  | { readonly kind: "name of its own"; readonly name: string }
  /** `place`: `Lots!B4`. */
  | { readonly kind: "cell"; readonly place: string; readonly bond: CellBond }
  | { readonly kind: "formula"; readonly place: string; readonly problem: FormulaProblem };

export type FixedFileRefusal =
  | "empty"
  | "no .xlsx"
  | "OpenDocument"
  | "binary .xlsb"
  | "old .xls"
  | "text or presentation"
  | "some archive"
  | "archive without a workbook"
  | "password"
  | "macros alone"
  | "no sheet of cells"
  | "many texts"
  | "many cells"
  | "many merges and the like";

/** As the file writes it. */
export type PlaceInFile = { readonly row: string } | { readonly address: string };

/** Why a cell cannot be changed alone. */
export type CellBond =
  | "table of inputs"
  | "pivot table"
  | { readonly kind: "spill" | "array formula"; readonly holder: string }
  | { readonly kind: "merged"; readonly first: string }
  | { readonly kind: "heading" | "total"; readonly table: string };

/** Why a formula that was typed is not put into a file. */
export type FormulaProblem =
  | "not whole"
  | "another workbook"
  | "too long"
  | { readonly kind: "sign"; readonly sign: string }
  | { readonly kind: "sheet"; readonly name: string }
  | { readonly kind: "table"; readonly reference: string };
