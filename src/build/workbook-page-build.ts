import { createHash } from "node:crypto";
import { existsSync } from "node:fs";
import { mkdir, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { dirname, join, resolve, sep } from "node:path";
import { fileURLToPath } from "node:url";
import HtmlWebpackPlugin from "html-webpack-plugin";
import webpack, { type Configuration } from "webpack";
import { bundledPackages } from "./bundled-packages";
import { writeFunctionSite } from "./function-site";
import { pagePolicy } from "./page-policy";
import { resolve as resolving, rules } from "./webpack-rules";

const project = resolve(dirname(fileURLToPath(import.meta.url)), "../..");

/** Whatever a change of makes another page. */
const sources = ["package-lock.json", "sample-workbooks", "src"];

/** Where the page that `npm start` serves is built. */
export const pageFolder = join(project, ".cache", "workbook-page");
const builtFrom = join(project, ".cache", "workbook-page.built-from");

/** Builds the page unless the one there was built from these very sources. Says whether it built. */
export async function buildPageOnce(): Promise<boolean> {
  const wanted = await hashOfSources();
  const there = await readFile(builtFrom, "utf8").catch(() => "");
  if (there === wanted && existsSync(join(pageFolder, "index.html"))) return false;
  // An interrupted build must not pass for a finished one.
  await rm(builtFrom, { force: true });
  await mkdir(pageFolder, { recursive: true });
  await buildPage(pageFolder, { minimize: false });
  await writeFile(builtFrom, wanted);
  return true;
}

/** Writes the page and the pages of the functions that its pane links to. Gives the packages that it holds code of. */
export async function buildPage(folder: string, options: { minimize: boolean }): Promise<readonly string[]> {
  const packages = await runWebpack(workbookPageConfiguration(folder, options));
  writeFunctionSite(folder);
  return packages;
}

/** How the page is bundled. Minifying takes a minute and saves nothing on one's own computer. */
function workbookPageConfiguration(folder: string, { minimize }: { minimize: boolean }): Configuration {
  return {
    mode: "production",
    context: project,
    entry: { "workbook-page": join(project, "src/workbook-page/workbook-page.ts") },
    output: {
      path: folder,
      filename: "[name].[contenthash:8].js",
      chunkFilename: "[name].[contenthash:8].js",
      assetModuleFilename: "[name].[contenthash:8][ext]",
      clean: true,
    },
    resolve: resolving,
    module: { rules },
    plugins: [
      new HtmlWebpackPlugin({
        template: join(project, "src/workbook-page/workbook-page.html"),
        meta: { policy: { "http-equiv": "Content-Security-Policy", content: pagePolicy } },
        minify: false,
      }),
    ],
    optimization: { minimize },
    devtool: false,
    performance: false,
  };
}

/** Gives the packages that the bundles hold code of. */
export function runWebpack(configuration: Configuration): Promise<readonly string[]> {
  return new Promise((done, failed) => {
    webpack(configuration, (problem, stats) => {
      if (problem) failed(problem);
      else if (stats === undefined) failed(new Error("the bundler gave no result"));
      else if (stats.hasErrors()) failed(new Error(stats.toString({ all: false, errors: true, colors: false })));
      else done(bundledPackages(stats.compilation));
    });
  });
}

async function hashOfSources(): Promise<string> {
  const hash = createHash("sha256");
  for (const file of (await Promise.all(sources.map(filesUnder))).flat()) {
    hash.update(`${file.split(sep).join("/")}\0`);
    hash.update(await readFile(join(project, file)));
  }
  return hash.digest("hex");
}

/** The file itself, or every file in the folder, in an order of its own. */
async function filesUnder(path: string): Promise<string[]> {
  const entries = await readdir(join(project, path), { recursive: true, withFileTypes: true }).catch(() => undefined);
  if (entries === undefined) return existsSync(join(project, path)) ? [path] : [];
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(project.length + 1))
    .sort();
}
