/**
 * What the pictures of the guide show. The same steps are taken in every language on the running page, once for the
 * pictures and again in the tests, which compare what can be read in them.
 */
import type { Page } from "playwright-core";

/** As far as the scenes use it; the page keeps its grid under this name. */
declare const workbookGrid: {
  readonly shown: (sheet: string, row: number, column: number) => string;
  readonly workbook: () => { readonly sheets: readonly { readonly name: string }[] };
  readonly api: {
    readonly getActiveWorkbook: () => {
      readonly getSheets: () => readonly unknown[];
      readonly setActiveSheet: (sheet: unknown) => void;
    };
  };
};

export interface Scene {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  /** Where it begins, under the address of the workbook page, and what is there once the page can be used. */
  readonly opens: string;
  readonly ready: string;
  /** Leads up to what is shown, from a page that has just been opened or from any scene before it of its address. */
  readonly act: (page: Page) => Promise<void>;
  /** The part of the page that is in the picture. */
  readonly part: string;
  /** Cells that are in the picture: the grid is a painting, in which no test can read. Sheets count from 0. */
  readonly cells?: readonly { readonly sheet: number; readonly rows: number; readonly columns: number }[];
}

const grid = { opens: "?workbook=one-lot", ready: "html[data-ready]" } as const;
const pane = { ...grid, width: 420, height: 1000, part: "#pane .preview" } as const;
const wide = { ...grid, width: 1280, height: 800, part: "body" } as const;
const season = { ...wide, opens: "?workbook=season" } as const;
const phone = { opens: "phone/", ready: ".jobs", width: 390, height: 780, part: "main" } as const;

const openPane = async (page: Page, tab: string): Promise<void> => {
  if (await page.locator("#pane").isHidden()) await page.click("#pane-button");
  await page.click(`#tab-${tab}`);
};

/** A job with other numbers than those that it comes with. */
const openJob = async (page: Page, job: string, typed: Readonly<Record<string, string>> = {}): Promise<void> => {
  await openPane(page, "jobs");
  if (await page.locator("#pane .back").isVisible()) await page.click("#pane .back");
  await page.click(`#open-${job}`);
  for (const [field, text] of Object.entries(typed)) await page.fill(`#${job}-${field}`, text);
};

/** By its place: its name depends on the language. */
const showSheet = (page: Page, sheet: number): Promise<void> =>
  page.evaluate((sheet) => {
    const book = workbookGrid.api.getActiveWorkbook();
    book.setActiveSheet(book.getSheets()[sheet]);
  }, sheet);

export const scenes: readonly Scene[] = [
  // Before the pane has been opened.
  {
    name: "lot",
    ...wide,
    act: async () => {},
    cells: [{ sheet: 0, rows: 28, columns: 10 }],
  },
  { name: "charges", ...pane, part: "#pane form.job", act: (page) => openJob(page, "charges") },
  { name: "meaning", ...pane, act: (page) => openJob(page, "scale", { loss: "30 %" }) },
  { name: "ready", ...pane, act: (page) => openJob(page, "ready") },
  { name: "finished", ...pane, act: (page) => openJob(page, "finished", { finishedWeight: "352" }) },
  { name: "tins", ...pane, act: (page) => openJob(page, "tins") },
  {
    name: "check",
    ...season,
    act: async (page) => {
      await openPane(page, "check");
      await page.click("#pane-page button.primary");
      await page.waitForSelector("#pane .findings");
    },
    cells: [{ sheet: 0, rows: 24, columns: 6 }],
  },
  {
    name: "season",
    ...season,
    act: (page) => showSheet(page, 1),
    cells: [{ sheet: 1, rows: 22, columns: 15 }],
  },
  {
    name: "phone",
    ...phone,
    act: async (page) => {
      await page.click("#open-moisture");
      const typed = { startWeight: "600", startMoisture: "75", weightNow: "375" };
      for (const [field, text] of Object.entries(typed)) await page.fill(`#moisture-${field}`, text);
    },
  },
];

/** Everything that can be read in the picture, a line each. */
export async function wordsIn(page: Page, { part, cells = [] }: Scene): Promise<string[]> {
  // biome-ignore lint/performance/useDomNodeTextContent: line by line, as it is seen, and nothing that is hidden
  const said = await page.locator(part).evaluate((shown) => (shown as HTMLElement).innerText);
  const shown = await page.evaluate(
    (cells) =>
      cells.flatMap(({ sheet, rows, columns }) => {
        const name = workbookGrid.workbook().sheets[sheet]?.name ?? "";
        return Array.from({ length: rows }, (_, row) =>
          Array.from({ length: columns }, (_, column) => workbookGrid.shown(name, row, column)).join("\t"),
        );
      }),
    cells,
  );
  return [...said.split("\n"), ...shown].map((line) => line.trim()).filter((line) => line !== "");
}
