import type { Compilation } from "webpack";

/** Where the packages lie of which a bundle holds code, `node_modules/a`: each once, in an order of its own. */
export const bundledPackages = ({ modules }: Compilation): string[] =>
  packagesOf([...modules].map((module) => module.nameForCondition() ?? ""));

/** The same, of the files that a bundle was made from. */
export const packagesOf = (files: readonly string[]): string[] => [...new Set(files.flatMap(placeOf))].sort();

/** The package that a file is in: the last folder of packages on the way to it counts. */
function placeOf(file: string): string[] {
  const path = file.replaceAll("\\", "/");
  const [place] = /node_modules\/(?:.*\/node_modules\/)?(?:@[^/]+\/)?[^/]+(?=\/)/.exec(path) ?? [];
  return place === undefined ? [] : [place];
}
