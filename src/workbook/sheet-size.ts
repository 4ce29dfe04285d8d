/** How large a sheet is (ECMA-376 part 1 leaves the sizes to programs; these are Excel's). */
export const sheetRows = 1_048_576;
export const sheetColumns = 16_384;

/** A place within a sheet as one number. */
export const placeNumber = (row: number, column: number): number => row * sheetColumns + column;

export const placeOfNumber = (place: number): { row: number; column: number } => ({
  row: Math.floor(place / sheetColumns),
  column: place % sheetColumns,
});
