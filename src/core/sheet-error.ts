/** An error of the sheet, as it stands in a cell of a book. */
export interface SheetError {
  readonly code: string;
  readonly message: string;
}

export const isSheetError = (value: unknown): value is SheetError =>
  typeof value === "object" &&
  value !== null &&
  typeof (value as Partial<SheetError>).code === "string" &&
  typeof (value as Partial<SheetError>).message === "string";
