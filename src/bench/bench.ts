/**
 * `npm run bench`: what the functions cost, as ratios to another way to the same answer, measured side by side in one
 * run. `-- --json` gives the rows as data; `-- --keep` makes them the baseline that later runs are shown beside;
 * `-- --google-sheets` measures the script for Google Sheets alone, call by call.
 */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { buildFunctions } from "../build/add-in";
import { mostFunctionsBytes } from "../generate/size-limit";
import { growthOfFit } from "./balance-fit";
import { compareDayPlan } from "./day-plan";
import { callsInGoogleSheets, sheetRows } from "./google-sheets";
import { compareEngines } from "./quicker-engine";
import { compareRowsOfCells, growthOfRows } from "./rows-of-cells";
import type { Comparison } from "./side-by-side";

/** Ratios of a run that was kept, by what was compared. */
const baselineFile = "src/bench/baseline.json";

const counts = [1_000, 10_000, 100_000, 1_000_000];
const stages = [5, 20, 100];
/** The longest that one call may take in Google Sheets, which stops it after thirty seconds on a slower machine. */
const mostSheetMilliseconds = 5000;

/** Largest resident memory of a process that does this and nothing else, in megabytes. */
function peakMemory(contestant: string): number {
  const argument = [process.argv[1] as string, "--memory", contestant];
  return Number(execFileSync(process.execPath, argument, { encoding: "utf8" })) / 1024;
}

async function functionsScriptSize(): Promise<number> {
  const folder = mkdtempSync(join(tmpdir(), "tea-bench-"));
  try {
    await buildFunctions(folder);
    return gzipSync(readFileSync(join(folder, "functions.js")), { level: 9 }).length;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/**
 * The engine changes arrays for everything in its process, and all of it gets slower. Excel's script has no engine
 * beside it: what is measured without one comes first, and the engine is loaded last.
 */
async function measure() {
  const rowsOfCells = compareRowsOfCells();
  const rowsGrowth = growthOfRows(counts);
  const fitGrowth = growthOfFit(stages);
  const day = compareDayPlan();
  const [slowestInGoogleSheets] = await callsInGoogleSheets();
  const { compareSeasonTable, growthOfSeason } = await import("./season-table");
  const seasonGrowth = growthOfSeason(counts);
  const season = compareSeasonTable();
  const { measureStartUp } = await import("./start-up");
  const startUp = await measureStartUp();
  const { compareWithWorksheetFormulas } = await import("./in-the-engine");
  const { compareColumnsOfCells } = await import("./cells-in-the-engine");
  const ratios: Comparison[] = [
    ...rowsOfCells,
    day,
    ...season,
    ...(startUp?.ratios ?? []),
    await compareWithWorksheetFormulas(),
    ...(await compareColumnsOfCells()),
    compareEngines(),
  ];
  return {
    ratios,
    paneInteractiveMilliseconds: startUp?.paneInteractive,
    peakMegabytes: {
      cellsAlone: peakMemory("cells"),
      withSeasonTable: peakMemory("ours"),
      arquero: peakMemory("arquero"),
    },
    growth: {
      rows: counts,
      targetWeightNanosecondsPerRow: rowsGrowth.ours,
      bareArithmeticNanosecondsPerRow: rowsGrowth.bare,
      seasonTableNanosecondsPerRow: seasonGrowth,
      stages,
      balanceFitMilliseconds: fitGrowth,
    },
    slowestInGoogleSheets,
    functionsScriptBytesGzip: await functionsScriptSize(),
  };
}

type Measures = Awaited<ReturnType<typeof measure>>;

type Baseline = Readonly<Record<string, number>>;

const nameOf = ({ what, ours, other }: Comparison): string => `${what}: ${ours.name} / ${other.name}`;

function keep(ratios: readonly Comparison[]): void {
  const kept = Object.fromEntries(ratios.map((each) => [nameOf(each), Number(each.ratio.toPrecision(3))]));
  writeFileSync(baselineFile, `${JSON.stringify(kept, null, 2)}\n`);
  console.log(`Kept in ${baselineFile}.`);
}

function print({
  ratios,
  paneInteractiveMilliseconds,
  peakMegabytes,
  growth,
  slowestInGoogleSheets,
  functionsScriptBytesGzip,
}: Measures): void {
  const baseline = JSON.parse(readFileSync(baselineFile, "utf8")) as Baseline;
  const rows = ratios.map((each) => {
    const { what, ours, other, ratio, atMost } = each;
    return {
      what,
      ours: `${ours.milliseconds.toFixed(2)} ms, ${ours.name}`,
      other: `${other.milliseconds.toFixed(2)} ms, ${other.name}`,
      ratio: Number(ratio.toFixed(3)),
      baseline: baseline[nameOf(each)],
      goal: atMost === undefined ? "shown" : `${ratio > atMost ? "MISSED: " : ""}at most ${atMost}`,
    };
  });
  console.table(rows);
  const line = (values: readonly number[], digits: number) => values.map((value) => value.toFixed(digits)).join("  ");
  console.log(`rows                                  ${growth.rows.join("  ")}`);
  console.log(`TARGETWEIGHT on a range, ns a row     ${line(growth.targetWeightNanosecondsPerRow, 0)}`);
  console.log(`its bare arithmetic, ns a row         ${line(growth.bareArithmeticNanosecondsPerRow, 0)}`);
  console.log(`SEASONTABLE, ns a row                 ${line(growth.seasonTableNanosecondsPerRow, 0)}`);
  console.log(`stages                                ${growth.stages.join("  ")}`);
  console.log(
    `BALANCEFIT, ms a fit                  ${line(growth.balanceFitMilliseconds, 3)}  (goal: 20 stages under 5)`,
  );
  const { cellsAlone, withSeasonTable, arquero } = peakMegabytes;
  console.log(
    `peak memory of a million rows, MB     ${line([cellsAlone, withSeasonTable, arquero], 0)}  (cells alone, with SEASONTABLE, arquero)`,
  );
  const pane = paneInteractiveMilliseconds;
  console.log(
    pane === undefined
      ? "pane                                  not measured: no browser was found"
      : `pane usable after its script, ms      ${line([pane.best, pane.middle], 0)}  (best, middle; goal: under 1000)`,
  );
  console.log(
    `Google Sheets, ${sheetRows} rows, ms        ${slowestInGoogleSheets?.milliseconds.toFixed(0)}  (the slowest, ${slowestInGoogleSheets?.name}; goal: under ${mostSheetMilliseconds})`,
  );
  console.log(
    `functions script, bytes gzip          ${functionsScriptBytesGzip}  (goal: at most ${mostFunctionsBytes})`,
  );
}

const memoryOf = process.argv.indexOf("--memory");
if (memoryOf > 0) {
  import("./season-table").then(({ seasonOnce }) => {
    seasonOnce(process.argv[memoryOf + 1] ?? "");
    process.stdout.write(String(process.resourceUsage().maxRSS));
  });
} else if (process.argv.includes("--google-sheets")) {
  callsInGoogleSheets().then((calls) => {
    console.log(
      `Milliseconds of one call on ${sheetRows} rows, the script read anew for each (goal: under ${mostSheetMilliseconds}):`,
    );
    for (const { name, milliseconds } of calls) console.log(`${milliseconds.toFixed(0).padStart(6)}  ${name}`);
    if (calls.some(({ milliseconds }) => milliseconds > mostSheetMilliseconds)) process.exitCode = 1;
  });
} else {
  measure().then((measures) => {
    if (process.argv.includes("--json")) console.log(JSON.stringify(measures, null, 2));
    else print(measures);
    if (process.argv.includes("--keep")) keep(measures.ratios);
    if (measures.ratios.some(({ ratio, atMost = Infinity }) => ratio > atMost)) process.exitCode = 1;
  });
}
