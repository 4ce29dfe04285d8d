import { readdirSync, statSync } from "node:fs";
import { join } from "node:path";

/** The workbooks that are named, and those in the folders that are named, folders inside them included. */
export function filesIn(paths: readonly string[]): string[] {
  return paths.flatMap((path) => {
    if (!statSync(path).isDirectory()) return [path];
    return readdirSync(path, { withFileTypes: true })
      .sort((one, other) => (one.name < other.name ? -1 : 1))
      .flatMap((entry) => {
        const inside = join(path, entry.name);
        if (entry.isDirectory()) return filesIn([inside]);
        // What a spreadsheet program has open lies beside it under such a name.
        return /\.(?:xlsx|xlsm)$/i.test(entry.name) && !entry.name.startsWith("~$") ? [inside] : [];
      });
  });
}
