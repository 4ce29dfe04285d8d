import type { Workbook } from "../../workbook/workbook";
import type { ReadFile } from "../../xlsx/read-workbook";

const spreadsheet = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

// Reading and writing .xlsx is large: each is fetched when it is first wanted, or before that (fetch-ahead.ts).

export async function readXlsx(content: ArrayBuffer, name: string): Promise<ReadFile> {
  const { readFile } = await import("../../xlsx/read-workbook");
  const { workbook, notShown } = readFile(new Uint8Array(content));
  return { workbook: { ...workbook, name }, notShown };
}

export async function downloadXlsx(workbook: Workbook, fileName: string): Promise<void> {
  const { writeWorkbook } = await import("../../xlsx/write-workbook");
  download(new Blob([new Uint8Array(await writeWorkbook(workbook))], { type: spreadsheet }), fileName);
}

/** For kept work that this page cannot read: everything in it, as text. */
export function downloadAsText(content: unknown, fileName: string): void {
  download(new Blob([JSON.stringify(content, null, 1)], { type: "application/json" }), fileName);
}

function download(content: Blob, fileName: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(content);
  link.download = fileName;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
