/** What the pane needs before its first job can be typed into, and what comes when it is wanted. Sizes alone, no times. */
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildPane } from "../../src/build/add-in";
import { catalogue } from "../../src/core/catalogue";
import { english } from "../../src/words/en/messages";
import { chinese } from "../../src/words/zh/messages";

const folder = mkdtempSync(join(tmpdir(), "tea-pane-script-"));
let first: readonly string[] = [];
let later: readonly string[] = [];

beforeAll(async () => {
  first = (await buildPane(folder)).scripts;
  later = readdirSync(folder).filter((name) => name.endsWith(".js") && !first.includes(name));
});
afterAll(() => rmSync(folder, { recursive: true }));

const text = (names: readonly string[]) => names.map((name) => readFileSync(join(folder, name), "utf8")).join("\n");
const compressed = (names: readonly string[]) =>
  names.reduce((sum, name) => sum + gzipSync(readFileSync(join(folder, name))).length, 0);

/** A range of colours, which only what draws pictures knows. */
const drawsPictures = "ylgnbu";

describe("the first script of the pane", () => {
  test("is at most 150 kB as it is sent", () => {
    expect(compressed(first)).toBeGreaterThan(50_000);
    expect(compressed(first)).toBeLessThanOrEqual(150_000);
  });

  test("holds the jobs, and neither pages of functions, nor Chinese, nor what draws pictures", () => {
    const job = english.jobs.charges?.title ?? "";
    const script = text(first);
    expect(script.includes(job)).toBe(true);
    expect(catalogue.filter(({ page }) => script.includes(page.summary)).map(({ spec }) => spec.id)).toEqual([]);
    expect(script.includes(chinese.jobs.charges?.title ?? "")).toBe(false);
    expect(script.includes(drawsPictures)).toBe(false);
  });

  test("is followed by all of these when they are wanted", () => {
    const script = text(later);
    expect(catalogue.filter(({ page }) => !script.includes(page.summary)).map(({ spec }) => spec.id)).toEqual([]);
    expect(script.includes(chinese.jobs.charges?.title ?? "")).toBe(true);
    expect(script.includes(drawsPictures)).toBe(true);
  });
});
