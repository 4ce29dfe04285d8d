/** Where the packages lie of which a bundle holds code, `node_modules/a`, by the files it was made from: each once. */
export const packagesOf = (files: readonly string[]): string[] => [...new Set(files.flatMap(placeOf))].sort();

/** The package that a file is in: the last folder of packages on the way to it counts. */
function placeOf(file: string): string[] {
  const path = file.replaceAll("\\", "/");
  const [place] = /node_modules\/(?:.*\/node_modules\/)?(?:@[^/]+\/)?[^/]+(?=\/)/.exec(path) ?? [];
  return place === undefined ? [] : [place];
}
