/** What `npm run calibrate` measured, as docs/how-sure.json keeps it. */
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { buildSync, transformSync } from "esbuild";

/** A column counts how often something was so, or averages a number, or the squares of one. */
export interface Column {
  readonly name: string;
  readonly of: "share" | "mean" | "root mean square";
}

/** Which columns of which table a picture shows, and where it draws a line to compare with. */
export interface PictureOf {
  readonly title: string;
  readonly table: number;
  readonly columns: readonly string[];
  /** What was asked for, of 100. */
  readonly asked?: number;
  /** Where its scale begins, when not at 0. */
  readonly from?: number;
}

export interface MeasuredRow {
  readonly label: string;
  /** Sum over all trials, for each column. */
  readonly sums: readonly number[];
  /** Sum of the squares, where that is not the sum itself. */
  readonly squares: readonly number[];
  /** Sum over the first tenth of the trials, which the tests work out again. */
  readonly tenth: readonly number[];
}

export interface MeasuredTable {
  readonly title: string;
  readonly rowsAre: string;
  readonly columns: readonly Column[];
  readonly trials: number;
  readonly rows: readonly MeasuredRow[];
}

export interface MeasuredStudy {
  readonly functions: readonly string[];
  /** The file of the study, which calls the functions. */
  readonly file: string;
  /** Of that file and of all that it runs: another hash, and the numbers are stale. */
  readonly hash: string;
  readonly seed: number;
  readonly says: readonly string[];
  readonly tables: readonly MeasuredTable[];
  readonly picture: PictureOf;
}

export const measuredFile = "docs/how-sure.json";

export const measuredStudies = (project: string): readonly MeasuredStudy[] =>
  JSON.parse(readFileSync(join(project, measuredFile), "utf8")) as MeasuredStudy[];

/**
 * The hash of what a study runs: its file and all that it reaches, without comments, pages, kinds of quantities and
 * refusals, whose words change no number.
 */
export const hashOf = (project: string, file: string): string =>
  createHash("sha256").update(runningCode(project, file)).digest("hex").slice(0, 16);

/** A page as the bundler writes it. It spreads objects, and for the bundler that could do something. */
const page = /^var \w+Page = \{\n.*?^\};\n/gms;

/** What says how arguments are called, checked and refused, and works out no answer. */
const outside = ["define", "quantities", "errors", "english-refusals", "refusals", "shown", "entry"].map(
  (name) => `*/${name}`,
);

/** The code of a study in one piece: pages are taken out first, then what only they used. */
export function runningCode(project: string, file: string): string {
  const [bundle] = buildSync({
    absWorkingDir: resolve(project),
    entryPoints: [file],
    bundle: true,
    format: "esm",
    write: false,
    external: outside,
  }).outputFiles;
  const withoutPages = (bundle?.text ?? "").replaceAll(page, "");
  return transformSync(withoutPages, { minify: true, treeShaking: true, format: "esm" }).code;
}

/** Studies whose numbers were measured with other code than there is now. */
export const staleStudies = (project: string): string[] =>
  measuredStudies(project)
    .filter(({ file, hash }) => hashOf(project, file) !== hash)
    .map(({ functions }) => functions.join(", "));

/** What a cell shows: of 100 for a share, else a number; with its standard error in the same unit. */
export function shownCell(table: MeasuredTable, row: MeasuredRow, column: number): { value: number; error: number } {
  const { trials } = table;
  const [sum, square] = [row.sums[column] as number, row.squares[column] as number];
  const mean = sum / trials;
  const spread = Math.sqrt(Math.max(0, square / trials - mean ** 2) / trials);
  switch ((table.columns[column] as Column).of) {
    case "share":
      return { value: 100 * mean, error: 100 * spread };
    case "mean":
      return { value: mean, error: spread };
    case "root mean square":
      return { value: Math.sqrt(mean), error: mean === 0 ? 0 : spread / (2 * Math.sqrt(mean)) };
  }
}
