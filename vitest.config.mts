import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

// The engine's modules for bundlers do not load in Node, and turning its six megabytes into modules that do takes
// longer than all its tests: these are the ones it has for Node.
const engine = fileURLToPath(new URL("node_modules/@univerjs/", import.meta.url));

export default defineConfig({
  resolve: {
    alias: [
      { find: /^@univerjs\/([\w-]+)$/, replacement: `${engine}$1/lib/cjs/index.js` },
      { find: /^@univerjs\/([\w-]+)\/facade$/, replacement: `${engine}$1/lib/cjs/facade.js` },
    ],
  },
  test: {
    server: { deps: { external: [/@univerjs/] } },
    include: ["test/**/*.test.ts", "test/**/*.test.tsx"],
    reporters: ["default", "./test/closing-line.ts"],
    testTimeout: 60_000,
    hookTimeout: 240_000,
  },
});
