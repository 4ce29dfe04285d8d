/**
 * `npm run page-speed`: how long visitors wait until the pages can be used, and makers until their numbers stand; with
 * `-- --phone` the phone page alone. Fails
 * where a limit is missed. The limits are those of a quiet machine of two cores, so it says how busy this one was.
 */
import { cpus } from "node:os";
import { parseArgs } from "node:util";
import { phoneFolder } from "../../../src/build/folders";
import { findBrowser, openBrowser } from "../../../src/build/open-browser";
import { serve } from "../../../src/build/serve";
import { buildPageOnce, pageFolder } from "../../../src/build/workbook-page-build";
import { feeding } from "../typing/trials";
import { type CalculationTimes, type Fed, timesOfCalculation } from "./calculation";
import { slowness, timesOfPhone } from "./phone";
import { type Network, type Visits, visitTwice } from "./visits";

const { values: wanted } = parseArgs({
  options: {
    json: { type: "boolean", default: false },
    runs: { type: "string", default: "3" },
    phone: { type: "boolean", default: false },
  },
});
const runs = Number(wanted.runs);

/** Half of what was measured is no longer, half no shorter. In milliseconds. */
interface Figure {
  readonly of: string;
  readonly median: number;
  readonly limit?: number;
  readonly all: readonly number[];
}

const networks: readonly Network[] = [{ name: "on this computer" }, { name: "at 10 Mbit/s", megabits: 10 }];

const samples = [
  { name: "the sample lot", query: "", isLimited: true },
  { name: "the sample season", query: "?workbook=season", isLimited: false },
];

/** Every one of its formulas follows each number. */
const fed: Fed = {
  ...feeding,
  followers: [
    { sheet: "Weights", first: "B2", last: "F31" },
    { sheet: "Elsewhere", first: "A2", last: "E31" },
  ],
};

async function run(): Promise<void> {
  const found = await findBrowser();
  if (found === undefined) throw new Error("measuring the page needs a browser");
  await buildPageOnce();
  const { server, address } = await serve(pageFolder, 0);
  const busy: number[] = [];
  const figures: Figure[] = [];
  try {
    const phones: { usable: number; opened: number }[] = [];
    for (let round = 0; round < runs; round += 1) {
      busy.push(await busyShare());
      phones.push(await timesOfPhone(found, `${address}${phoneFolder}/`));
    }
    figures.push(...ofPhone(phones));
    for (const { name, query, isLimited } of wanted.phone ? [] : samples) {
      for (const network of networks) {
        const visits: Visits[] = [];
        for (let round = 0; round < runs; round += 1) {
          busy.push(await busyShare());
          visits.push(await visitTwice(found, `${address}${query}`, network));
        }
        figures.push(...ofVisits(`${name}, ${network.name}`, visits, isLimited));
      }
    }
    const times: CalculationTimes[] = [];
    for (let round = 0; round < (wanted.phone ? 0 : runs); round += 1) {
      busy.push(await busyShare());
      const browser = await openBrowser(found);
      const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
      await feeding.open(page, address);
      times.push(await timesOfCalculation(page, fed));
      await browser.close();
    }
    if (!wanted.phone) figures.push(...ofCalculation(feeding.name, times));
  } finally {
    server.close();
  }
  report(figures, busy);
}

function ofPhone(times: readonly { usable: number; opened: number }[]): Figure[] {
  const at = `the phone page, at a processor ${slowness} times slower`;
  return [
    figureOf(
      `${at}: first visit, jobs shown after its scripts have come`,
      times.map(({ usable }) => usable),
      1000,
    ),
    figureOf(
      `${at}: a job shows its answer after the tap`,
      times.map(({ opened }) => opened),
    ),
  ];
}

function ofVisits(name: string, visits: readonly Visits[], isLimited: boolean): Figure[] {
  const figure = (of: string, pick: (visits: Visits) => number, limit?: number) =>
    figureOf(`${name}: ${of}`, visits.map(pick), isLimited ? limit : undefined);
  return [
    figure("first visit, words of it seen", ({ cold }) => cold.visible, 1000),
    figure("first visit, ready", ({ cold }) => cold.ready, 4000),
    figure("first visit, longest task afterwards", ({ cold }) => cold.busyAfter),
    figure("second visit, words of it seen", ({ second }) => second.visible, 1000),
    figure("second visit, ready", ({ second }) => second.ready, 2000),
    figure("second visit, longest task afterwards", ({ second }) => second.busyAfter),
  ];
}

function ofCalculation(name: string, times: readonly CalculationTimes[]): Figure[] {
  const figure = (of: string, pick: (times: CalculationTimes) => number, limit?: number) =>
    figureOf(`${name}: ${of}`, times.map(pick), limit);
  return [
    figure("the numbers stand after Enter", ({ standing }) => median(standing)),
    figure("the same, from when the engine begins", ({ calculating }) => median(calculating), 150),
    figure("a key pressed in the midst of it waits, usually", ({ waits }) => median(waits)),
    figure("a key pressed in the midst of it waits, at most", ({ waits }) => Math.max(...waits), 50),
  ];
}

const figureOf = (of: string, all: readonly number[], limit?: number): Figure => ({
  of,
  median: median(all),
  ...(limit !== undefined && { limit }),
  all,
});

const median = (numbers: readonly number[]): number =>
  [...numbers].sort((one, other) => one - other)[Math.floor(numbers.length / 2)] ?? Number.NaN;

/** The share of the processors that others use, before anything of ours begins. */
async function busyShare(): Promise<number> {
  const before = spent();
  await new Promise((done) => setTimeout(done, 1000));
  const after = spent();
  return 1 - (after.idle - before.idle) / (after.all - before.all);
}

function spent(): { idle: number; all: number } {
  const times = cpus().map(({ times }) => times);
  const sum = (numbers: readonly number[]) => numbers.reduce((total, each) => total + each, 0);
  return { idle: sum(times.map(({ idle }) => idle)), all: sum(times.map((each) => sum(Object.values(each)))) };
}

const isMissed = ({ median, limit }: Figure): boolean => limit !== undefined && !(median <= limit);

function report(figures: readonly Figure[], busy: readonly number[]): void {
  const busiest = Math.max(...busy);
  if (wanted.json) console.log(JSON.stringify({ processors: cpus().length, busiest, figures }, undefined, 2));
  else {
    for (const each of figures) console.log(lineOf(each));
    console.log(`\nMedians of ${runs}, in milliseconds; ${cpus().length} processors, busy with other things up to`);
    console.log(
      `${Math.round(busiest * 100)} % of the time${busiest > 0.2 ? ": too busy for these times to count" : ""}.`,
    );
  }
  if (figures.some(isMissed)) process.exitCode = 1;
}

function lineOf(figure: Figure): string {
  const { of, median, limit, all } = figure;
  const beside = limit === undefined ? "" : `at most ${limit}${isMissed(figure) ? ", MISSED" : ""}`;
  const range = `${Math.round(Math.min(...all))}–${Math.round(Math.max(...all))}`;
  return `${of.padEnd(82)} ${String(Math.round(median)).padStart(5)}  ${range.padEnd(11)} ${beside}`;
}

run().catch((problem: unknown) => {
  console.error(problem);
  process.exitCode = 1;
});
