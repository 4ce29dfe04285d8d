import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type BuiltPhonePage, buildPhonePage } from "../../src/build/phone-page-build";
import { catalogue } from "../../src/core/catalogue";

const folder = mkdtempSync(join(tmpdir(), "tea-phone-"));
let built: BuiltPhonePage;
let files: string[];
const bytes = (name: string) => readFileSync(join(folder, name));

beforeAll(async () => {
  built = await buildPhonePage(folder);
  files = readdirSync(folder);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("the phone page", () => {
  test("is first loaded with at most 150 kB gzip, in either language", () => {
    // Beside what the page names, with English in it, the words of another language: all that it needs to be used.
    const words = files.filter((name) => /^(pane-words|phone)\.[0-9A-Z]{8}\.js$/.test(name));
    expect(words).toHaveLength(2);
    const sizeOf = (names: readonly string[]) =>
      names.reduce((sum, name) => sum + gzipSync(bytes(name), { level: 9 }).length, 0);
    expect(sizeOf([...new Set([...built.firstLoad, ...words])])).toBeLessThanOrEqual(150_000);
  });

  test("names files that are there, each by its content", () => {
    const html = bytes("index.html").toString();
    const named = [...html.matchAll(/(?:src|href)="([^"]+)"/g)].map(([, name]) => name as string);
    expect(named.length).toBeGreaterThan(4);
    expect(named.filter((name) => !files.includes(name))).toEqual([]);
    expect(built.firstLoad.filter((name) => !files.includes(name))).toEqual([]);
  });

  test("holds no spreadsheet engine, and of what explains a function only its cautions", () => {
    expect(built.packages).toContain("node_modules/workbox-precaching");
    expect(built.packages.filter((name) => name.includes("univer"))).toEqual([]);
    const first = built.firstLoad.map((name) => bytes(name).toString()).join("\n");
    const explains = catalogue.flatMap(({ page }) => [page.summary, ...page.guide]);
    expect(explains.filter((text) => first.includes(text))).toEqual([]);
    expect(first.includes("carbon-monoxide")).toBe(true);
  });

  test("is installed with icons and addresses of its own folder", () => {
    const manifest = JSON.parse(bytes("phone.webmanifest").toString()) as {
      start_url: string;
      scope: string;
      icons: { src: string }[];
    };
    expect([manifest.start_url, manifest.scope]).toEqual(["./", "./"]);
    expect(manifest.icons.map(({ src }) => src).filter((src) => !files.includes(src))).toEqual([]);
  });

  test("has a service worker that knows every file, each with a sum of its content", () => {
    const worker = bytes("service-worker.js").toString();
    const others = files.filter((name) => name !== "service-worker.js");
    expect(others.filter((name) => !worker.includes(`"${name}"`))).toEqual([]);
    expect(worker.includes("process.env")).toBe(false);
  });
});
