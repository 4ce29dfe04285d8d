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

/** With styles in a file of their own: a page's security policy forbids styles in scripts. */
export const rulesWithStyleFiles: RuleSetRule[] = [scripts(), { test: /\.css$/, type: "css" }, importsWithoutEnding];

/** The language that Excel's own script engine, without a page, can be trusted to know on all its systems. */
export const plainLanguage = "es2018";

/** Scripts alone, in plain language. */
export const rulesInPlainLanguage: RuleSetRule[] = [scripts({ target: plainLanguage })];

export const resolve: NonNullable<Configuration["resolve"]> = { extensions: [".tsx", ".ts", ".mjs", ".js"] };
