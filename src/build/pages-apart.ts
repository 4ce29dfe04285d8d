import { readFile } from "node:fs/promises";
import { basename, dirname } from "node:path";
import type { Plugin } from "esbuild";
import { declarationsIn } from "./without-pages";

/** A module of its own for the page of a function, by the file of both. */
const pages = "page of a function";

/**
 * Parts the file of each function into what runs and the page that explains it, so that a script may have the one
 * without the other: a bundler keeps whole files together. Whoever asks the catalogue gets both.
 */
export const pagesApart: Plugin = {
  name: "pages of functions apart from what runs",
  setup({ onLoad, onResolve, resolve }) {
    onResolve({ filter: /^\.\.?\// }, async ({ path, importer, namespace, resolveDir, kind, pluginData }) => {
      if (pluginData === pages || !(namespace === pages || /[\\/]core[\\/]catalogue\.ts$/.test(importer)))
        return undefined;
      const found = await resolve(path, { importer, namespace: "file", resolveDir, kind, pluginData: pages });
      if (found.errors.length > 0 || found.path === importer) return found;
      return hasPage(await readFile(found.path, "utf8")) ? { path: found.path, namespace: pages } : found;
    });
    onLoad({ filter: /[\\/]src[\\/]core[\\/].*\.ts$/, namespace: "file" }, async ({ path }) => {
      const text = await readFile(path, "utf8");
      return hasPage(text) ? { contents: parted(text, path).runs, loader: "ts" } : undefined;
    });
    onLoad({ filter: /./, namespace: pages }, async ({ path }) => ({
      contents: parted(await readFile(path, "utf8"), path).page,
      loader: "ts",
      resolveDir: dirname(path),
    }));
  },
};

const hasPage = (text: string): boolean => /^export const \w+Page\b/m.test(text);

/** The two modules that a function's file becomes. The page takes from what runs what both need. */
export function parted(text: string, path: string): { readonly runs: string; readonly page: string } {
  const declarations = declarationsIn(text);
  const runs = declarations.filter(({ serves }) => serves === "function");
  const explains = declarations.filter(({ serves }) => serves !== "function");
  const wanted = new Set(explains.flatMap(({ identifiers }) => [...identifiers]));
  const shared = runs.filter(({ isType }) => !isType).flatMap((each) => each.names.map((name) => ({ name, ...each })));
  const hidden = shared.filter(({ name, isExported }) => wanted.has(name) && !isExported).map(({ name }) => name);
  const taken = shared.filter(({ name }) => wanted.has(name)).map(({ name }) => name);
  const self = JSON.stringify(`./${basename(path, ".ts")}`);
  return {
    runs: [...runs.map((each) => each.text), `\nexport { ${hidden.join(", ")} };\n`].join(""),
    page: [
      ...declarations.filter(({ isImport }) => isImport).map((each) => each.text),
      `\nexport * from ${self};\nimport { ${taken.join(", ")} } from ${self};\n`,
      ...explains.map((each) => each.text),
    ].join(""),
  };
}
