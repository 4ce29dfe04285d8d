import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { buildFunctions } from "../../src/build/add-in";
import { findBrowser } from "../../src/build/open-browser";
import { officeOrigin } from "../../src/build/page-policy";
import { CellError, type Grid } from "../../src/cells/values";
import { catalogue } from "../../src/core/catalogue";
import { bareAnswer, type Call, calls } from "../hosts/calls";
import { expectSameAnswer } from "../hosts/same-answer";
import {
  type FunctionsPage,
  gridOf,
  lettingErrorsIn,
  openFunctionsPage,
  type Playing,
  sentCall,
  withRichData,
} from "./microsoft-runtime";
import { sharedBrowser } from "./shared-browser";

declare const CustomFunctions: { readonly _association: { readonly mappings: Readonly<Record<string, unknown>> } };
declare const excel: { refuseNext(): void };

const found = await findBrowser();

/** What the runtime itself says, or is refused by the page's policy, when no Excel has opened the page. */
const isOutsideExcel = (said: string): boolean =>
  /^Warning: (Office\.js is loaded outside of Office client|Expected to be loaded inside of an Excel add-in\.)$/.test(
    said,
  ) || /^(Applying inline style|Framing 'https:\/\/telemetryservice\.[^']*') violates/.test(said);

describe.skipIf(found === undefined)("the functions in Microsoft's own runtime", () => {
  const folder = mkdtempSync(join(tmpdir(), "tea-functions-"));
  let browser: Browser;
  let functions: FunctionsPage;

  beforeAll(async () => {
    await buildFunctions(folder);
    if (found) browser = await sharedBrowser(found, [officeOrigin]);
    functions = await openFunctionsPage(browser, folder);
  });
  afterAll(async () => {
    await Promise.all(browser.contexts().map((context) => context.close()));
    rmSync(folder, { recursive: true, force: true });
  });
  afterEach(() => expect(functions.complaints.filter((said) => !isOutsideExcel(said))).toEqual([]));

  /** All calls at once or one after another, and what Excel would show for each. */
  async function answers(asked: readonly Call[], playing: Playing = {}): Promise<Grid[]> {
    const sent = asked.map((call, row) => sentCall(call, playing, row));
    const results = await functions.send(playing.inOneMessage ? [sent] : sent.map((call) => [call]));
    return results.map(gridOf);
  }

  const callNamed = (name: string): Call => {
    const call = calls.find((each) => each.name === name);
    if (!call) throw new Error(`the table has no call "${name}"`);
    return call;
  };

  test("are registered, every one under its id and no other", async () => {
    const registered = await functions.page.evaluate(() => Object.keys(CustomFunctions._association.mappings));
    expect(registered).toEqual(catalogue.map(({ spec }) => spec.id));
  });

  test.each<{ how: string; playing: Playing }>([
    { how: "each in a message of its own", playing: {} },
    { how: "all in one message, blank cells as null", playing: { inOneMessage: true, blank: null } },
    { how: "with errors as rich data", playing: { inOneMessage: true, flags: lettingErrorsIn | withRichData } },
    { how: "without a place for what was left out at the end", playing: { inOneMessage: true, cutShort: true } },
  ])("answer every call of the table as the bare binding does: $how", async ({ playing }) => {
    const given = await answers(calls, playing);
    expect(given.length).toBe(calls.length);
    calls.forEach((call, index) => {
      expectSameAnswer(call, given[index]);
    });
  });

  test("a function that the page does not have, and a bad call, hurt no neighbour", async () => {
    const good = callNamed("TARGETWEIGHT, example 1");
    const bad = callNamed("TARGETWEIGHT, a percentage as text");
    const unknown = ["NOSUCH", [[[320]]], "Calls!A3", lettingErrorsIn];
    const [first, refused, missing, last] = await functions.send([
      [sentCall(good), sentCall(bad), unknown, sentCall(good)],
    ]);
    expect([first, last].map((result) => gridOf(result as NonNullable<typeof result>))).toEqual([
      bareAnswer(good),
      bareAnswer(good),
    ]);
    expect(gridOf(refused as NonNullable<typeof refused>)).toEqual(bareAnswer(bad));
    // The runtime's own words for it: none, and the code of a function that threw.
    expect(missing?.slice(1, 4)).toEqual([false, "", 2]);
  });

  test("an error that cannot be thrown keeps its code, alone and in a column", async () => {
    const { spec } = callNamed("TARGETWEIGHT, example 1");
    const lost = { error: "#REF!" };
    const unnamed = { error: "#NAME?" };
    expect(
      await answers([
        { name: "alone", spec, given: [lost, 0.75, 0.5] },
        { name: "in a column", spec, given: [[[320], [unnamed]], 0.75, 0.5] },
      ]),
    ).toEqual([[[new CellError("#REF!")]], [[160], [new CellError("#NAME?")]]]);
  });

  test("a constant that arrives bare, outside a matrix, counts the same", async () => {
    const [result] = await functions.send([[["TARGETWEIGHT", [320, 0.75, 0.5], "Calls!A1", lettingErrorsIn]]]);
    expect(result?.slice(0, 3)).toEqual([expect.any(Number), true, [[160]]]);
  });

  test("a book of fifty thousand rows gives the table that the bare binding gives", async () => {
    const rows = 50_000;
    const column = (value: (row: number) => number | string) => Array.from({ length: rows }, (_, row) => [value(row)]);
    const call: Call = {
      ...callNamed("SEASONTABLE, a book with headings and blank rows"),
      given: [
        column((row) => `plot ${row % 7}`),
        column((row) => 300 + (row % 101) / 3),
        column((row) => 60 + (row % 89) / 7),
      ],
    };
    expect(await answers([call])).toStrictEqual([bareAnswer(call)]);
  });

  test("answers that Excel did not take are sent again", async () => {
    const call = callNamed("LOSSMEANINGS, example 1");
    await functions.page.evaluate(() => excel.refuseNext());
    expect(await answers([call])).toStrictEqual([bareAnswer(call)]);
  });
});
