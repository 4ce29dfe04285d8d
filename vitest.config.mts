import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["test/**/*.test.ts", "test/**/*.test.tsx"],
    reporters: ["default", "./test/closing-line.ts"],
    testTimeout: 60_000,
    hookTimeout: 240_000,
  },
});
