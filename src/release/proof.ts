import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { filesIn } from "../build/folders";
import { sheetsScript } from "../build/google-sheets";
import { officeOrigin } from "../build/page-policy";
import { serve } from "../build/serve";
import { mayCallOurs } from "../core/describe";
import { parseXml } from "../xlsx/container/xml-tree";
import { addressesIn } from "./manifest-problems";
import { alteredFiles, unpack } from "./packing";
import { followed, referencesIn } from "./references";
import { faultsOfSample } from "./samples";
import { officeStandIn } from "./stand-ins";
import { faultsOfFunctions } from "./tried-functions";
import { faultsInGoogleSheets } from "./tried-in-google-sheets";

declare const workbookGrid: { workbook(): { sheets: readonly { cells: readonly SeenCell[] }[] } };
interface SeenCell {
  readonly formula?: string;
  readonly value?: unknown;
}

/** An unpacked release, and where it is served for the proof. */
interface Unpacked {
  readonly folder: string;
  readonly origin: string;
  readonly address: string;
}

/**
 * What a packed release does wrong, one line each, tried on the archive alone: unpacked into a clean folder, served
 * from there under the path that it will have, opened in a browser.
 */
export async function faultsOf(archive: Buffer, origin: string, browser: Browser): Promise<string[]> {
  const folder = mkdtempSync(join(tmpdir(), "tea-release-"));
  await unpack(archive, folder);
  const { server, address } = await serve(folder, 0, "", new URL(`${origin}/`).pathname);
  const release = { folder, origin, address };
  const context = await browser.newContext();
  try {
    const page = await context.newPage();
    const wrong: string[] = [];
    page.on("pageerror", ({ message }) => wrong.push(`${page.url().slice(address.length)}: ${message}`));
    page.on("console", (message) => {
      if (message.type() === "error") wrong.push(`${page.url().slice(address.length)}: ${message.text()}`);
    });
    await page.route(`${officeOrigin}/**`, (route) =>
      route.fulfill({ contentType: "text/javascript", body: officeStandIn(route.request().url()) }),
    );
    return [
      ...alteredFiles(folder).map((path) => `${path} is not what its sum says`),
      ...(await deadAddresses(release)),
      ...(await deadReferences(page, release)),
      ...(await faultsOfFunctions(page, folder, address)),
      ...faultsInGoogleSheets(join(folder, "google-sheets", sheetsScript)),
      ...(await faultsOfPane(page, address)),
      ...(await faultsOfWorkbook(page, address)),
      ...(await faultsOfPhone(page, address)),
      ...(await faultsOfSamples(folder)),
      ...wrong,
    ];
  } finally {
    await context.close();
    server.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** What Excel would ask for in vain. */
async function deadAddresses({ folder, origin, address }: Unpacked): Promise<string[]> {
  const wanted = addressesIn(parseXml(readFileSync(join(folder, "manifest.xml"), "utf8")));
  const { functions } = JSON.parse(readFileSync(join(folder, "functions.json"), "utf8")) as {
    functions: { helpUrl: string }[];
  };
  const all = [...new Set([...wanted, ...functions.map(({ helpUrl }) => helpUrl)])];
  const strange = all.filter((each) => !each.startsWith(`${origin}/`)).map((each) => `${each} is not under ${origin}`);
  const paths = all.filter((each) => each.startsWith(`${origin}/`)).map((each) => each.slice(origin.length + 1));
  const answers = await Promise.all(paths.map(async (path) => [path, await fetch(address + path)] as const));
  return [...strange, ...answers.filter(([, { ok }]) => !ok).map(([path, { status }]) => `${path} answers ${status}`)];
}

/** What a reader of the site would click in vain, and what its pages would load in vain. */
async function deadReferences(page: Page, { folder, origin, address }: Unpacked): Promise<string[]> {
  const site = { origin, address, trusted: [officeOrigin] };
  const faults: string[] = [];
  for (const path of filesIn(folder).filter((file) => file.endsWith(".html"))) {
    for (const reference of await referencesIn(page, readFileSync(join(folder, path), "utf8"))) {
      const { fault, address: target } = followed(reference, path, site);
      if (fault) faults.push(`${path} names ${reference.written}, which ${fault}`);
      else if (target && !(await fetch(target, { method: "HEAD" })).ok)
        faults.push(`${path} leads to ${target.slice(address.length)}, which is not there`);
    }
  }
  return [...new Set(faults)];
}

/** Opens a page and waits for what it shows; false when it fails, or does not show it in time. */
async function shows(page: Page, address: string, selector: string, timeout: number): Promise<boolean> {
  const failed = page.waitForEvent("pageerror", { timeout }).then(
    () => false,
    () => false,
  );
  const response = await page.goto(address);
  if (!response?.ok()) return false;
  const shown = page.waitForSelector(selector, { timeout }).then(
    () => true,
    () => false,
  );
  return Promise.race([failed, shown]);
}

async function faultsOfPane(page: Page, address: string): Promise<string[]> {
  const isThere = await shows(page, `${address}pane.html`, "#pane .jobs", 30_000);
  return isThere ? [] : ["pane.html does not show its jobs"];
}

async function faultsOfWorkbook(page: Page, address: string): Promise<string[]> {
  const isThere = await shows(page, `${address}workbook/index.html`, "html[data-ready]", 120_000);
  if (!isThere) return ["workbook/index.html does not get ready"];
  const cells = await page.evaluate(() => workbookGrid.workbook().sheets.flatMap((sheet) => sheet.cells));
  const answers = cells.filter(({ formula }) => formula !== undefined && mayCallOurs(formula));
  const errors = answers.filter(({ value }) => value === undefined || /^#/.test(String(value)));
  return [
    ...(answers.length > 20 ? [] : [`the sample shows ${answers.length} cells with functions`]),
    ...errors.map(({ formula, value }) => `${formula} shows ${value}`),
  ];
}

async function faultsOfPhone(page: Page, address: string): Promise<string[]> {
  const isThere = await shows(page, `${address}phone/index.html`, "#phone .jobs", 30_000);
  if (!isThere) return ["phone/index.html does not show its jobs"];
  const isKept = await page.evaluate(async () => {
    const isActive = navigator.serviceWorker.ready.then(() => true);
    return Promise.race([isActive, new Promise<boolean>((done) => setTimeout(done, 10_000, false))]);
  });
  return isKept ? [] : ["phone/index.html cannot be kept for use without a connection"];
}

async function faultsOfSamples(folder: string): Promise<string[]> {
  const samples = filesIn(folder).filter((path) => path.endsWith(".xlsx"));
  if (!samples.some((path) => path.startsWith("sample-workbooks/"))) return ["there are no sample workbooks"];
  const faults: string[] = [];
  for (const path of samples) {
    const found = await faultsOfSample(new Uint8Array(readFileSync(join(folder, path))));
    faults.push(...found.map((fault) => `${path}: ${fault}`));
  }
  return faults;
}
