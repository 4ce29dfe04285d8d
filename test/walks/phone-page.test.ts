/** The phone page as a maker has it: kept as it is typed, without a connection, and readable for everyone. */
import { readFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import { fileOf, keptIn } from "../../src/lots/kept-file";
import { english } from "../../src/words/en/messages";
import { englishPhone } from "../../src/words/en/phone";
import { languages } from "../../src/words/languages";
import { chinese } from "../../src/words/zh/messages";
import { chinesePhone } from "../../src/words/zh/phone";
import { readWorkbook } from "../../src/xlsx/read-workbook";
import { violations } from "../browser/axe";
import { servedPage, sharedBrowser } from "../browser/shared-browser";

const found = await findBrowser();
const patience = { timeout: 20_000 };

describe.skipIf(found === undefined)("the phone page", () => {
  let browser: Browser;
  let address: string;
  let visitor: BrowserContext;
  let page: Page;
  let complaints: string[];

  beforeAll(async () => {
    address = await servedPage();
    if (found) browser = await sharedBrowser(found);
  });
  beforeEach(async () => {
    visitor = await browser.newContext({ viewport: { width: 390, height: 780 }, hasTouch: true, isMobile: true });
    page = await visitor.newPage();
    complaints = [];
    page.on("pageerror", ({ message }) => complaints.push(message));
    page.on("console", (message) => {
      if (message.type() === "error") complaints.push(message.text());
    });
    await page.goto(`${address}phone/`);
    await page.waitForSelector(".jobs");
  });
  afterEach(async () => {
    await visitor.close();
    expect(complaints).toEqual([]);
  });

  const goTo = (part: keyof typeof englishPhone.parts) => page.click(`nav >> text=${englishPhone.parts[part]}`);
  const headline = () => page.locator(".headline strong").allTextContents();

  async function planCharges(): Promise<void> {
    await goTo("jobs");
    await page.click("#open-charges");
    for (const [field, text] of [
      ["weight", "960"],
      ["moisture", "75"],
      ["panLoad", "240"],
    ]) {
      await page.fill(`#charges-${field}`, text as string);
    }
  }

  /** As a maker types: key by key, into the field that the tap has opened. */
  async function weigh(charge: number, ...weights: string[]): Promise<void> {
    await goTo("card");
    await page.click(`.charges li:nth-child(${charge}) button`);
    for (const [place, weight] of weights.entries()) {
      if (place > 0) await page.click(`text=${englishPhone.card.next}`);
      await page.keyboard.type(weight);
    }
  }

  test("answers while it is typed, with the phone's decimal keys, and keeps it over a reload", async () => {
    await page.click("#open-moisture");
    for (const [field, text] of [
      ["startWeight", "640"],
      ["startMoisture", "75"],
      ["weightNow", "400,0"],
    ]) {
      expect(await page.getAttribute(`#moisture-${field}`, "inputmode")).toBe("decimal");
      await page.fill(`#moisture-${field}`, text as string);
    }
    // 160 g of dry matter in 400 g.
    await expect.poll(headline, patience).toEqual(["60.0 %"]);
    await page.reload();
    await expect.poll(headline, patience).toEqual(["60.0 %"]);
    expect(await page.inputValue("#moisture-weightNow")).toBe("400,0");
  });

  test("is installed, and goes on without a connection", async () => {
    const devices = await visitor.newCDPSession(page);
    const { errors, data, url } = await devices.send("Page.getAppManifest");
    expect([errors, url]).toEqual([[], `${address}phone/phone.webmanifest`]);
    expect(JSON.parse(data ?? "").name).toBe(englishPhone.title);
    await goTo("today");
    await expect.poll(() => page.textContent("main"), patience).toContain(englishPhone.offline.ready);
    expect(await page.evaluate(() => navigator.serviceWorker.controller?.state)).toBe("activated");

    await visitor.setOffline(true);
    await page.reload();
    await page.waitForSelector(".lot, .page h1");
    await planCharges();
    await expect.poll(() => page.locator(".picture svg").count(), patience).toBe(1);
    await weigh(2, "200.5");
    await page.reload();
    await page.waitForSelector(".readings-so-far li");
    expect(await page.textContent(".readings-so-far li")).toContain("200.5 g");
    // Also the part that writes files, and words that were not wanted yet.
    await goTo("today");
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.click(`text=${englishPhone.today.save}`),
    ]);
    const saved = readWorkbook(await readFile(await download.path()));
    expect(saved.sheets.map(({ name }) => name)).toContain(englishPhone.sheet.card);
    await page.click(`text=${languages.zh.name}`);
    await expect.poll(() => page.textContent("h1"), patience).toBe(chinesePhone.parts.today);
    await visitor.setOffline(false);
  });

  test("notes a reading of a charge, says what it means, and when the charge will be ready", async () => {
    await planCharges();
    await weigh(2, "200,5");
    const says = () => page.textContent(".says");
    // 0.75 × 240 = 180 g of water, 28 % of it to lose: down to 189.6 g. 60 g of dry matter in 200.5 g: 70.1 % water.
    await expect.poll(says, patience).toContain("10.9 g");
    expect(await says()).toContain("70.1 %");
    expect(await page.locator(".ready strong").count()).toBe(0);
    // A second each between them: the clock of the page counts whole ones.
    for (const weight of ["197", "194.5"]) {
      await page.waitForTimeout(1100);
      await page.click(`text=${englishPhone.card.next}`);
      await page.keyboard.type(weight);
    }
    await expect.poll(() => page.locator(".ready strong").count(), patience).toBe(1);
    await page.fill("#end-weight", "180");
    await expect.poll(() => page.locator(".ready strong").count(), patience).toBe(2);
    expect(await page.textContent(".ready")).toContain(englishPhone.card.forecast);
  });

  test("takes the last weighing back, moves it to another lot, and gives everything out and in again", async () => {
    await planCharges();
    await weigh(1, "230", "215");
    await page.click(`header >> text=${englishPhone.lot.add}`);
    await planCharges();
    await weigh(3, "222");
    await goTo("today");
    const [second, first] = [page.locator(".lot").nth(0), page.locator(".lot").nth(1)];
    const [, oldName] = await page
      .locator(".lot > input")
      .evaluateAll((all) => (all as HTMLInputElement[]).map(({ value }) => value));
    await second.getByText(englishPhone.today.moveTo(oldName as string)).click();
    expect(await first.textContent()).toContain("222 g");
    expect(await second.textContent()).toContain(englishPhone.today.weighings(0));
    await first.getByText(englishPhone.today.takeBack, { exact: true }).click();
    expect(await first.textContent()).toContain("215 g");

    await first.getByText(englishPhone.today.copy).click();
    const rows = page.locator("textarea");
    await expect
      .poll(async () => (await rows.count()) + (await first.getByText(englishPhone.today.copied).count()))
      .toBe(1);

    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.click(`text=${englishPhone.today.saveAll}`),
    ]);
    const path = await download.path();
    const kept = keptIn(readFileSync(path, "utf8"));
    expect(kept?.lots.map(({ weighings }) => weighings.map(({ text }) => text))).toEqual([[], ["230", "215"]]);

    const elsewhere = await browser.newContext();
    const other = await elsewhere.newPage();
    await other.goto(`${address}phone/`);
    await other.click(`nav >> text=${englishPhone.parts.today}`);
    await other.setInputFiles("input[type=file]", path);
    await other.waitForSelector(`text=${englishPhone.today.read(2)}`);
    expect(await other.locator(".lot").count()).toBe(2);
    await elsewhere.close();
  });

  test("brings back from a file also what it cannot read, and hands it on again", async () => {
    const odd = { id: "of a later page", changed: 1 };
    await goTo("today");
    await page.setInputFiles("input[type=file]", {
      name: "kept.json",
      mimeType: "application/json",
      buffer: Buffer.from(fileOf([], [odd], 0)),
    });
    await page.waitForSelector(`text=${englishPhone.today.unread(1)}`);
    await page.reload();
    await page.waitForSelector(`text=${englishPhone.today.unread(1)}`);
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.click(`text=${englishPhone.today.saveAll}`),
    ]);
    expect(keptIn(readFileSync(await download.path(), "utf8"))?.unread).toEqual([odd]);
  });

  test("goes on in English where the words of a language cannot be fetched, and says so", async () => {
    const elsewhere = await browser.newContext({ locale: "zh-CN", serviceWorkers: "block" });
    const other = await elsewhere.newPage();
    const cannot = english.shell.noWords(languages.zh.name);
    await other.route("**/pane-words.*", (route) => route.abort("connectionrefused"));
    await other.goto(`${address}phone/`);
    await other.waitForSelector(`[role=alert]:has-text("${cannot}")`);
    await other.click("#open-charges");
    expect(await other.textContent("h1")).toBe(english.jobs.charges?.title);
    // Asked for again, it says so again, and does not take the language for chosen.
    await other.click(`text=${languages.zh.name}`);
    await other.waitForSelector(`[role=alert]:has-text("${cannot}")`);
    await other.unroute("**/pane-words.*");
    await other.reload();
    await other.waitForSelector(`h1:has-text("${chinese.jobs.charges?.title}")`);
    await elsewhere.close();
  });

  test("says of a picture that it could not be fetched, and goes on answering", async () => {
    const elsewhere = await browser.newContext({ serviceWorkers: "block" });
    const other = await elsewhere.newPage();
    await other.route("**/answer-picture.*", (route) => route.abort("connectionrefused"));
    await other.goto(`${address}phone/`);
    // A job whose answers have no picture asks for none.
    await other.click("#open-moisture");
    await other.waitForSelector(".headline");
    expect(await other.getByText(english.shell.notFetched).count()).toBe(0);
    await other.click(".back");
    await other.click("#open-charges");
    await other.waitForSelector(`text=${english.shell.notFetched}`);
    await other.fill("#charges-weight", "820");
    await expect.poll(() => other.textContent(".preview table"), patience).toMatch(/820|205/);
    await elsewhere.close();
  });

  test("keeps what the browser had no time to keep when the page goes", async () => {
    await page.click("#open-moisture");
    await page.fill("#moisture-startWeight", "640");
    await page.waitForTimeout(300);
    await page.evaluate(() => {
      // A transaction that is busy reading does not come to an end, and what it wrote is dropped with the page.
      IDBObjectStore.prototype.put = function busy() {
        const request = this.get("nothing");
        request.addEventListener("success", () => busy.call(this));
        return request;
      };
    });
    await page.fill("#moisture-weightNow", "400");
    await page.reload();
    await page.waitForSelector("#moisture-weightNow");
    expect(await page.inputValue("#moisture-weightNow")).toBe("400");
    expect(await page.inputValue("#moisture-startWeight")).toBe("640");
  });

  test("counts down to the next turn, and says on return what became due and how late", async () => {
    await page.clock.setFixedTime(new Date(2026, 4, 12, 13, 32));
    await page.reload();
    await page.click("#open-turns");
    for (const [field, text] of [
      ["start", "13:30"],
      ["duration", "3:00"],
      ["interval", "0:20"],
    ]) {
      await page.fill(`#turns-${field}`, text as string);
    }
    const clock = () => page.textContent(".clock");
    await expect.poll(clock, patience).toContain("0:18:00");
    await page.clock.setFixedTime(new Date(2026, 4, 12, 13, 32, 5));
    await expect.poll(clock, patience).toContain("0:17:55");
    expect(await clock()).toContain(englishPhone.clock.onlyWhileOn);
    await page.click(`text=${englishPhone.clock.sound}`);
    await page.waitForSelector(`text=${englishPhone.clock.soundOn}`);

    await page.clock.setFixedTime(new Date(2026, 4, 12, 14, 41));
    await page.reload();
    await expect
      .poll(() => page.locator(".clock li").allTextContents(), patience)
      .toEqual([
        `${englishPhone.clock.work({ is: "turn", number: 1 })} ${englishPhone.clock.late("0:51:00")}`,
        `${englishPhone.clock.work({ is: "turn", number: 2 })} ${englishPhone.clock.late("0:31:00")}`,
        `${englishPhone.clock.work({ is: "turn", number: 3 })} ${englishPhone.clock.late("0:11:00")}`,
      ]);
    await page.click(`text=${englishPhone.clock.seen}`);
    await expect.poll(() => page.locator(".clock li").count(), patience).toBe(0);
    expect(await clock()).toContain("0:09:00");
  });

  const open = {
    jobs: async () => undefined,
    job: async () => {
      await page.click("#open-charges");
      await page.waitForSelector(".picture svg", patience);
    },
    card: async (phone: typeof englishPhone) => page.click(`nav >> text=${phone.parts.card}`),
    charge: async (phone: typeof englishPhone) => {
      await page.click(`nav >> text=${phone.parts.card}`);
      await page.click(".charges li:nth-child(2) button");
      await page.keyboard.type("200");
    },
    turns: async () => page.click("#open-turns"),
    today: async (phone: typeof englishPhone) => page.click(`nav >> text=${phone.parts.today}`),
    cautions: async (phone: typeof englishPhone) => page.click(`nav >> text=${phone.parts.cautions}`),
  };

  test.each([
    { language: "en", phone: englishPhone, messages: english },
    { language: "zh", phone: chinesePhone, messages: chinese },
  ] as const)(
    "can be read and used by everyone, $language, wide and narrow, light and dark",
    async (spoken) => {
      const { language, phone, messages } = spoken;
      await page.click("#open-turns");
      await page.fill("#turns-start", "0:10");
      await planCharges();
      if (language === "zh") await page.click(`text=${languages.zh.name}`);
      await page.waitForSelector(`text=${messages.jobs.charges?.title}`);
      const everyScreen = async (look: (where: string) => Promise<void>) => {
        for (const [name, show] of Object.entries(open)) {
          await page.click(`nav >> text=${phone.parts.jobs}`);
          await show(phone);
          await look(`${name}, ${language}`);
        }
      };
      for (const width of [320, 390, 768]) {
        await page.setViewportSize({ width, height: 780 });
        await everyScreen(async (where) => {
          // What axe-core looks at is the same between the outer widths.
          if (width !== 390) expect(await violations(page), `${where}, ${width} px`).toEqual([]);
          expect(
            await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
            `${where}, ${width} px`,
          ).toBeLessThanOrEqual(0);
          expect(await tooSmall(), `${where}, ${width} px`).toEqual([]);
        });
      }
      await page.emulateMedia({ colorScheme: "dark" });
      await everyScreen(async (where) => expect(await violations(page, { lookedFor: "colours" }), where).toEqual([]));
    },
    240_000,
  );

  /** What a wet thumb would miss. A round button is as large as the words beside it, which press it as well. */
  const tooSmall = (): Promise<string[]> =>
    page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>("button, input, select, summary")]
        .filter((element) => element.checkVisibility() && !element.matches("[type=radio], [type=file]"))
        .filter((element) => element.getBoundingClientRect().height < 48)
        .map((element) => element.outerHTML.slice(0, 120)),
    );
});
