/** One task in a process of its own, so that its time and its memory are those of nothing else. Prints them as data. */
import { readFileSync } from "node:fs";

interface Done {
  /** Milliseconds from when everything is loaded. */
  readonly milliseconds: number;
  /** Of the processor. */
  readonly processor: number;
  /** Megabytes: the most at any time, and what the process had before it began. */
  readonly peak: number;
  readonly before: number;
  readonly outcome: string;
}

const megabytes = (bytes: number): number => Math.round(bytes / 1024 / 1024);

async function timed(work: () => string | Promise<string>): Promise<Done> {
  const before = megabytes(process.memoryUsage().rss);
  const [began, used] = [performance.now(), process.cpuUsage()];
  const outcome = await work();
  const { user, system } = process.cpuUsage(used);
  return {
    milliseconds: Math.round(performance.now() - began),
    processor: Math.round((user + system) / 1000),
    peak: megabytes(process.resourceUsage().maxRSS * 1024),
    before,
    outcome,
  };
}

const tasks: Readonly<Record<string, (file: string) => Promise<Done>>> = {
  async read(file) {
    const { readFile } = await import("../../src/xlsx/read-workbook");
    const { Refusal } = await import("../../src/xlsx/refusal");
    return timed(() => {
      try {
        const { workbook } = readFile(readFileSync(file));
        return `read: ${workbook.sheets.reduce((sum, { cells }) => sum + cells.length, 0)} cells`;
      } catch (problem) {
        if (problem instanceof Refusal) return `refused: ${problem.message}`;
        throw problem;
      }
    });
  },
  async recalc(file) {
    const { recalculated } = await import("../../src/command-line/recalc/recalculated");
    // What the engine loads as it starts is the start.
    const { openInNode } = await import("../../src/engine/node-workbook");
    openInNode({ name: "", sheets: [{ name: "A", cells: [], columnWidths: {}, rowHeights: {}, merges: [] }] }).close();
    return timed(async () => {
      const { sheets } = await recalculated(readFileSync(file), { set: [], keepsChanging: false });
      return `${sheets.reduce((sum, { changed }) => sum + changed.length, 0)} new results`;
    });
  },
};

const [task = "", file = ""] = process.argv.slice(2);
tasks[task]?.(file).then((done) => {
  console.log(JSON.stringify(done));
  process.exit(0);
});
