import type { Configuration, RuleSetRule } from "webpack";

/** Types are checked by `tsc` in the tests, not here. */
const scripts = (compilerOptions: Readonly<Record<string, unknown>> = {}): RuleSetRule => ({
  test: /\.tsx?$/,
  exclude: /node_modules/,
  loader: "ts-loader",
  options: { transpileOnly: true, compilerOptions: { noEmit: false, ...compilerOptions } },
});

// Some libraries import their own files without an ending.
const importsWithoutEnding: RuleSetRule = { test: /\.m?js$/, resolve: { fullySpecified: false } };

/** How bundles of this project read their sources. */
export const rules: RuleSetRule[] = [
  scripts(),
  { test: /\.css$/, use: ["style-loader", "css-loader"] },
  importsWithoutEnding,
];

/** As `rules`, with styles in a file of their own: for a page whose security policy forbids styles in scripts. */
export const rulesWithStyleFiles: RuleSetRule[] = [scripts(), { test: /\.css$/, type: "css" }, importsWithoutEnding];

/** The language that Excel's own script engine, without a page, can be trusted to know on all its systems. */
export const plainLanguage = "es2018";

/** Scripts alone, in plain language. */
export const rulesInPlainLanguage: RuleSetRule[] = [scripts({ target: plainLanguage })];

export const resolve: Configuration["resolve"] = { extensions: [".tsx", ".ts", ".mjs", ".js"] };
