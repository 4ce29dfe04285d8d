/** `npm run mutate`, from the project's folder; `-- --mutate "src/core/yields/*.ts"` for a part of it. */
export default {
  plugins: ["@stryker-mutator/vitest-runner", "./leave-pages-alone.mjs"].map((plugin) =>
    plugin.startsWith(".") ? new URL(plugin, import.meta.url).href : plugin,
  ),
  // entry-without-page.ts stands in for entry.ts in a build, and no test of the core can see it.
  mutate: ["src/core/**/*.ts", "src/cells/**/*.ts", "!src/core/entry-without-page.ts"],
  ignorers: ["pages and words"],
  ignorePatterns: ["/dist", "/docs", "/sample-workbooks", "/test/browser", "/test/engine", "/.cache", "/.ci"],
  testRunner: "vitest",
  vitest: { configFile: "test/mutation/vitest.config.mts" },
  coverageAnalysis: "perTest",
  ignoreStatic: true,
  concurrency: 2,
  tempDirName: ".cache/mutation",
  reporters: ["clear-text", "json", "html", "progress-append-only"],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  jsonReporter: { fileName: ".cache/mutation-report.json" },
  htmlReporter: { fileName: ".cache/mutation-report.html" },
  incrementalFile: ".cache/mutation-incremental.json",
  thresholds: { high: 95, low: 90, break: 90 },
  timeoutMS: 10_000,
  disableTypeChecks: false,
};
