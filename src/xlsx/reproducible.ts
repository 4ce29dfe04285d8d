import JSZip from "jszip";

/**
 * Stands for an empty text while a file is written: the library writes an empty cached result as the number 0. A
 * private-use character, which no text of a workbook holds.
 */
export const emptyText = "\uE07A";

/**
 * Stands for the formula of a cell that has none: the library writes errors only as the results of formulas. A
 * private-use character too.
 */
export const noFormula = "\uE07B";

/** The file's own clock: any moment does, as long as it is always the same. */
const writtenAt = "2020-01-01T00:00:00Z";

/**
 * The same file without the moment of its writing, so that a rebuilt workbook is equal byte for byte, and with
 * nothing in place of what stood for empty texts and formulas.
 */
export async function reproducible(file: Uint8Array): Promise<Uint8Array> {
  const given = await JSZip.loadAsync(file);
  const rewritten = new JSZip();
  for (const [path, part] of Object.entries(given.files)) {
    const text = (await part.async("string")).replaceAll(emptyText, "").replaceAll(`<f>${noFormula}</f>`, "");
    const timeless = path === "docProps/core.xml" ? text.replace(/\d{4}-\d\d-\d\dT[\d:]+Z/g, writtenAt) : text;
    const content = path.startsWith("xl/charts/") ? inOrder(timeless) : timeless;
    rewritten.file(path, content, { date: new Date(writtenAt), createFolders: false });
  }
  return rewritten.generateAsync({ type: "uint8array", compression: "DEFLATE" });
}

/** The library writes the dots of a series before its line; the file format wants the line first. */
const inOrder = (chart: string): string =>
  chart.replace(/(<c:marker>(?:(?!<\/c:marker>).)*<\/c:marker>)(<c:spPr>.*?<\/c:spPr>)/g, "$2$1");
