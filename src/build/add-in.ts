import { cpSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join, resolve as resolvePath } from "node:path";
import { fileURLToPath } from "node:url";
import HtmlWebpackPlugin from "html-webpack-plugin";
import webpack, { type Configuration } from "webpack";
import { catalogue } from "../core/catalogue";
import { escaped } from "../generate/blocks";
import { functionsJson } from "../generate/functions-json";
import { writeFunctionSite } from "./function-site";
import { officeOrigin } from "./page-policy";
import { runWebpack } from "./run-webpack";
import { plainLanguage, resolve, rulesInPlainLanguage, rulesWithStyleFiles } from "./webpack-rules";

const project = resolvePath(dirname(fileURLToPath(import.meta.url)), "../..");
const source = (...path: string[]): string => join(project, "src", ...path);

/** The address that manifest.xml at the root holds. */
export const localOrigin = "https://localhost:3000";

/** What a page inside Excel may do: run its own scripts and Office.js, and nothing else. */
const policy = [
  "default-src 'none'",
  `script-src 'self' ${officeOrigin}`,
  "style-src 'self'",
  "img-src 'self'",
  `connect-src 'self' ${officeOrigin}`,
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

const page = (name: string): HtmlWebpackPlugin =>
  new HtmlWebpackPlugin({
    template: source("pages", "excel", `${name}.html`),
    filename: `${name}.html`,
    templateParameters: { policy },
    minify: false,
    scriptLoading: "defer",
  });

const shared: Configuration = {
  mode: "production",
  context: project,
  resolve,
  devtool: false,
  performance: false,
};

/** Roots and exponentials that only pages work out go with them, and so do getters and arguments that nothing reads. */
const withoutPages = { passes: 3, pure_funcs: ["Math.sqrt", "Math.exp"], pure_getters: true, keep_fargs: false };

/** The script that Excel loads before the first cell resolves: functions without their pages. */
const functionsScript = (folder: string): Configuration => ({
  ...shared,
  target: ["web", plainLanguage],
  entry: { functions: source("pages", "excel", "functions-page.ts") },
  output: { path: folder, filename: "[name].js" },
  module: { rules: rulesInPlainLanguage },
  optimization: { minimizeOptions: { javascript: { compress: withoutPages } } },
  plugins: [
    new webpack.NormalModuleReplacementPlugin(/^\.\/entry$/, source("core", "entry-without-page.ts")),
    page("functions"),
  ],
});

const paneScript = (folder: string): Configuration => ({
  ...shared,
  entry: { pane: source("pages", "excel", "pane-page.ts") },
  output: { path: folder, filename: "[name].js", cssFilename: "[name].css" },
  module: { rules: rulesWithStyleFiles },
  experiments: { css: true },
  plugins: [page("pane")],
});

/** The manifest with the addresses of another host. An address may hold `&`, and `$&`, which a plain replacement reads. */
export const manifestFor = (origin: string): string =>
  readFileSync(join(project, "manifest.xml"), "utf8").replaceAll(localOrigin, () => escaped(origin));

/** The functions script with its page alone. */
export const buildFunctions = (folder: string): Promise<readonly string[]> => runWebpack(functionsScript(folder));

/** The task pane's page alone. */
export const buildPane = (
  folder: string,
  optimization: Configuration["optimization"] = {},
): Promise<readonly string[]> => runWebpack({ ...paneScript(folder), optimization });

interface Target {
  readonly origin: string;
  readonly folder: string;
}

/**
 * Writes everything that Excel loads from `origin`, and the pages of the functions, into a folder of its own. Gives the
 * packages that it holds code of.
 */
export async function buildAddIn({ origin, folder }: Target): Promise<readonly string[]> {
  rmSync(folder, { recursive: true, force: true });
  const packages = [...(await buildFunctions(folder)), ...(await buildPane(folder))];

  writeFileSync(join(folder, "functions.json"), JSON.stringify(functionsJson(catalogue, origin), null, 1));
  writeFileSync(join(folder, "manifest.xml"), manifestFor(origin));
  writeFunctionSite(folder);
  cpSync(join(project, "LICENSE"), join(folder, "LICENSE"));
  for (const icon of readdirSync(source("pages", "excel", "icons")).filter((name) => name.endsWith(".png"))) {
    cpSync(source("pages", "excel", "icons", icon), join(folder, "icons", icon));
  }
  return packages;
}
