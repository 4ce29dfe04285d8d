import { readFile } from "node:fs/promises";
import ExcelJS from "exceljs";
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import type { Grid } from "../../src/pages/workbook/grid";
import { addressOf } from "../../src/workbook/addresses";
import { readWorkbook } from "../../src/xlsx/read-workbook";
import {
  coveredOf,
  openWorkbook,
  placeOfCell,
  select,
  shown,
  typeOver,
  untilReady,
  value,
  values,
} from "../browser/workbook-driver";
import { type Visit, workbookVisits } from "../browser/workbook-visits";

declare const workbookGrid: Grid;

const found = await findBrowser();
const patience = { timeout: 20_000 };

describe.skipIf(!found)("the workbook page", () => {
  const visits = workbookVisits(found);
  let visit: Visit;
  let page: Page;
  let address: string;

  const begin = async () => {
    visit = await visits.begin();
    ({ page, address } = visit);
  };
  const line = () => page.textContent("#line");
  const status = () => page.textContent("#status");

  describe("opened once, with every step undone before the next test,", () => {
    let sample: Awaited<ReturnType<typeof values>>;

    beforeAll(async () => {
      await begin();
      sample = await values(page, "Lot");
    });
    afterEach(async () => {
      await page.emulateMedia({ media: null, colorScheme: null });
      while (await page.evaluate(() => workbookGrid.api.undo()));
      await expect.poll(() => values(page, "Lot"), { ...patience, interval: 300 }).toEqual(sample);
    });
    afterAll(() => visit?.end());

    test("opens on the sample, calculated as in its file", async () => {
      const sample = readWorkbook(await readFile("sample-workbooks/one-lot.xlsx"));
      const cached = sample.sheets[0]?.cells.filter(({ formula, value }) => formula && value !== "") ?? [];
      expect(cached.length).toBeGreaterThan(20);
      const calculated = await values(page, "Lot");
      for (const { row, column, value } of cached) {
        const result = calculated.get(addressOf(row, column));
        if (typeof value === "number") expect(result, addressOf(row, column)).toBeCloseTo(value, 9);
        else expect(result, addressOf(row, column)).toBe(value);
      }
    });

    test("a formula typed in a cell gives its number", async () => {
      await typeOver(page, "Lot", "H2", "=TEA.TARGETWEIGHT(320,75%,60%)");
      await expect.poll(() => value(page, "Lot", "H2"), patience).toBe(200);
    });

    test("an input changed changes the plan, and what is shown follows a plan that gets shorter", async () => {
      expect(await shown(page, "Lot", "F5")).toBe("4");
      expect(await shown(page, "Firing card", "A23")).toBe("Charge 4");
      await typeOver(page, "Lot", "B12", "800");
      await expect.poll(() => shown(page, "Lot", "F5"), patience).toBe("3");
      await expect.poll(() => shown(page, "Firing card", "A23"), patience).toBe("");
      const loads = [0, 1, 2].map((charge) => shown(page, "Firing card", `B${5 + 6 * charge}`));
      expect(
        (await Promise.all(loads)).map((load) => Number(load.replace("load", ""))).reduce((sum, load) => sum + load),
      ).toBeCloseTo(800, 9);
    });

    test("76 typed as a moisture shows its message, and its neighbours stay", async () => {
      await typeOver(page, "Lot", "B15", "76");
      await expect
        .poll(line, patience)
        .toContain("“Fresh moisture, measured” must be from 0 up to, not including, 1 (76% or 0.76); got 76");
      expect(await shown(page, "Lot", "B15")).toBe("7600.0%");
      expect(await shown(page, "Lot", "F5")).toBe("4");
      expect(await shown(page, "Lot", "F12")).toBe("1240.0");
      // Of an answer that waits for it, the cell itself says what for.
      await select(page, "Lot", "H12");
      await expect.poll(line, patience).toContain("H12: waits for B15");
      expect((await line())?.split("H12: ")[1]).toContain("“Fresh moisture, measured” must be");
    });

    test.each(["Enter", "Tab"])(
      "what is refused keeps its reason in sight after %s, until it is mended",
      async (key) => {
        await select(page, "Lot", "B18");
        await page.keyboard.type("350 g", { delay: 20 });
        await page.keyboard.press(key);
        const next = key === "Enter" ? "B19" : "C18";
        await expect
          .poll(line, patience)
          .toMatch(/^B18, pan load wanted, holds the text “350 g”: F5 and \d+ more cells wait/);
        await expect.poll(() => page.textContent(".bubble.has-error"), patience).toContain("holds the text “350 g”");
        await page.waitForTimeout(300);
        // The cell, those that come after it, and what comes after these.
        const kept = ["B18", "C18", "B19", next, ...(key === "Enter" ? ["C19", "B20"] : ["D18", "C19"])];
        expect(await coveredOf(page, kept)).toEqual([]);
        await page.keyboard.type("28", { delay: 60 });
        expect(await page.locator(".bubble.has-error").isVisible()).toBe(true);
        expect(await coveredOf(page, kept)).toEqual([]);
        await page.keyboard.press("Escape");
        // Its corner is marked.
        const corner = await placeOfCell(page, "B18");
        const red = () =>
          page.evaluate(({ x, y, width }) => {
            const canvas = document.querySelector<HTMLCanvasElement>("#grid canvas[id^=univer-sheet-main-canvas]");
            const frame = canvas?.getBoundingClientRect();
            if (!canvas || !frame) return 0;
            const scale = canvas.width / frame.width;
            const [left, top] = [(x + width - 12 - frame.x) * scale, (y - frame.y) * scale];
            const pixels = canvas.getContext("2d")?.getImageData(left, top, 14 * scale, 14 * scale).data ?? [];
            let count = 0;
            for (let place = 0; place < pixels.length; place += 4) {
              if ((pixels[place] ?? 0) > 140 && (pixels[place + 1] ?? 255) < 70) count += 1;
            }
            return count;
          }, corner);
        await expect.poll(red, patience).toBeGreaterThan(15);
        await typeOver(page, "Lot", "B18", "280");
        await expect.poll(() => page.locator(".bubble.has-error:visible").count(), patience).toBe(0);
        await expect.poll(line, patience).not.toContain("B18");
      },
    );

    test("a misspelt function is told as soon as it is typed, with the one that may be meant", async () => {
      await typeOver(page, "Lot", "B39", "=TEA.OUTRUN(B13,B9)");
      await expect.poll(line, patience).toBe("B39: there is no function TEA.OUTRUN; did you mean TEA.OUTTURN?");
      expect(await page.locator("#line").getAttribute("class")).toBe("has-error");
      expect(await page.textContent(".bubble.has-error")).toContain("did you mean TEA.OUTTURN?");
      await typeOver(page, "Lot", "B39", "=AVERGE(B9:B10)");
      await expect.poll(line, patience).toContain("B39: there is no function AVERGE; did you mean AVERAGE");
      await typeOver(page, "Lot", "B39", "=B9+");
      await expect
        .poll(line, patience)
        .toBe("B39: a text stands where a number belongs, or the formula is not complete");
      await typeOver(page, "Lot", "B39", "=AVERAGE(B9:B10)");
      await expect.poll(line, patience).not.toContain("B39");
      expect(await page.locator(".bubble:visible").count()).toBe(0);
    });

    test("weights that may stay blank are not waited for", async () => {
      for (const cell of ["B10", "B11", "B12"]) {
        await select(page, "Lot", cell);
        await page.keyboard.press("Delete");
      }
      await expect.poll(() => shown(page, "Lot", "F16"), patience).toBe("not known");
      await page.waitForTimeout(1000);
      for (const cell of ["B10", "B11", "B12"]) {
        await select(page, "Lot", cell);
        expect(await line()).not.toMatch(/wait/);
      }
      await select(page, "Lot", "H2");
      expect(await line()).toBe("Type over the tinted cells: every answer follows.");
    });

    test("a blank that answers wait for is named, and a card without numbers asks before it prints", async () => {
      await page.evaluate(() => {
        Object.assign(globalThis, { printed: 0 });
        window.print = () => Object.assign(globalThis, { printed: 1 });
      });
      for (const cell of ["B9", "B10", "B12"]) {
        await select(page, "Lot", cell);
        await page.keyboard.press("Delete");
      }
      await select(page, "Lot", "H2");
      await expect.poll(line, patience).toMatch(/B9, fresh weight, is blank: \d+ cells wait for it/);
      await page.click("#print");
      await expect
        .poll(() => page.textContent(".question p"), patience)
        .toMatch(/no numbers yet. Lot B9, fresh weight, is blank/);
      await page.getByRole("button", { name: "Do not print" }).click();
      expect(await page.evaluate(() => Reflect.get(globalThis, "printed"))).toBe(0);
    });

    test("a screen reader hears the cell, what it holds and what it has to say", async () => {
      const said = () => page.textContent("#said");
      await select(page, "Lot", "B9");
      await expect.poll(said, patience).toMatch(/^B9, 1240\.0\. ./);
      await page.keyboard.press("ArrowDown");
      await expect.poll(said, patience).toMatch(/^B10, 1136\.2\. ./);
      expect(await page.getAttribute("#line", "aria-live")).toBe(null);
    });

    test.each(["76%", "0.76"])("%s typed as a moisture means that share", async (typed) => {
      await typeOver(page, "Lot", "B15", typed);
      await expect.poll(() => shown(page, "Lot", "F49"), patience).toBe("76.0%");
      expect(await shown(page, "Lot", "B15")).toBe("76.0%");
      expect(await value(page, "Lot", "B15")).toBe(0.76);
    });

    test("serves the page of a function, which the working of a cell links to", async () => {
      const response = await page.request.get(`${address}docs/functions/targetweight.html`);
      expect(response.status()).toBe(200);
      expect(await response.text()).toContain("What the scale should read when leaf has reached a target moisture.");
    });

    test("the note of a cell shows when the keyboard comes to it", async () => {
      await select(page, "Lot", "B12");
      await expect.poll(line, patience).toMatch(/^B12: ./);
      await page.keyboard.press("ArrowDown");
      await expect.poll(line, patience).toMatch(/^B13: ./);
      // In the line, which has room for it, and not over other cells.
      expect(await page.locator(".bubble:visible").count()).toBe(0);
    });

    test("the download opens elsewhere with live formulas and the same numbers", async () => {
      await typeOver(page, "Lot", "B12", "800");
      await expect.poll(() => shown(page, "Lot", "F5"), patience).toBe("3");
      const here = await values(page, "Lot");
      const [download] = await Promise.all([page.waitForEvent("download"), page.click("#download")]);
      const workbook = readWorkbook(await readFile(await download.path()));
      expect(workbook.sheets.map(({ name }) => name)).toContain("Firing card");
      const cells = workbook.sheets[0]?.cells ?? [];
      expect(cells.find(({ row, column }) => row === 4 && column === 5)?.formula).toContain("=TEA.CHARGECOUNT(");
      const there = new Map(cells.map(({ row, column, value }) => [addressOf(row, column), value]));
      for (const [cell, value] of here) if (value !== "") expect(there.get(cell), cell).toBe(value);
    });

    test("a file without need of the add-in has the functions in it, and says so", async () => {
      await page.click("#menu summary");
      const [download] = await Promise.all([page.waitForEvent("download"), page.click("#download-named")]);
      const { names = [], sheets } = readWorkbook(await readFile(await download.path()));
      const formulas = sheets.flatMap(({ cells }) => cells.flatMap(({ formula }) => formula ?? []));
      expect(formulas.join("\n")).toContain("=TEA_CHARGECOUNT(");
      expect(formulas.join("\n")).not.toContain("TEA.");
      expect(names.map((each) => each.name)).toContain("TEA_CHARGECOUNT");
      await expect.poll(status, patience).toContain("Its functions are in the file");
    });

    test("before a file opens, the page says what of it is kept without being shown", async () => {
      const file = new ExcelJS.Workbook();
      file.addWorksheet("Book").getCell("A1").dataValidation = { type: "whole", formulae: [1, 9] };
      file.addWorksheet("Old", { state: "hidden" });
      const buffer = Buffer.from(await file.xlsx.writeBuffer());
      await page.setInputFiles("#file", { name: "ledger.xlsx", mimeType: "", buffer });
      const question = await page.textContent(".question p");
      expect(question).toContain("Saving gives the same file back");
      expect(question).toContain("Kept in the file, but not shown here: data validation (Book!A1).");
      await page.getByRole("button", { name: "Cancel" }).click();
      expect(page.url()).not.toContain("own-file");
    });

    test("the firing card prints as a table, without the page around it", async () => {
      await page.evaluate(() => {
        window.print = () => {};
      });
      await page.click("#print");
      await page.emulateMedia({ media: "print" });
      expect(await page.isVisible("#grid")).toBe(false);
      const card = await page.textContent("#paper");
      expect(card).toContain("Charge 4");
      expect(card).toContain("276.7");
      expect(await page.locator("#paper table").count()).toBe(1);
      // On one page of A5, which is what a printer gets.
      const printed = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
      expect([...printed.matchAll(/\/Type\s*\/Page\b/g)].length).toBe(1);
    });
  });

  test("the note of a cell that is selected at the first moment shows", async () => {
    const early = await visits.begin((page) =>
      page.addInitScript(() => {
        const observer = new MutationObserver(() => {
          if (!document.documentElement?.dataset.ready) return;
          observer.disconnect();
          workbookGrid.api.getActiveWorkbook()?.getSheetByName("Lot")?.getRange(11, 1).activate();
        });
        observer.observe(document, { attributes: true, subtree: true });
      }),
    );
    await expect.poll(() => early.page.textContent("#line"), { timeout: 1000 }).toMatch(/^B12: ./);
    await early.end();
  });

  describe("opened anew each time,", () => {
    beforeEach(async () => {
      await begin();
      return visit.end;
    });

    const fromMenu = async (button: string) => {
      await page.click("#menu summary");
      await page.click(button);
    };
    const untilKept = () => expect.poll(status, patience).toContain("Kept in this browser");

    test("page, grid and pane are dark together where the system is, also when it changes; paper stays white", async () => {
      /** How light the parts are, from 0 to 255. */
      const lightness = () =>
        page.evaluate(() => {
          /** What is painted behind an element. */
          const behind = (element: Element | null): number => {
            if (element === null) return 255;
            const [red = 0, green = 0, blue = 0, opacity = 1] = (
              getComputedStyle(element).backgroundColor.match(/[\d.]+/g) ?? []
            ).map(Number);
            return opacity === 0 ? behind(element.parentElement) : (red + green + blue) / 3;
          };
          const canvas = document.querySelector<HTMLCanvasElement>("#grid canvas[id^=univer-sheet-main-canvas]");
          const pixels = canvas?.getContext("2d")?.getImageData(60, 60, 400, 300).data ?? [];
          // Where the grid draws nothing its element shows.
          const ground = behind(canvas);
          let sum = 0;
          for (let place = 0; place < pixels.length; place += 4) {
            const opacity = (pixels[place + 3] as number) / 255;
            sum += (pixels[place + 1] as number) * opacity + ground * (1 - opacity);
          }
          return {
            page: behind(document.body),
            line: behind(document.querySelector("#line")),
            pane: behind(document.querySelector("#pane")),
            grid: sum / (pixels.length / 4),
          };
        });
      await page.click("#pane-button");
      await page.waitForSelector("#pane .jobs");
      const brightest = async () => Math.max(...Object.values(await lightness()));
      const darkest = async () => Math.min(...Object.values(await lightness()));
      await expect.poll(darkest, patience).toBeGreaterThan(200);
      await page.emulateMedia({ colorScheme: "dark" });
      await expect.poll(brightest, patience).toBeLessThan(80);
      await page.emulateMedia({ colorScheme: "dark", media: "print" });
      const paper = await page.evaluate(() => getComputedStyle(document.body).backgroundColor);
      expect(paper).toBe("rgb(255, 255, 255)");
      await page.emulateMedia({ colorScheme: "light", media: "screen" });
      await expect.poll(darkest, patience).toBeGreaterThan(200);
    });

    test("a reload keeps the work", async () => {
      await typeOver(page, "Lot", "B12", "800");
      await expect.poll(() => shown(page, "Lot", "F5"), patience).toBe("3");
      await untilKept();
      await page.reload();
      await untilReady(page);
      await untilKept();
      expect(await shown(page, "Lot", "B12")).toBe("800.0");
      expect(await shown(page, "Lot", "F5")).toBe("3");
    });

    test("what the browser had no time to keep is there after a reload", async () => {
      await typeOver(page, "Lot", "B12", "700");
      await untilKept();
      await page.evaluate(() => {
        // A transaction that is busy reading does not come to an end, and what it wrote is dropped with the page.
        IDBObjectStore.prototype.put = function busy() {
          const request = this.get("nothing");
          request.addEventListener("success", () => busy.call(this));
          return request;
        };
      });
      await typeOver(page, "Lot", "B12", "800");
      await expect.poll(() => shown(page, "Lot", "F5"), patience).toBe("3");
      await page.reload();
      await untilReady(page);
      expect(await shown(page, "Lot", "B12")).toBe("800.0");
    });

    test("the way back to the sample asks first", async () => {
      await typeOver(page, "Lot", "B12", "800");
      await untilKept();
      await fromMenu("#back");
      await page.getByRole("button", { name: "Keep my work" }).click();
      expect(await shown(page, "Lot", "B12")).toBe("800.0");
      await fromMenu("#back");
      await Promise.all([page.waitForEvent("load"), page.getByRole("button", { name: "Start afresh" }).click()]);
      await untilReady(page);
      expect(await shown(page, "Lot", "B12")).toBe("1106.6");
    });

    test("a file of one's own opens beside the sample, and is kept by itself", async () => {
      await page.setInputFiles("#file", "sample-workbooks/one-lot.xlsx");
      expect(await page.textContent(".question")).toContain("the file itself is not changed");
      await page.getByRole("button", { name: "Open it" }).click();
      await page.waitForURL(/workbook=own-file/);
      await untilReady(page);
      expect(await page.textContent("#workbooks a[aria-current]")).toBe("one-lot");
      expect(await page.isDisabled("#back")).toBe(true);
      expect(await shown(page, "Lot", "F5")).toBe("4");
    });

    test("a file that is too large says so in its own words", async () => {
      await page.evaluate(() => {
        File.prototype.arrayBuffer = () => Promise.reject(new RangeError("Array buffer allocation failed"));
      });
      await page.setInputFiles("#file", "sample-workbooks/one-lot.xlsx");
      await expect.poll(status, patience).toContain("“one-lot.xlsx” was not opened. It is too large for this page");
    });

    test("a download that fails says so, and the work stays", async () => {
      await page.evaluate(() => {
        URL.createObjectURL = () => {
          throw new Error("no room left");
        };
      });
      await page.click("#download");
      await expect.poll(status, patience).toMatch(/^The file could not be made, .* \(no room left\)$/);
      expect(await shown(page, "Lot", "F5")).toBe("4");
    });

    test("work that cannot be read is not deleted: the sample opens and the old work can be downloaded", async () => {
      await typeOver(page, "Lot", "B12", "900");
      await untilKept();
      // From a page of the same place that keeps nothing itself, and so writes nothing over it.
      await page.goto(`${address}docs/functions/index.html`);
      await page.evaluate(
        () =>
          new Promise<void>((done, failed) => {
            const opening = indexedDB.open("tea-mass-balance");
            opening.onerror = () => failed(opening.error);
            opening.onsuccess = () => {
              const writing = opening.result.transaction("work", "readwrite");
              writing.objectStore("work").put({ version: 99, diary: "from another time" }, "one-lot");
              writing.oncomplete = () => done();
            };
          }),
      );
      await openWorkbook(page, address);
      expect(await shown(page, "Lot", "B12")).toBe("1106.6");
      const [download] = await Promise.all([page.waitForEvent("download"), page.click("#notice button")]);
      expect(await readFile(await download.path(), "utf8")).toContain("from another time");
    });
  });
});
