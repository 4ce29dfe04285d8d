import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import type { Workbook } from "../workbook/workbook";
import { sampleFile, withoutAddIn, withoutNeedOfAddIn } from "./sample-books";

/**
 * Builds sample workbooks into a folder, as the sources make them today, and beside them those that need no add-in.
 * Gives the names of the files.
 */
export async function writeSamples(
  folder: string,
  books: Readonly<Record<string, () => Workbook>>,
): Promise<readonly string[]> {
  const written: string[] = [];
  const write = (name: string, bytes: Uint8Array): void => {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), bytes);
    written.push(name);
  };
  for (const [name, build] of Object.entries(books)) {
    const bytes = await sampleFile(build);
    write(name, bytes);
    const named = withoutNeedOfAddIn(bytes);
    if (named) write(`${withoutAddIn}/${name}`, named);
  }
  return written;
}
