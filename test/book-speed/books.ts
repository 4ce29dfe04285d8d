/** Books of an invented cooperative, as large as they are wanted. */
import { handwritten } from "../xlsx/handwritten-book";

const styles =
  '<numFmts count="1"><numFmt numFmtId="164" formatCode="yyyy-mm-dd"/></numFmts><fonts count="1"><font/></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders><cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="2"><xf numFmtId="0"/><xf numFmtId="164" applyNumberFormat="1"/></cellXfs>';

const text = (at: string, words: string): string => `<c r="${at}" t="inlineStr"><is><t>${words}</t></is></c>`;
const number = (at: string, value: number, style = 0): string => `<c r="${at}" s="${style}"><v>${value}</v></c>`;
const formula = (at: string, words: string): string => `<c r="${at}"><f>${words}</f></c>`;

const plots = ["upper terrace", "stream", "old hedge", "by the road"];

/** The same numbers whenever they are asked for, between 0 and 1. */
const scattered = (index: number): number => ((index * 7919 + 104_729) % 10_007) / 10_007;

/** Lots of one member: a lot, a day, a plot, leaf and tea, with a remark. Every second member weighs in kilograms. */
export function bookOfLots(member: number, lots: number): Uint8Array {
  const inKilograms = member % 2 === 1;
  const unit = inKilograms ? "kg" : "g";
  const scale = inKilograms ? 1000 : 1;
  const heads = ["Lot", "Picked", "Plot", `Fresh, ${unit}`, `Finished, ${unit}`, "Remark"];
  const rows = Array.from({ length: lots }, (_, index) => {
    const row = index + 2;
    const leaf = 400 + Math.round(1600 * scattered(index + member * 31));
    const tea = Math.round(leaf * (0.2 + 0.05 * scattered(index * 3 + member)));
    return `<row r="${row}">${[
      text(`A${row}`, `M${member}-${index + 1}`),
      number(`B${row}`, 45_370 + (index % 90), 1),
      text(`C${row}`, plots[index % plots.length] as string),
      number(`D${row}`, leaf / scale),
      index % 50 === 49 ? "" : number(`E${row}`, tea / scale),
      index % 5 === 0 ? text(`F${row}`, "rain on the leaf") : "",
    ].join("")}</row>`;
  });
  const heading = `<row r="1">${heads.map((words, column) => text(`${"ABCDEF"[column]}1`, words)).join("")}</row>`;
  return handwritten({ sheets: { Lots: `<sheetData>${heading}${rows.join("")}</sheetData>` }, styles });
}

/** Ten thousand and more formulas of ours, as a book has them: each row asks its own weights. */
export function bookOfFormulas(formulas: number): Uint8Array {
  const rows = Array.from({ length: formulas }, (_, index) => {
    const row = index + 1;
    const weighed = [number(`A${row}`, 400 + (index % 900)), number(`B${row}`, 0.74 + (index % 7) / 200)];
    return `<row r="${row}">${weighed.join("")}${formula(`C${row}`, `_xldudf_TEA_TARGETWEIGHT(A${row},B${row},0.6)`)}</row>`;
  });
  return handwritten({ sheets: { Lots: `<sheetData>${rows.join("")}</sheetData>` }, styles });
}

/** Cells of numbers and a text in each row, twenty columns wide. */
export function bookOfCells(cells: number): Uint8Array {
  const columns = [..."ABCDEFGHIJKLMNOPQRST"];
  const rows = Array.from({ length: Math.ceil(cells / columns.length) }, (_, index) => {
    const row = index + 1;
    const line = columns.map((column, place) =>
      place === 0
        ? text(`${column}${row}`, `lot ${row}`)
        : number(`${column}${row}`, Math.round(scattered(row * 20 + place) * 1e4) / 10),
    );
    return `<row r="${row}">${line.join("")}</row>`;
  });
  return handwritten({ sheets: { Lots: `<sheetData>${rows.join("")}</sheetData>` }, styles });
}
