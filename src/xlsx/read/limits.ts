/** How much of a sheet is read. */
export const longestFormula = 8_192;
export const longestText = 32_767;
/** In all sheets of a file together. */
export const mostCells = 1_000_000;
