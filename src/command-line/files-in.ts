import { existsSync, readdirSync, statSync } from "node:fs";
import { basename, dirname, join } from "node:path";

/**
 * The workbooks that a command is to work on: those that are named, also by `books/*.xlsx`, and those in the folders that
 * are named, folders inside them included; or why there are none.
 */
export function booksAt(named: readonly string[]): readonly string[] | string {
  const paths = expanded(named);
  const missing = paths.find((path) => !existsSync(path));
  if (missing !== undefined) return `there is no ${missing}`;
  const files = filesIn(paths);
  return files.length === 0 ? "there is no .xlsx file there" : files;
}

function filesIn(paths: readonly string[]): string[] {
  return paths.flatMap((path) => {
    if (!statSync(path).isDirectory()) return isMarkOfOpenFile(path) ? [] : [path];
    return readdirSync(path, { withFileTypes: true })
      .sort((one, other) => (one.name < other.name ? -1 : 1))
      .flatMap((entry) => {
        const inside = join(path, entry.name);
        if (entry.isDirectory()) return filesIn([inside]);
        return /\.(?:xlsx|xlsm)$/i.test(entry.name) && !isMarkOfOpenFile(inside) ? [inside] : [];
      });
  });
}

/** What a spreadsheet program has open lies beside it under such a name. */
const isMarkOfOpenFile = (path: string): boolean => basename(path).startsWith("~$");

/** With what `books/*.xlsx` stands for, where the command window leaves that to the program, as those of Windows do. */
const expanded = (paths: readonly string[]): string[] =>
  paths.flatMap((path) => (path.includes("*") && !existsSync(path) ? matching(path) : [path]));

/** The path itself where nothing matches: to be named as missing. */
function matching(path: string): string[] {
  const folder = dirname(path);
  if (!existsSync(folder)) return [path];
  const parts = basename(path)
    .split("*")
    .map((part) => part.replace(/[.+?^${}()|[\]\\]/g, "\\$&"));
  const wanted = new RegExp(`^${parts.join(".*")}$`, "i");
  const found = readdirSync(folder).filter((name) => wanted.test(name));
  return found.length === 0 ? [path] : found.sort().map((name) => join(folder, name));
}
