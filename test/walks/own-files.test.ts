/** Files of the maker's own in the page: read in a thread that can be ended, kept side by side, saved into the very file. */
import { readFile } from "node:fs/promises";
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import { readWorkbook } from "../../src/xlsx/read-workbook";
import { select, shown, typeOver, untilReady } from "../browser/workbook-driver";
import { workbookVisits } from "../browser/workbook-visits";
import { handwritten } from "../xlsx/handwritten-book";

const found = await findBrowser();
const patience = { timeout: 30_000 };

const bookOf = (fresh: number, more = ""): Buffer =>
  Buffer.from(
    handwritten({
      sheets: {
        Lots: `<sheetData><row r="1"><c r="A1"><v>${fresh}</v></c><c r="B1"><f>A1*0.25</f></c></row>${more}</sheetData>`,
      },
    }),
  );

const status = (page: Page) => page.textContent("#status");
const fileNamed = (name: string, buffer: Buffer) => ({ name, mimeType: "", buffer });
const agree = (page: Page, label: string) =>
  page.locator("dialog").getByRole("button", { name: label, exact: true }).click();

async function openFile(page: Page, name: string, buffer: Buffer): Promise<string> {
  const before = page.url();
  await page.setInputFiles("#file", fileNamed(name, buffer));
  await agree(page, "Open it");
  await page.waitForURL((url) => url.href !== before && url.href.includes("workbook=own-file"));
  await untilReady(page);
  return page.url();
}

async function fromMenu(page: Page, item: string): Promise<void> {
  await page.click("#menu summary");
  await page.click(item);
  await page.waitForSelector("dialog");
}

const freshIn = (bytes: Uint8Array) => readWorkbook(bytes).sheets[0]?.cells.find(({ column }) => column === 0)?.value;

describe.skipIf(!found)("files of one's own", { timeout: 180_000 }, () => {
  const visits = workbookVisits(found);

  test("are kept side by side, listed with the day, and removed after a question", async () => {
    const { page, address, end } = await visits.begin();
    expect(await page.isVisible("#own-files")).toBe(false);
    const spring = await openFile(page, "spring.xlsx", bookOf(800));
    await typeOver(page, "Lots", "A1", "900");
    await expect.poll(() => shown(page, "Lots", "B1"), patience).toBe("225");
    // At once, and with the next number half typed.
    await select(page, "Lots", "A2");
    await page.keyboard.type("12");
    const summer = await openFile(page, "summer.xlsx", bookOf(400));
    expect(summer).not.toBe(spring);
    expect(await shown(page, "Lots", "B1")).toBe("100");

    await fromMenu(page, "#own-files");
    await expect.poll(() => page.locator(".files a").allTextContents(), patience).toEqual(["summer", "spring"]);
    const today = await page.evaluate(() => new Date().toLocaleDateString([], { dateStyle: "medium" }));
    expect(await page.locator(".files time").allTextContents()).toEqual([`changed ${today}`, `changed ${today}`]);
    await page.locator(".files a").nth(1).click();
    await page.waitForURL(spring);
    await untilReady(page);
    await expect.poll(() => shown(page, "Lots", "B1"), patience).toBe("225");
    expect(await shown(page, "Lots", "A2")).toBe("12");

    // Another of the same name is put beside it.
    await page.setInputFiles("#file", fileNamed("spring.xlsx", bookOf(1)));
    expect(await page.textContent(".question p")).toContain(
      `A file of this name is kept here already, last changed ${today}`,
    );
    await agree(page, "Cancel");

    await fromMenu(page, "#own-files");
    await page.locator(".files li", { hasText: "summer" }).getByRole("button").click();
    await page.locator("dialog").last().getByRole("button", { name: "Cancel", exact: true }).click();
    expect(await page.locator(".files li").count()).toBe(2);
    await page.locator(".files li", { hasText: "summer" }).getByRole("button").click();
    expect(await page.locator("dialog p").last().textContent()).toContain("Remove “summer” from this browser?");
    await page.locator("dialog").last().getByRole("button", { name: "Remove", exact: true }).click();
    await expect.poll(() => page.locator(".files a").allTextContents(), patience).toEqual(["spring"]);
    // What is shown goes last: the page goes back to the sample.
    await page.locator(".files li").getByRole("button").click();
    await page.locator("dialog").last().getByRole("button", { name: "Remove", exact: true }).click();
    await page.waitForURL(address);
    await untilReady(page);
    expect(await page.isVisible("#own-files")).toBe(false);
    const left = await page.evaluate(
      () =>
        new Promise<unknown>((done) => {
          const opening = indexedDB.open("tea-mass-balance");
          opening.onsuccess = () => {
            const asked = opening.result.transaction("work").objectStore("work").getAllKeys();
            asked.onsuccess = () => done(asked.result.filter((each) => String(each).startsWith("own-file")));
          };
        }),
    );
    expect(left).toEqual([]);
    await end();
  });

  test("that a page kept when it kept one alone are there still", async () => {
    const { page, address, end } = await visits.begin();
    const kept = await openFile(page, "old.xlsx", bookOf(640));
    await page.goto(`${address}docs/functions/index.html`);
    await page.evaluate(
      (from) =>
        new Promise<void>((done) => {
          const opening = indexedDB.open("tea-mass-balance");
          opening.onsuccess = () => {
            const store = opening.result.transaction("work", "readwrite").objectStore("work");
            for (const part of ["", "/original"]) {
              const asked = store.get(from + part);
              asked.onsuccess = () => store.put(asked.result, `own-file${part}`);
            }
            store.delete(IDBKeyRange.bound(`${from}`, `${from}/z`));
            store.transaction.oncomplete = () => done();
          };
        }),
      new URL(kept).searchParams.get("workbook") as string,
    );
    await page.goto(address);
    await untilReady(page);
    await page.click("#workbooks a:has-text('old')");
    await page.waitForURL(/workbook=own-file$/);
    await untilReady(page);
    expect(await shown(page, "Lots", "A1")).toBe("640");
    const [download] = await Promise.all([page.waitForEvent("download"), page.click("#download")]);
    expect(freshIn(await readFile(await download.path()))).toBe(640);
    await end();
  });

  test("are read in a thread of their own, which Cancel ends and a time limit", async () => {
    const { page, end } = await visits.begin();
    // The thread never answers, as one with too much to read.
    await page.evaluate(() => {
      const page = globalThis as unknown as { Worker: unknown; threads: { ended: boolean }[] };
      page.threads = [];
      page.Worker = class {
        ended = false;
        constructor() {
          page.threads.push(this);
        }
        addEventListener() {}
        postMessage() {}
        terminate() {
          this.ended = true;
        }
      };
    });
    await page.setInputFiles("#file", fileNamed("slow.xlsx", bookOf(1)));
    expect(await page.textContent(".waiting")).toContain("Reading “slow.xlsx” …");
    await page.locator(".waiting").getByRole("button", { name: "Cancel" }).click();
    await expect.poll(() => page.locator(".waiting").count(), patience).toBe(0);
    await page.evaluate(() => {
      const wait = globalThis.setTimeout;
      globalThis.setTimeout = ((act: () => void, time: number) =>
        wait(act, time === 120_000 ? 50 : time)) as typeof setTimeout;
    });
    await page.setInputFiles("#file", fileNamed("slow.xlsx", bookOf(1)));
    await expect
      .poll(() => status(page), patience)
      .toContain("“slow.xlsx” was not opened. Reading it took more than two minutes");
    const ended = await page.evaluate(() =>
      (globalThis as unknown as { threads: { ended: boolean }[] }).threads.map((thread) => thread.ended),
    );
    expect(ended).toEqual([true, true]);
    expect(page.url()).not.toContain("own-file");
    await end();
  });

  test("that are refused say why, and the page goes on", async () => {
    const { page, end } = await visits.begin();
    await page.setInputFiles("#file", fileNamed("broken.xlsx", bookOf(1).subarray(0, 300)));
    await expect.poll(() => status(page), patience).toMatch(/^“broken.xlsx” was not opened\. The file is damaged/);
    expect(page.workers()).toEqual([]);
    await end();
  });

  test("are opened by dropping them on the page", async () => {
    const { page, end } = await visits.begin();
    await page.evaluate(
      (bytes) => {
        const data = new DataTransfer();
        data.items.add(new File([new Uint8Array(bytes)], "dropped.xlsx"));
        document.body.dispatchEvent(new DragEvent("drop", { bubbles: true, cancelable: true, dataTransfer: data }));
      },
      [...bookOf(320)],
    );
    await agree(page, "Open it");
    await page.waitForURL(/workbook=own-file/);
    await untilReady(page);
    expect(await shown(page, "Lots", "B1")).toBe("80");
    await end();
  });

  /** A file of the browser's own file system stands for one on the disk: its handle is of the same kind. */
  test("are saved into the very file, after asking, and never over what another program wrote", async () => {
    const { page, end } = await visits.begin((page) =>
      page.addInitScript(() => {
        Object.assign(globalThis, {
          showOpenFilePicker: async () => {
            const root = await navigator.storage.getDirectory();
            return [await root.getFileHandle("book.xlsx")];
          },
        });
      }),
    );
    const write = (bytes: Buffer) =>
      page.evaluate(
        async (content) => {
          const root = await navigator.storage.getDirectory();
          const writing = await (await root.getFileHandle("book.xlsx", { create: true })).createWritable();
          await writing.write(new Uint8Array(content));
          await writing.close();
        },
        [...bytes],
      );
    const onDisk = async (): Promise<Uint8Array> =>
      new Uint8Array(
        await page.evaluate(async () => {
          const root = await navigator.storage.getDirectory();
          const file = await (await root.getFileHandle("book.xlsx")).getFile();
          return [...new Uint8Array(await file.arrayBuffer())];
        }),
      );
    const given = bookOf(800);
    await write(given);
    await fromMenu(page, "#open");
    expect(await page.textContent(".question p")).toContain("the file itself is not changed until you save into it");
    await agree(page, "Open it");
    await page.waitForURL(/workbook=own-file/);
    await untilReady(page);
    await typeOver(page, "Lots", "A1", "900");
    await expect.poll(() => shown(page, "Lots", "B1"), patience).toBe("225");
    expect(Buffer.from(await onDisk()).equals(given)).toBe(true);

    await page.click("#download");
    expect(await page.textContent(".question p")).toContain("Save into “book.xlsx” itself?");
    await agree(page, "Into the file");
    await expect.poll(() => status(page), patience).toContain("Saved into “book.xlsx”");
    expect(freshIn(await onDisk())).toBe(900);

    // The way back to the file is kept over a reload; in a new visit the page asks again, and then no more.
    await expect.poll(() => status(page), patience).toMatch(/Saved|Kept/);
    await page.reload();
    await untilReady(page);
    for (const [weight, isAsked] of [
      ["1000", true],
      ["1100", false],
    ] as const) {
      await typeOver(page, "Lots", "A1", weight);
      await page.click("#download");
      if (isAsked) await agree(page, "Into the file");
      await expect.poll(async () => freshIn(await onDisk()), patience).toBe(Number(weight));
    }

    // Another program changes the file: it stays, and the work is given as a download.
    await write(bookOf(5));
    await typeOver(page, "Lots", "A1", "1200");
    await page.click("#download");
    expect(await page.textContent(".question p")).toContain("another program has changed it since");
    const [download] = await Promise.all([page.waitForEvent("download"), agree(page, "Download it")]);
    expect(download.suggestedFilename()).toBe("book.xlsx");
    expect(freshIn(await readFile(await download.path()))).toBe(1200);
    expect(freshIn(await onDisk())).toBe(5);

    // A browser that forbids it.
    await page.evaluate(() => {
      Object.assign(FileSystemHandle.prototype, {
        queryPermission: async () => "prompt",
        requestPermission: async () => "denied",
      });
    });
    await page.click("#download");
    await agree(page, "Into the file");
    await expect.poll(() => page.textContent(".question p"), patience).toContain("does not let this page write");
    await agree(page, "Cancel");
    expect(freshIn(await onDisk())).toBe(5);
    await end();
  });
});
