import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification } from "vitest/node";

// The engine's modules for bundlers do not load in Node, and turning its six megabytes into modules that do takes
// longer than all its tests: these are the ones it has for Node.
const engine = fileURLToPath(new URL("node_modules/@univerjs/", import.meta.url));

/** Tests that drive a browser: they wait more than they work. */
const inBrowser = ["test/browser/**/*.test.ts"];
/** Long ways through the pages and a release, as makers go them: `npm run walks`, which CI runs after `npm test`. */
const walks = ["test/walks/**/*.test.ts", "test/release/proof.test.ts"];
const every = ["test/**/*.test.ts", "test/**/*.test.tsx"];

/** The longest files of each project, in the order in which they are begun: so that none is left alone at the end. */
const longest = [
  "walks/workbook-page",
  "walks/charts-page",
  "walks/guide-pictures",
  "walks/sort-table",
  "walks/around-the-grid",
  "walks/pane-access",
  "walks/embedded-host",
  "sample-books/season",
  "planted/planted-slips",
  "sample-books/one-lot",
  "calibrate/how-sure",
  "sample-books/sample-books",
];

/** What drives a browser waits much of its time: it comes first, while there is other work to do beside it. */
class BrowsersFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rank = ({ moduleId, project }: TestSpecification): number => {
      const place = longest.findIndex((name) => moduleId.includes(`/${name}.test.`));
      return (project.name === "node" ? 2 * longest.length : 0) + (place >= 0 ? place : longest.length);
    };
    const sorted = await super.sort(files);
    return sorted
      .map((file, place) => ({ file, place }))
      .sort((one, other) => rank(one.file) - rank(other.file) || one.place - other.place)
      .map(({ file }) => file);
  }
}

export default defineConfig({
  resolve: {
    alias: [
      { find: /^@univerjs\/([\w-]+)$/, replacement: `${engine}$1/lib/cjs/index.js` },
      { find: /^@univerjs\/([\w-]+)\/facade$/, replacement: `${engine}$1/lib/cjs/facade.js` },
    ],
  },
  test: {
    setupFiles: ["src/build/with-quicker-engine.ts"],
    server: { deps: { external: [/@univerjs/] } },
    reporters: ["default", "./test/closing-line.ts"],
    testTimeout: 60_000,
    hookTimeout: 240_000,
    // What is waited for comes late on a busy machine; its default is a second.
    expect: { poll: { timeout: 30_000 } },
    // Also on two cores, of which one would be left to others.
    maxWorkers: 2,
    // The files of a project share a process, and so what they import: none may leave behind what another does not expect.
    isolate: false,
    sequence: { sequencer: BrowsersFirst },
    projects: [
      { extends: true, test: { name: "browser", include: inBrowser, globalSetup: "test/browser/built-page.ts" } },
      { extends: true, test: { name: "walks", include: walks, globalSetup: "test/browser/built-page.ts" } },
      {
        extends: true,
        test: { name: "node", include: every, exclude: [...inBrowser, ...walks, "**/node_modules/**"] },
      },
    ],
  },
});
