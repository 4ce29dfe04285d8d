/** How large a sheet is, and how much of one is read (ECMA-376 part 1 leaves the sizes to programs; these are Excel's). */
export const sheetRows = 1_048_576;
export const sheetColumns = 16_384;
export const longestFormula = 8_192;
export const longestText = 32_767;
/** In all sheets of a file together. */
export const mostCells = 1_000_000;
