import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import { BrowsersFirst } from "./test/browsers-first";

// The engine's modules for bundlers do not load in Node, and turning its six megabytes into modules that do takes
// longer than all its tests: these are the ones it has for Node.
const engine = fileURLToPath(new URL("node_modules/@univerjs/", import.meta.url));

/** Tests that drive a browser: they wait more than they work. */
const inBrowser = ["test/browser/**/*.test.ts", "test/release/proof.test.ts"];
const every = ["test/**/*.test.ts", "test/**/*.test.tsx"];

export default defineConfig({
  resolve: {
    alias: [
      { find: /^@univerjs\/([\w-]+)$/, replacement: `${engine}$1/lib/cjs/index.js` },
      { find: /^@univerjs\/([\w-]+)\/facade$/, replacement: `${engine}$1/lib/cjs/facade.js` },
    ],
  },
  test: {
    server: { deps: { external: [/@univerjs/] } },
    reporters: ["default", "./test/closing-line.ts"],
    testTimeout: 60_000,
    hookTimeout: 240_000,
    // Also on two cores, of which one would be left to others.
    maxWorkers: 2,
    sequence: { sequencer: BrowsersFirst },
    projects: [
      { extends: true, test: { name: "browser", include: inBrowser } },
      // Their files share a process, and so what they import: no file may leave behind what another does not expect.
      {
        extends: true,
        test: { name: "node", include: every, exclude: [...inBrowser, "**/node_modules/**"], isolate: false },
      },
    ],
  },
});
