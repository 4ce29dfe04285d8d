import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { filesIn } from "../build/folders";
import { calculated } from "../sample-books/sample-books";
import type { Sheet, Workbook } from "../workbook/workbook";
import { readWorkbook } from "../xlsx/read-workbook";

/** Numbers at ten decimals, so that the last bit of another machine's arithmetic does not count. */
const rounded = (_: string, value: unknown) => (typeof value === "number" ? Number(value.toFixed(10)) : value);
const contentOf = async (file: string): Promise<string> =>
  JSON.stringify(readWorkbook(new Uint8Array(readFileSync(file))), rounded);

/** Committed samples, which the workbook page is built with, that hold something else than those just built. */
export async function staleSamples(
  names: readonly string[],
  { committed, built }: { readonly committed: string; readonly built: string },
): Promise<string[]> {
  const stale: string[] = [];
  for (const name of names) {
    const file = join(committed, name);
    if (!existsSync(file) || (await contentOf(file)) !== (await contentOf(join(built, name)))) stale.push(name);
  }
  return stale;
}

/** What is wrong with the workbooks of an unpacked release. */
export async function faultsOfSamples(folder: string): Promise<string[]> {
  const samples = filesIn(folder).filter((path) => path.endsWith(".xlsx"));
  if (!samples.some((path) => path.startsWith("sample-workbooks/"))) return ["there are no sample workbooks"];
  const faults: string[] = [];
  for (const path of samples) {
    const found = await faultsOfSample(new Uint8Array(readFileSync(join(folder, path))));
    faults.push(...found.map((fault) => `${path}: ${fault}`));
  }
  return faults;
}

/** What is wrong with a workbook as a maker gets it: it has to open, and to calculate without a new error. */
export async function faultsOfSample(bytes: Uint8Array): Promise<string[]> {
  let book: Workbook;
  try {
    book = readWorkbook(bytes);
  } catch (problem) {
    return [(problem as Error).message];
  }
  const errors = errorsIn(book);
  const isNew = ([place]: [string, string]): boolean => !errors.has(place);
  return [...errorsIn(await calculated(book))].filter(isNew).map(([place, error]) => `${place} calculates to ${error}`);
}

/** The errors of a workbook by the places of their cells; a text that reads like an error is none. */
const errorsIn = ({ sheets }: Workbook): Map<string, string> => new Map(sheets.flatMap(errorsOnSheet));

const errorsOnSheet = ({ name, cells }: Sheet): [string, string][] =>
  cells
    .filter(({ value, isText }) => !isText && /^#[A-Z_]+(\/[0A])?[!?]?$/.test(String(value)))
    .map(({ row, column, formula, value }) => [
      `${name}, row ${row + 1}, column ${column + 1}${formula ? ` (${formula})` : ""}`,
      String(value),
    ]);
