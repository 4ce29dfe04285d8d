import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { sheetsScript } from "../build/google-sheets";
import { officeOrigin } from "../build/page-policy";
import { serve } from "../build/serve";
import { alteredFiles, unpack } from "./packing";
import { faultsOfSamples } from "./samples";
import { officeStandIn } from "./stand-ins";
import { deadAddresses, deadReferences, type Site } from "./tried-addresses";
import { faultsOfFunctions } from "./tried-functions";
import { faultsInGoogleSheets } from "./tried-in-google-sheets";
import { faultsOfPane, faultsOfPhone, faultsOfWorkbook } from "./tried-pages";

/** An unpacked release that is served, and the page that it is tried in. */
interface Tried extends Site {
  readonly page: Page;
  /** How long the phone page has to be kept on the phone, in milliseconds: nothing says that it never will be. */
  readonly keptWithin: number;
}

/** The parts of the proof by their names, in the order in which they are tried. */
const parts = {
  sums: ({ folder }) => alteredFiles(folder).map((path) => `${path} is not what its sum says`),
  addresses: (site) => deadAddresses(site),
  references: ({ page, ...site }) => deadReferences(page, site),
  functions: ({ page, folder, address }) => faultsOfFunctions(page, folder, address),
  "Google Sheets": ({ folder }) => faultsInGoogleSheets(join(folder, "google-sheets", sheetsScript)),
  pane: ({ page, address }) => faultsOfPane(page, address),
  workbook: ({ page, address }) => faultsOfWorkbook(page, address),
  phone: ({ page, address, keptWithin }) => faultsOfPhone(page, address, keptWithin),
  samples: ({ folder }) => faultsOfSamples(folder),
} satisfies Readonly<Record<string, (tried: Tried) => string[] | Promise<string[]>>>;

export type Part = keyof typeof parts;

interface Limits {
  /** The parts that are tried: all of them, unless a test asks for the one that it breaks. */
  readonly only?: readonly Part[];
  readonly keptWithin?: number;
}

/**
 * What a packed release does wrong, one line each, tried on the archive alone: unpacked into a clean folder, served
 * from there under the path that it will have, opened in a browser.
 */
export async function faultsOf(archive: Buffer, origin: string, browser: Browser): Promise<string[]> {
  const folder = mkdtempSync(join(tmpdir(), "tea-release-"));
  try {
    await unpack(archive, folder);
    return await faultsIn(folder, origin, browser);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The same of a release that is unpacked already. */
export async function faultsIn(
  folder: string,
  origin: string,
  browser: Browser,
  { only = Object.keys(parts) as Part[], keptWithin = 30_000 }: Limits = {},
): Promise<string[]> {
  const { server, address } = await serve(folder, 0, "", new URL(`${origin}/`).pathname);
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
    const faults: string[] = [];
    for (const part of only) faults.push(...(await parts[part]({ folder, origin, address, page, keptWithin })));
    return [...faults, ...wrong];
  } finally {
    await context.close();
    server.close();
  }
}
