import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { calculated, sampleBooks, sampleFile, withoutAddIn, withoutNeedOfAddIn } from "../sample-books/sample-books";
import type { Sheet, Workbook } from "../workbook/workbook";
import { readWorkbook } from "../xlsx/read-workbook";

/** Builds the sample workbooks into a folder, as the sources make them today. Gives the names of the files. */
export async function writeSamples(folder: string): Promise<readonly string[]> {
  const written: string[] = [];
  const write = (name: string, bytes: Uint8Array): void => {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), bytes);
    written.push(name);
  };
  for (const [name, build] of Object.entries(sampleBooks)) {
    const bytes = await sampleFile(build);
    write(name, bytes);
    const named = withoutNeedOfAddIn(bytes);
    if (named) write(`${withoutAddIn}/${name}`, named);
  }
  return written;
}

/** Numbers at ten decimals, so that the last bit of another machine's arithmetic does not count. */
const rounded = (_: string, value: unknown) => (typeof value === "number" ? Number(value.toFixed(10)) : value);
const contentOf = async (file: string): Promise<string> =>
  JSON.stringify(readWorkbook(new Uint8Array(readFileSync(file))), rounded);

/** Committed samples, which the workbook page is built with, that hold something else than those just built. */
export async function staleSamples(committed: string, built: string): Promise<string[]> {
  const stale: string[] = [];
  for (const name of Object.keys(sampleBooks)) {
    const file = join(committed, name);
    if (!existsSync(file) || (await contentOf(file)) !== (await contentOf(join(built, name)))) stale.push(name);
  }
  return stale;
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
