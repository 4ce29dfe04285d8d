import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { describe, expect, test } from "vitest";

interface Step {
  readonly step: string;
  readonly lots: readonly (readonly (string | number)[])[];
  readonly flags: readonly (string | number)[];
  readonly proof: readonly (readonly (string | number)[])[];
  readonly formulas: number;
  readonly lost: readonly string[];
  readonly table: number;
  readonly charts: readonly (readonly string[])[];
}

/** Debian's own Python, which knows LibreOffice's library; another one may come first on the path. */
const python = ["/usr/bin/python3", "python3"].find((each) => spawnSync(each, ["-c", "import uno"]).status === 0);
const isThere = python !== undefined && spawnSync("soffice", ["--version"]).status === 0;

function steps(): Step[] {
  const folder = mkdtempSync(join(tmpdir(), "tea-rows-"));
  try {
    const script = resolve("test/sample-books/rows-in-libreoffice.py");
    const printed = execFileSync(python ?? "", [script, resolve("sample-workbooks/season.xlsx"), folder]);
    return printed
      .toString()
      .trim()
      .split("\n")
      .map((line): Step => JSON.parse(line));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Of each plot the finished lots, the open ones, those left out, and what the finished ones weighed. */
function byPlots(lots: Step["lots"]): Map<string, number[]> {
  const plots = new Map<string, number[]>();
  for (const [number, , plot, , fresh, finished] of lots.slice(1)) {
    if (typeof number !== "number" || typeof plot !== "string") continue;
    const sums = plots.get(plot) ?? [0, 0, 0, 0, 0];
    plots.set(plot, sums);
    const [leaf, tea] = [Number(fresh) || 0, Number(finished) || 0];
    const kind = tea === 0 ? 1 : tea > leaf ? 2 : 0;
    sums[kind] = (sums[kind] ?? 0) + 1;
    if (kind === 0) plots.set(plot, sums.with(3, (sums[3] ?? 0) + leaf).with(4, (sums[4] ?? 0) + tea));
  }
  return plots;
}

/** Another program than the one it was made with, and none that knows the add-in: what is plain must hold there too. */
describe.skipIf(!isThere)("the season in LibreOffice, when rows are put in, taken out and sorted", () => {
  test("keeps every reference, the table, the charts, and plain sums that are right", { timeout: 120_000 }, () => {
    const all = steps();
    expect(all.map(({ step }) => step)).toEqual([
      "opened",
      "a row put in among the lots",
      "two rows put in above the first lot",
      "three rows taken out at the top, with the first lot",
      "five rows taken out among the lots",
      "sorted by fresh weight",
      "sorted by number",
      "saved and opened again",
    ]);
    const numbered = ({ lots }: Step) =>
      lots.slice(1).flatMap(([number]) => (typeof number === "number" ? number : []));
    expect(all.map((each) => numbered(each).length)).toEqual([80, 81, 81, 80, 75, 75, 75, 75]);
    expect(all.map(({ table }) => table)).toEqual([121, 122, 124, 121, 116, 116, 116, 116]);
    for (const each of all) {
      expect(each.lost, each.step).toEqual([]);
      expect(each.formulas, each.step).toBe(all[0]?.formulas);
      expect(each.charts, each.step).toEqual(all[0]?.charts);
      expect(
        each.flags.filter((flag) => flag !== ""),
        each.step,
      ).toEqual(numbered(each));
      const proof = each.proof.filter(([plot]) => plot !== "");
      const plots = byPlots(each.lots);
      expect(proof.map(([plot]) => plot).sort(), each.step).toEqual([...plots.keys()].sort());
      for (const [plot, ...sums] of proof) {
        for (const [place, sum] of (plots.get(String(plot)) ?? []).entries()) {
          expect(sums[place], `${each.step}: ${plot}`).toBeCloseTo(sum, 6);
        }
      }
    }
    const fresh = all[5]?.lots.slice(1).flatMap(([, , , , weight]) => (typeof weight === "number" ? weight : [])) ?? [];
    expect(fresh).toEqual([...fresh].sort((one, other) => other - one));
  });
});
