/**
 * `npm run book-speed`: how long large books take, and how much memory, beside their limits. The limits are those of a
 * quiet machine of two cores, so it says how busy this one was. `-- --hostile FOLDER` reads each file of a folder
 * instead, and says what becomes of it; `-- --no-page` leaves out the browser.
 */
import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { loadavg, tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { findBrowser, openBrowser } from "../../src/build/open-browser";
import { serve } from "../../src/build/serve";
import { buildPageOnce, pageFolder } from "../../src/build/workbook-page-build";
import { bookOfCells, bookOfFormulas, bookOfLots } from "./books";
import { type PageTimes, timesInPage } from "./in-the-page";

const { values: wanted } = parseArgs({
  options: {
    hostile: { type: "string" },
    runs: { type: "string", default: "3" },
    "no-page": { type: "boolean", default: false },
  },
});
const runs = Number(wanted.runs);

interface Done {
  readonly milliseconds: number;
  readonly processor: number;
  readonly peak: number;
  readonly before: number;
  readonly outcome: string;
}

const loader = ["--import", "tsx"];

function inChild(task: "read" | "recalc" | "ratio", file: string): Done {
  const words = [...loader, "test/book-speed/child.ts", task, file];
  const { stdout, stderr, status } = spawnSync(process.execPath, words, { encoding: "utf8" });
  if (status !== 0) throw new Error(`${task} of ${file} failed: ${stderr}`);
  return JSON.parse(stdout) as Done;
}

const median = (numbers: readonly number[]): number =>
  [...numbers].sort((one, other) => one - other)[Math.floor(numbers.length / 2)] ?? Number.NaN;

let isMissed = false;

/** One line: the median of the runs, its limit, all of the runs, and how busy the machine was. */
function figure(of: string, all: readonly number[], unit: "ms" | "MB" | "times", limit?: number): void {
  const middle = median(all);
  const missed = limit !== undefined && !(middle <= limit);
  isMissed ||= missed;
  const against = limit === undefined ? "" : `${missed ? "MISSED: " : ""}at most ${limit}`;
  const load = loadavg()[0]?.toFixed(1);
  console.log(
    `${`${middle} ${unit}`.padStart(10)}  ${of.padEnd(66)} ${against.padEnd(22)} (${all.join(", ")}; load ${load})`,
  );
}

const repeated = <Result>(run: () => Result): Result[] => Array.from({ length: runs }, run);

function season(folder: string): void {
  const books = join(folder, "books");
  mkdirSync(books);
  for (let member = 1; member <= 100; member += 1) {
    writeFileSync(join(books, `member-${member}.xlsx`), bookOfLots(member, 1000));
  }
  const times = repeated(() => {
    const began = performance.now();
    const words = [
      "src/command-line/season.ts",
      books,
      "--out",
      join(folder, "s.xlsx"),
      "--csv",
      join(folder, "s.csv"),
    ];
    const all = [...loader, "--import", "./test/book-speed/says-usage.mjs", ...words];
    const { status, stderr } = spawnSync(process.execPath, all, { encoding: "utf8" });
    if (status !== 0) throw new Error(`the season failed: ${stderr}`);
    const processor = Number(/processor (\d+) ms/.exec(stderr)?.[1]);
    return { all: Math.round(performance.now() - began), processor };
  });
  const what = "a season of 100 books of 1,000 lots, start and both files included";
  figure(
    what,
    times.map(({ all }) => all),
    "ms",
    30_000,
  );
  figure(
    "the same, time of the processor",
    times.map(({ processor }) => processor),
    "ms",
  );
}

async function inThePage(file: string): Promise<void> {
  const found = await findBrowser();
  if (found === undefined) throw new Error("measuring the page needs a browser");
  await buildPageOnce();
  const { server, address } = await serve(pageFolder, 0);
  const times: PageTimes[] = [];
  try {
    for (let round = 0; round < runs; round += 1) {
      const browser = await openBrowser(found);
      times.push(await timesInPage(browser, address, file));
      await browser.close();
    }
  } finally {
    server.close();
  }
  const of = (pick: (times: PageTimes) => number) => times.map(pick);
  figure(
    "100,000 cells open in the page",
    of(({ opened }) => opened),
    "ms",
    5000,
  );
  figure(
    "the same, time of the processor in the tab",
    of(({ openedProcessor }) => openedProcessor),
    "ms",
  );
  figure(
    "the same are saved",
    of(({ saved }) => saved),
    "ms",
    1000,
  );
  figure(
    "the same, time of the processor in the tab",
    of(({ savedProcessor }) => savedProcessor),
    "ms",
  );
  figure(
    "memory of the tab while they open, above what it had",
    of(({ memory }) => memory),
    "MB",
  );
}

function hostile(folder: string): void {
  for (const name of readdirSync(folder).sort()) {
    const { milliseconds, peak, before, outcome } = inChild("read", join(folder, name));
    const isSlow = milliseconds > 10_000 || peak - before > 300;
    isMissed ||= isSlow;
    console.log(
      `${isSlow ? "MISSED " : ""}${name}: ${milliseconds} ms, ${peak - before} MB above the start, ${outcome.slice(0, 110)} (load ${loadavg()[0]?.toFixed(1)})`,
    );
  }
}

async function measure(): Promise<void> {
  if (wanted.hostile !== undefined) return hostile(wanted.hostile);
  const folder = mkdtempSync(join(tmpdir(), "book-speed-"));
  try {
    const write = (name: string, bytes: Uint8Array) => {
      writeFileSync(join(folder, name), bytes);
      return join(folder, name);
    };
    const formulas = write("formulas.xlsx", bookOfFormulas(10_000));
    const worked = repeated(() => inChild("recalc", formulas));
    figure(
      "10,000 formulas of TEA are worked out and saved, after the start",
      worked.map((each) => each.milliseconds),
      "ms",
      5000,
    );
    figure(
      "the same, time of the processor",
      worked.map((each) => each.processor),
      "ms",
    );
    const ratios = repeated(() => Number(inChild("ratio", formulas).outcome));
    figure("the same against the engine alone, time of the processor", ratios, "times", 2);
    const cells = write("cells.xlsx", bookOfCells(500_000));
    const read = repeated(() => inChild("read", cells));
    figure(
      "500,000 cells are read, the most memory of the process",
      read.map((each) => each.peak),
      "MB",
      400,
    );
    figure(
      "the same, time",
      read.map((each) => each.milliseconds),
      "ms",
    );
    season(folder);
    if (!wanted["no-page"]) await inThePage(write("page.xlsx", bookOfCells(100_000)));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

measure().then(
  () => {
    process.exitCode = isMissed ? 1 : 0;
  },
  (problem: unknown) => {
    console.error(problem);
    process.exitCode = 1;
  },
);
