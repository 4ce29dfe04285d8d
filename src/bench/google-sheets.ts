import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createContext, runInContext } from "node:vm";
import { buildGoogleSheets, sheetsScript } from "../build/google-sheets";
import { catalogue } from "../core/catalogue";
import { plainName } from "../core/describe";
import { column, seasonRows } from "./season-rows";
import { timeOf } from "./side-by-side";

export const sheetRows = 30_000;

interface SheetCall {
  readonly name: string;
  readonly milliseconds: number;
}

/** Every function that answers row by row, and those that read a book, each once on 30,000 rows; the slowest first. */
export async function callsInGoogleSheets(): Promise<readonly SheetCall[]> {
  const script = await builtScript();
  const { groups, fresh, finished } = seasonRows(sheetRows, 12);
  const books = [
    { name: plainName("SEASONTABLE"), given: [groups, fresh, finished].map(column<string | number>) },
    { name: plainName("LOTFLAGS"), given: [fresh, finished].map(column) },
  ];
  return [...rowByRow(), ...books]
    .map(({ name, given }) => ({ name, milliseconds: timeOf(() => inItsOwnContext(script, name, given)) }))
    .sort((one, other) => other.milliseconds - one.milliseconds);
}

async function builtScript(): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), "tea-bench-"));
  try {
    await buildGoogleSheets(folder);
    return readFileSync(join(folder, sheetsScript), "utf8");
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Each with the numbers of its first example in every row. */
const rowByRow = () =>
  catalogue
    .filter(({ spec }) => spec.parameters.every(({ takes }) => takes === "cell"))
    .filter(({ spec: { result } }) => result.shape === "cell" || result.shape === "row")
    .map(({ spec, page }) => ({
      name: plainName(spec.id),
      given: (page.examples[0]?.given ?? []).map((cell) => Array.from({ length: sheetRows }, () => [cell])),
    }));

/** As Google runs it: the script is read anew, in an engine that has never seen it. */
function inItsOwnContext(script: string, name: string, given: readonly unknown[]): void {
  const context = createContext({ given });
  runInContext(script, context);
  const rows: unknown = runInContext(`${name}(...given).length`, context);
  if (typeof rows !== "number" || rows < 2) throw new Error(`${name} gave ${rows} rows`);
}
