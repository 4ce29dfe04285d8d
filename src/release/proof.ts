import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { officeOrigin } from "../build/page-policy";
import { serve } from "../build/serve";
import { parseXml } from "../workbook-files/xml";
import { addressesIn } from "./manifest-problems";
import { alteredFiles, filesIn, unpack } from "./packing";

/** Stands in for Office.js: the functions page needs no more than a place to put its functions. */
const officeStandIn = `
  window.associated = {};
  window.CustomFunctions = { associate: (id, call) => { window.associated[id] = call; } };
`;

declare const associated: Readonly<Record<string, (...given: unknown[]) => unknown>>;
declare const workbookGrid: { workbook(): { sheets: readonly { cells: readonly SeenCell[] }[] } };
interface SeenCell {
  readonly formula?: string;
  readonly value?: unknown;
}

/**
 * What a packed release does wrong, one line each, tried on the archive alone: unpacked into a clean folder, served
 * from there, opened in a browser.
 */
export async function faultsOf(archive: Buffer, origin: string, browser: Browser): Promise<string[]> {
  const folder = mkdtempSync(join(tmpdir(), "tea-release-"));
  await unpack(archive, folder);
  const { server, address } = await serve(folder, 0, "");
  const context = await browser.newContext();
  try {
    const page = await context.newPage();
    const wrong: string[] = [];
    page.on("pageerror", ({ message }) => wrong.push(`${page.url()}: ${message}`));
    await page.route(`${officeOrigin}/**`, (route) =>
      route.fulfill({ contentType: "text/javascript", body: officeStandIn }),
    );
    return [
      ...alteredFiles(folder).map((path) => `${path} is not what its sum says`),
      ...(await deadAddresses(folder, origin, address)),
      ...(await deadLinks(page, folder, address)),
      ...(await faultsOfFunctions(page, folder, address)),
      ...(await faultsOfWorkbook(page, address)),
      ...wrong,
    ];
  } finally {
    await context.close();
    server.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** What Excel would ask for in vain. */
async function deadAddresses(folder: string, origin: string, address: string): Promise<string[]> {
  const wanted = addressesIn(parseXml(readFileSync(join(folder, "manifest.xml"), "utf8")));
  const { functions } = JSON.parse(readFileSync(join(folder, "functions.json"), "utf8")) as {
    functions: { helpUrl: string }[];
  };
  const paths = [...wanted, ...functions.map(({ helpUrl }) => helpUrl)].map((each) => each.slice(origin.length + 1));
  const answers = await Promise.all(
    [...new Set(paths)].map(async (path) => [path, await fetch(address + path)] as const),
  );
  return answers.filter(([, { ok }]) => !ok).map(([path, { status }]) => `${path} answers ${status}`);
}

/** What a reader of the site would click in vain. */
async function deadLinks(page: Page, folder: string, address: string): Promise<string[]> {
  const dead: string[] = [];
  for (const path of filesIn(folder).filter((file) => /^(index|docs\/.*)\.html$/.test(file))) {
    await page.goto(address + path);
    const links = await page
      .locator("a[href]")
      .evaluateAll((all) => all.map((link) => (link as HTMLAnchorElement).href));
    for (const link of new Set(links.filter((each) => each.startsWith(address)))) {
      const { ok } = await fetch(link.replace(/#.*/, ""), { method: "HEAD" });
      if (!ok) dead.push(`${path} leads to ${link.slice(address.length)}, which is not there`);
    }
  }
  return dead;
}

async function faultsOfFunctions(page: Page, folder: string, address: string): Promise<string[]> {
  const { functions } = JSON.parse(readFileSync(join(folder, "functions.json"), "utf8")) as {
    functions: { id: string }[];
  };
  await page.goto(`${address}functions.html`);
  await page.waitForFunction((count) => Object.keys(associated).length === count, functions.length);
  // 320 × 0.25 / 0.4 = 200
  const answer = await page.evaluate(() => associated.TARGETWEIGHT?.([[320]], [[0.75]], [[0.6]]));
  const isRight = Math.abs(((answer as number[][])[0]?.[0] as number) - 200) < 1e-9;
  return isRight ? [] : [`TARGETWEIGHT(320, 75%, 60%) gives ${JSON.stringify(answer)} instead of 200`];
}

async function faultsOfWorkbook(page: Page, address: string): Promise<string[]> {
  await page.goto(`${address}workbook/index.html`);
  await page.waitForSelector("html[data-ready]", { timeout: 120_000 });
  const cells = await page.evaluate(() => workbookGrid.workbook().sheets.flatMap((sheet) => sheet.cells));
  const answers = cells.filter(({ formula }) => formula?.includes("TEA."));
  const errors = answers.filter(({ value }) => value === undefined || /^#/.test(String(value)));
  return [
    ...(answers.length > 20 ? [] : [`the sample shows ${answers.length} cells with functions`]),
    ...errors.map(({ formula, value }) => `${formula} shows ${value}`),
  ];
}
