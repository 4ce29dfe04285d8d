/**
 * Plays Excel to Microsoft's own runtime for custom functions, as it is published in the npm package
 * `@microsoft/office-js`, on our built functions page. The runtime talks to Excel through a bridge: an object that it
 * finds under a global name, with texts of JSON going both ways.
 */
import { existsSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, extname, join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { officeOrigin } from "../../src/build/page-policy";
import { CellError, type CellValue, type Grid } from "../../src/cells/values";
import { argumentsOf, type Call, type Content, isErrorCell } from "../hosts/calls";

/** What the runtime knows an error by that was thrown; 0, 2, 3, 4, 9 and 10 are mishaps of its own. */
const thrownCodes: Readonly<Record<number, string>> = {
  1: "#N/A",
  5: "#DIV/0!",
  6: "#NUM!",
  7: "#VALUE!",
  8: "#NULL!",
};

/** One result as the runtime sends it: the call's number, whether it went well, the value, and else an error code. */
type SentResult = readonly [id: number, went: boolean, value: unknown, ...rest: unknown[]];

/** How Excel marks a call: errors are let in; cells arrive as rich data. */
export const lettingErrorsIn = 4;
export const withRichData = 8;

export interface Playing {
  /** What stands for a blank cell: Excel sends "" or null. */
  readonly blank?: "" | null;
  readonly flags?: number;
  /** All calls in one message, as Excel does when it recalculates; otherwise each in its own. */
  readonly inOneMessage?: boolean;
  /** Sends no more arguments than were given, instead of null for each that was left out. */
  readonly cutShort?: boolean;
}

/** On the page, put there before the runtime loads. */
declare const excel: { readonly sent: SentResult[]; send(messages: string): void; refuseNext(): void };

const office = dirname(createRequire(import.meta.url).resolve("@microsoft/office-js/dist/custom-functions-runtime.js"));
const kinds: Readonly<Record<string, string>> = { ".html": "text/html", ".js": "text/javascript" };

export interface FunctionsPage {
  readonly page: Page;
  /** What the page complained of: exceptions, and whatever it wrote to the console. */
  readonly complaints: readonly string[];
  /** Sends calls and gives what the runtime sent back for each, untranslated. */
  send(messages: readonly (readonly unknown[])[][]): Promise<SentResult[]>;
}

/** Opens the functions page of a built folder, with Microsoft's script from the npm package in its place. */
export async function openFunctionsPage(browser: Browser, folder: string): Promise<FunctionsPage> {
  const context = await browser.newContext();
  await context.route("**/*", (route) => {
    const { origin, pathname } = new URL(route.request().url());
    const file = origin === officeOrigin ? join(office, pathname.replace(/^.*\//, "")) : join(folder, pathname);
    if (!existsSync(file)) return route.fulfill({ status: 404 });
    return route.fulfill({ body: readFileSync(file), contentType: kinds[extname(file)] ?? "" });
  });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on("pageerror", (problem) => complaints.push(problem.message));
  page.on("console", (message) => complaints.push(message.text()));
  await page.addInitScript(playExcel);
  await page.goto("http://localhost/functions.html");

  let lastId = 0;
  return {
    page,
    complaints,
    send: async (messages) => {
      const first = lastId + 1;
      const entries = messages.map((calls) =>
        calls.map((call) => {
          lastId += 1;
          // Category 1 are custom functions, type 1000 is a call of one.
          return [1, 1000, "", [lastId, ...call], 0];
        }),
      );
      // As one text: handing over values one by one takes longer than the calls.
      await page.evaluate((messages) => excel.send(messages), JSON.stringify(entries));
      await page.waitForFunction(
        ([first, last]) => excel.sent.filter(([id]) => id >= first && id <= last).length > last - first,
        [first, lastId] as const,
      );
      const sent = await page.evaluate((first) => excel.sent.filter(([id]) => id >= first), first);
      return [...sent].sort(([one], [other]) => one - other);
    },
  };
}

/** Runs in the page: the other end of the bridge. */
function playExcel(): void {
  interface Bridge {
    onMessageFromHost?: (text: string) => void;
    sendMessageToHost(text: string): void;
  }
  const sent: unknown[] = [];
  let refusing = false;
  const bridge: Bridge = {
    sendMessageToHost(text) {
      const { id, message } = JSON.parse(text);
      const refused = refusing;
      refusing = false;
      if (!refused) {
        for (const action of message.body.Actions) {
          if (action.Name === "SetInvocationArrayResults") sent.push(...action.ArgumentInfo.Arguments[0]);
        }
      }
      const response = refused
        ? { statusCode: 500, headers: {}, body: '{"error":{"code":"GeneralException","message":"busy"}}' }
        : { statusCode: 200, headers: {}, body: '{"Results":[]}' };
      setTimeout(() => bridge.onMessageFromHost?.(JSON.stringify({ id, type: 1, message: response })), 0);
    },
  };
  const excel = {
    sent,
    send: (messages: string) => {
      for (const entries of JSON.parse(messages)) {
        bridge.onMessageFromHost?.(JSON.stringify({ type: 3, message: { entries } }));
      }
    },
    refuseNext: () => {
      refusing = true;
    },
  };
  Object.assign(window, { _richApiNativeBridge: bridge, excel });
}

/** A call as Excel sends it: every argument a matrix, as functions.json declares, and null for what is left out. */
export function sentCall({ spec, given }: Call, playing: Playing = {}, row = 0): unknown[] {
  const { blank = "", flags = lettingErrorsIn, cutShort = false } = playing;
  const rich = (flags & withRichData) !== 0;
  const passed = (content: Content): unknown => {
    if (content === null) return blank;
    if (!isErrorCell(content)) return content;
    if (!rich) return { type: "CustomFunctionError", code: content.error };
    return { value: JSON.stringify({ type: "Error", basicType: "Error", basicValue: content.error }) };
  };
  const sent = given.map((argument) => {
    if (argument === null) return null;
    const [passedOn] = argumentsOf([argument], passed);
    return Array.isArray(passedOn) ? passedOn : [[passedOn]];
  });
  if (!cutShort) while (sent.length < spec.parameters.length) sent.push(null);
  return [spec.id, sent, `Calls!A${row + 1}`, flags];
}

/** What a cell of Excel is told to show. Throws where the runtime says that the function failed. */
export function gridOf([id, went, value, code]: SentResult): Grid {
  if (went) return (value as unknown[][]).map((row) => row.map(cellValue));
  const thrown = thrownCodes[code as number];
  if (thrown === undefined) throw new Error(`the runtime says that call ${id} failed (${code}): ${String(value)}`);
  return [[new CellError(thrown, value as string)]];
}

function cellValue(sent: unknown): CellValue {
  if (typeof sent !== "object" || sent === null) {
    if (sent === null) throw new Error("the runtime sent null, which Excel shows as 0");
    return sent as CellValue;
  }
  const { valueType, code, message = "" } = sent as { valueType?: string; code?: string; message?: string };
  if (valueType !== "CustomFunctionError" || code === undefined) throw new Error(`sent: ${JSON.stringify(sent)}`);
  return new CellError(code, message);
}
