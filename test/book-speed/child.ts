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
  /** Reading, working out and saving a file against the engine's part of it, in turn in one process. */
  async ratio(file) {
    const { recalculated } = await import("../../src/command-line/recalc/recalculated");
    const { openInNode } = await import("../../src/engine/node-workbook");
    const { readWorkbook } = await import("../../src/xlsx/read-workbook");
    const bytes = readFileSync(file);
    const workbook = readWorkbook(bytes);
    const times: { readonly whole: number[]; readonly engine: number[] } = { whole: [], engine: [] };
    const clock = async (into: number[], work: () => Promise<unknown>) => {
      const { user, system } = process.cpuUsage();
      await work();
      const now = process.cpuUsage();
      into.push((now.user + now.system - user - system) / 1000);
    };
    return timed(async () => {
      for (let round = 0; round < 3; round += 1) {
        await clock(times.engine, async () => {
          const book = openInNode(workbook);
          await book.calculate();
          book.close();
        });
        await clock(times.whole, () => recalculated(bytes, { set: [], keepsChanging: false }));
      }
      return (Math.min(...times.whole) / Math.min(...times.engine)).toFixed(2);
    });
  },
};

const [task = "", file = ""] = process.argv.slice(2);
tasks[task]?.(file).then((done) => {
  console.log(JSON.stringify(done));
  process.exit(0);
});
