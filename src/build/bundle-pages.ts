import { mkdir, readFile, writeFile } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { build, type Metafile, type OutputFile, type Plugin } from "esbuild";
import { readWorkbook } from "../xlsx/read-workbook";
import { pagesApart } from "./pages-apart";
import { filesOfEngine, quicker } from "./quicker-engine";

interface Page {
  readonly project: string;
  readonly folder: string;
  /** Scripts that the page runs itself, by name, from the project. */
  readonly scripts: Readonly<Record<string, string>>;
}

interface BundledPage {
  /** What each script needs before it can run: itself first, then what it imports. */
  readonly scripts: Readonly<Record<string, readonly string[]>>;
  /** The style sheet of each script that has one. */
  readonly styles: Readonly<Record<string, string>>;
  /** The source files that the bundles hold code of. */
  readonly sources: readonly string[];
}

/** Bundles and minifies a page's scripts and styles into a folder, each named by its content. */
export async function bundlePage({ project, folder, scripts }: Page): Promise<BundledPage> {
  const { outputFiles, metafile } = await build({
    absWorkingDir: project,
    entryPoints: Object.entries(scripts).map(([out, path]) => ({ in: path, out })),
    outdir: folder,
    bundle: true,
    splitting: true,
    format: "esm",
    target: "es2022",
    minify: true,
    legalComments: "none",
    // Letters of other alphabets would be longer spelled out.
    charset: "utf8",
    // A hash of the content in the name: the browser may keep the file, and what it compiled of it.
    entryNames: "[name].[hash]",
    chunkNames: "[name].[hash]",
    assetNames: "[name].[hash]",
    plugins: [assetsByAddress, pagesApart, withQuickerEngine],
    metafile: true,
    write: false,
    logLevel: "silent",
  });
  await mkdir(folder, { recursive: true });
  const outputs = Object.entries(metafile.outputs).map(([path, output]) => ({ name: basename(path), ...output }));
  const entries = outputs.filter(({ entryPoint }) => Object.values(scripts).includes(entryPoint ?? ""));
  // What is imported later brings no styles along: they are in those of the script that imports it.
  const unused = new Set(outputs.map(({ cssBundle }) => cssBundle && basename(cssBundle)));
  for (const { cssBundle } of entries) if (cssBundle) unused.delete(basename(cssBundle));
  const files = outputFiles.filter(({ path }) => !unused.has(basename(path)));
  await Promise.all(files.map((file) => writeTo(folder, file)));
  const nameOf = (path: string): string => Object.entries(scripts).find(([, script]) => script === path)?.[0] ?? path;
  return {
    scripts: Object.fromEntries(
      entries.map(({ name, entryPoint = "" }) => [nameOf(entryPoint), neededBy(name, metafile)]),
    ),
    styles: Object.fromEntries(
      entries.flatMap(({ cssBundle, entryPoint = "" }) =>
        cssBundle ? [[nameOf(entryPoint), basename(cssBundle)]] : [],
      ),
    ),
    sources: Object.entries(metafile.outputs).flatMap(([, { inputs }]) => Object.keys(inputs)),
  };
}

const writeTo = (folder: string, { path, contents }: OutputFile): Promise<void> =>
  writeFile(join(folder, basename(path)), contents);

/** A script and all that must be there before it runs. */
function neededBy(script: string, { outputs }: Metafile): string[] {
  const imports = new Map(
    Object.entries(outputs).map(([path, { imports }]) => [
      basename(path),
      imports.filter(({ kind }) => kind === "import-statement").map(({ path }) => basename(path)),
    ]),
  );
  const needed = [script];
  for (const name of needed) needed.push(...(imports.get(name) ?? []).filter((each) => !needed.includes(each)));
  return needed;
}

const addressOfFile = /new URL\((["'])([^"']+)\1, import\.meta\.url\)/g;

/**
 * A file that a script names as `new URL("file", import.meta.url)` is put beside it. A workbook is put there as ready
 * data, so that no page has to read an .xlsx file before it can show one.
 */
const assetsByAddress: Plugin = {
  name: "assets by address",
  setup({ onLoad, onResolve }) {
    onLoad({ filter: /(?:sample-files\.ts|wasm_xlsxwriter\.js)$/ }, async ({ path }) => {
      const imports: string[] = [];
      const text = (await readFile(path, "utf8")).replace(addressOfFile, (_, _quote, file: string) => {
        imports.push(
          `import asset${imports.length} from ${JSON.stringify(file.startsWith(".") ? file : `./${file}`)};`,
        );
        return `new URL(asset${imports.length - 1}, import.meta.url)`;
      });
      return { contents: `${imports.join("\n")}\n${text}`, loader: path.endsWith(".ts") ? "ts" : "js" };
    });
    onResolve({ filter: /\.xlsx$/ }, ({ path, resolveDir }) => ({
      path: join(resolveDir, path).replace(/xlsx$/, "json"),
      namespace: "workbook",
    }));
    onLoad({ filter: /./, namespace: "workbook" }, async ({ path }) => {
      const file = path.replace(/json$/, "xlsx");
      const workbook = readWorkbook(await readFile(file));
      return { contents: JSON.stringify(workbook), loader: "file", resolveDir: dirname(file), watchFiles: [file] };
    });
    onLoad({ filter: /\.wasm$/ }, async ({ path }) => ({ contents: await readFile(path), loader: "file" }));
  },
};

const withQuickerEngine: Plugin = {
  name: "with a quicker engine",
  setup({ onLoad }) {
    onLoad({ filter: filesOfEngine }, async ({ path }) => ({
      contents: quicker(await readFile(path, "utf8")),
      loader: "js",
    }));
  },
};
