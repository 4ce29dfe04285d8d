import { defineConfig } from "vitest/config";

/** Only what judges the core and the cells, which is also the workings' test: a mutant's tests run thousands of times. */
export default defineConfig({
  test: {
    include: ["test/core/**/*.test.ts", "test/cells/**/*.test.ts", "test/working/working-steps.test.ts"],
    setupFiles: ["test/mutation/quick.ts"],
    isolate: false,
    maxWorkers: 1,
    testTimeout: 60_000,
  },
});
