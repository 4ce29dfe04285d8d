/** How wide and high a sheet's columns and rows are in pixels, as the files count them. */
import type { Area, Sheet } from "./workbook";

/** A digit of the usual font: what a character of width means. */
export const pixelsPerCharacter = 7;
export const defaultRowPixels = 20;
export const defaultColumnPixels = 64;

export const pixelsOfCharacters = (width: number): number => Math.round(width * pixelsPerCharacter);
export const pixelsOfPoints = (height: number): number => Math.round((height * 4) / 3);

/** The size of an area of cells. */
export function pixelsOf({ columnWidths, rowHeights }: Sheet, area: Area): { width: number; height: number } {
  let width = 0;
  for (let column = area.column; column < area.column + area.columns; column += 1) {
    const characters = columnWidths[column];
    width += characters === undefined ? defaultColumnPixels : pixelsOfCharacters(characters);
  }
  let height = 0;
  for (let row = area.row; row < area.row + area.rows; row += 1) {
    const points = rowHeights[row];
    height += points === undefined ? defaultRowPixels : pixelsOfPoints(points);
  }
  return { width, height };
}
