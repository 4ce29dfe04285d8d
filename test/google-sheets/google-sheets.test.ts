import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { buildGoogleSheets } from "../../src/build/google-sheets";
import { bind } from "../../src/cells/bind";
import { catalogue } from "../../src/core/catalogue";
import { headers } from "../../src/core/define";
import { meaning, plainName } from "../../src/core/describe";
import { isTime } from "../../src/core/quantities";
import { targetWeight } from "../../src/core/targets/target-weight";
import { calls } from "../hosts/calls";
import { calledIn, contextWith, expectedInGoogle, momentHere, passedByGoogle } from "./sheet";

const folder = mkdtempSync(join(tmpdir(), "tea-sheets-"));
const ownZone = process.env.TZ;
let script = "";
const text = (file: string): string => readFileSync(join(folder, file), "utf8");

beforeAll(async () => {
  await buildGoogleSheets(folder);
  script = text("tea-mass-balance.js");
});
afterAll(() => rmSync(folder, { recursive: true }));
afterEach(() => live(ownZone));

/** Node reads its time zone again when it is set. */
function live(zone: string | undefined): void {
  if (zone === undefined) delete process.env.TZ;
  else process.env.TZ = zone;
}

describe("the script", () => {
  test("stays within its size", () => {
    expect(Buffer.byteLength(script)).toBeLessThanOrEqual(100_000);
  });

  test("runs where there is nothing but the language, and offers the functions of the catalogue alone", () => {
    const context = contextWith(script);
    const offered = Object.keys(context).filter((name) => typeof context[name] === "function" && !name.endsWith("_"));
    expect(offered).toEqual(catalogue.map(({ spec }) => plainName(spec.id)));
  });

  test("declares each function plainly, with its parameters, under the comment that makes its help", () => {
    for (const { spec, page } of catalogue) {
      const names = spec.parameters.map(({ name }) => name);
      const head = `\nfunction ${plainName(spec.id)}(${names.join(", ")}) {`;
      expect(script).toContain(head);
      const before = script.slice(0, script.indexOf(head));
      const comment = before.slice(before.lastIndexOf("/**")).split("\n");
      expect(comment.at(-1)?.trim()).toBe("*/");
      expect(comment[1]).toBe(` * ${page.summary}`);
      const parameters = comment.filter((line) => line.startsWith(" * @param "));
      expect(parameters).toEqual(
        spec.parameters.map((parameter) =>
          expect.stringContaining(`} ${parameter.name} ${meaning(parameter, page.parameters)}`),
        ),
      );
      expect(comment.slice(-3).map((line) => line.slice(0, 11))).toEqual([" * @return ", " * @customf", " */"]);
    }
  });

  test("says in the help what stands in for what is left out, and the words of a choice", () => {
    for (const { spec } of catalogue) {
      const start = script.indexOf(`\nfunction ${plainName(spec.id)}(`);
      const help = script.slice(script.lastIndexOf("/**", start), start);
      for (const parameter of spec.parameters) {
        const line = help.split("\n").find((each) => each.includes(`} ${parameter.name} `)) ?? "";
        if (parameter.optional && parameter !== headers) expect(line).toMatch(/optional|left out|without it/);
        for (const word of Object.keys(parameter.quantity.choices ?? {})) expect(line).toContain(`"${word}"`);
      }
    }
  });

  test("comes with its licence", () => {
    const words = (all: string) => all.replaceAll(/[\s*]+/g, " ");
    expect(words(script)).toContain(words(readFileSync("LICENSE", "utf8")).trim());
  });
});

/** East and west, half hours and quarters, clocks of 1899 that are no whole minutes from UTC, and one past the date line. */
const zones = [
  "UTC",
  "Asia/Shanghai",
  "Asia/Kolkata",
  "Asia/Kathmandu",
  "Asia/Tokyo",
  "America/New_York",
  "America/St_Johns",
  "Pacific/Auckland",
  "Pacific/Apia",
];

test.each(zones)("every call gives in %s what the bare binding gives", (zone) => {
  live(zone);
  const context = contextWith(script);
  for (const call of calls) {
    const given = passedByGoogle(call, momentHere, "");
    expect(calledIn(context, call.spec.id, given), call.name).toStrictEqual(expectedInGoogle(call));
  }
});

test("the table passes moments: times alone, in lists, and beside blanks", () => {
  const passed = calls.map((call) => passedByGoogle(call, momentHere, "").flat(2));
  expect(passed.filter((given) => given.some((value) => value instanceof Date)).length).toBeGreaterThan(30);
});

test.each([null, undefined])("an argument that is left out may come as %s", (leftOut) => {
  const context = contextWith(script);
  for (const call of calls) {
    const given = passedByGoogle(call, momentHere, leftOut);
    expect(calledIn(context, call.spec.id, given), call.name).toStrictEqual(expectedInGoogle(call));
  }
});

describe("what Google passes and takes", () => {
  const target = (...given: unknown[]) => calledIn(contextWith(script), "TARGETWEIGHT", given);

  test("a refusal alone throws its words, an error that came in its code", () => {
    expect(target(320, 76, 0.6)).toEqual({
      thrown: "moisture must be from 0 up to, not including, 1 (76% or 0.76); got 76",
    });
    expect(target("#REF!", 0.75, 0.6)).toEqual({ thrown: "#REF!" });
    expect(target("#ERROR!", 0.75, 0.6)).toEqual({ thrown: "#ERROR!" });
  });

  test("inside a range both are texts, and blanks stay blank", () => {
    expect(target([[320], [""], ["#N/A"], [-1]], 0.75, 0.6)).toEqual([
      [expect.closeTo(200, 9)],
      [""],
      ["#N/A"],
      ["#VALUE!"],
    ]);
  });

  test("our own #VALUE! from another table is an error again", () => {
    expect(target("#VALUE!", 0.75, 0.6)).toEqual({ thrown: "#VALUE!" });
  });

  test("a text that only looks like an error is a text", () => {
    expect(target("#5", 0.75, 0.6)).toEqual({ thrown: 'weight must be a weight above 0; got the text "#5"' });
  });

  test("too few and too many arguments are refused, with the name that the function has in a sheet", () => {
    expect(target(320, 0.75)).toEqual({
      thrown: expect.stringMatching(/^targetMoisture must be given; got .*TEA_TARGETWEIGHT\(weight, /),
    });
    expect(target(320, 0.75, 0.6, 1)).toEqual({ thrown: expect.stringMatching(/^TEA_TARGETWEIGHT must /) });
  });

  test("30,000 rows come back in one call", () => {
    const rows = Array.from({ length: 30_000 }, (_, row) => [[280 + (row % 90)], [0.7 + (row % 10) / 100]] as const);
    const [weights, moistures] = [rows.map(([weight]) => weight), rows.map(([, moisture]) => moisture)];
    const answer = target(weights, moistures, 0.6);
    expect(answer).toHaveLength(30_000);
    expect(answer).toEqual(bind(targetWeight)(weights, moistures, 0.6));
  });
});

/** What Google's services answer, played by Node's own clock of the zone; each question is counted. */
function servicesIn(zone: string) {
  const clock = new Intl.DateTimeFormat("sv-SE", { timeZone: zone, dateStyle: "short", timeStyle: "medium" });
  const asked = { zone: 0, clock: 0 };
  const shown = (moment: Date): number => Date.parse(`${clock.format(moment).replace(" ", "T")}Z`);
  return {
    asked,
    services: {
      SpreadsheetApp: {
        getActive: () => ({
          getSpreadsheetTimeZone: () => {
            asked.zone += 1;
            return zone;
          },
        }),
      },
      Utilities: {
        formatDate: (moment: Date, timeZone: string, format: string) => {
          expect([timeZone, format]).toEqual([zone, "yyyy-MM-dd HH:mm:ss"]);
          asked.clock += 1;
          return clock.format(moment);
        },
      },
    },
    /** The moment at which the clock of that zone shows so many days. */
    momentOf: (days: number): Date => {
      const wanted = Date.UTC(1899, 11, 30) + Math.round(days * 86_400_000);
      const ahead = (moment: number) => shown(new Date(moment)) - Math.floor(moment / 1000) * 1000;
      const near = wanted - ahead(wanted);
      return new Date(wanted - ahead(near));
    },
  };
}

describe("in a sheet whose time zone is not the script's", () => {
  test.each(zones)("every call is read by the clock of the sheet, %s", (zone) => {
    live("America/Los_Angeles");
    const { services, momentOf } = servicesIn(zone);
    const context = contextWith(script, services);
    for (const call of calls.filter(({ spec }) => spec.parameters.some(({ quantity }) => isTime(quantity)))) {
      const given = passedByGoogle(call, momentOf, "");
      expect(calledIn(context, call.spec.id, given), call.name).toStrictEqual(expectedInGoogle(call));
    }
  });

  test("the sheet is not asked where no date is", () => {
    const { services, asked } = servicesIn("Asia/Shanghai");
    calledIn(contextWith(script, services), "TARGETWEIGHT", [320, 0.75, 0.6]);
    expect(asked).toEqual({ zone: 0, clock: 0 });
  });

  test("a season of dates asks for its zone once, and for the clock at most twice a day", () => {
    const { services, asked, momentOf } = servicesIn("America/New_York");
    // From January on, so that the clocks are put forward and back.
    const days = Array.from({ length: 3_000 }, (_, row) => 45292 + Math.floor(row / 10) + 0.25 + (row % 10) / 20);
    const book = days.map((day) => [momentOf(day)]);
    const weights = days.map(() => [400]);
    const answer = calledIn(contextWith(script, services), "SEASONTABLE", [book, weights, weights.map(() => [100])]);
    const labels = (answer as readonly (readonly unknown[])[]).slice(1, -1).map(([label]) => label);
    expect(labels).toEqual(days.map((day) => Math.round(day * 86_400_000) / 86_400_000));
    expect(asked.zone).toBe(1);
    expect(asked.clock).toBeLessThan(2 * 300 + 20);
  });

  test("on the day that the clocks are put forward each hour is its own", () => {
    const { services, momentOf } = servicesIn("Europe/Berlin");
    // 31 March 2024: there is no time from 2:00 to 3:00.
    for (const hour of [0, 1, 3, 4, 12, 23]) {
      const turns = calledIn(contextWith(script, services), "TURNTIMES", [momentOf(45382 + hour / 24), 0.25, 0.125]);
      expect(turns).toBe(bind(catalogueFunction("TURNTIMES"))(45382 + hour / 24, 0.25, 0.125)[0]?.[0]);
    }
  });
});

const catalogueFunction = (id: string) => {
  const found = catalogue.find(({ spec }) => spec.id === id);
  if (!found) throw new Error(id);
  return found.spec;
};

describe("the check list of the docs", () => {
  const guide = readFileSync("docs/google-sheets.md", "utf8");

  test.each<readonly [formula: string, given: readonly unknown[], shows: unknown]>([
    ["TEA_TARGETWEIGHT(320, 75%, 60%)", [320, 0.75, 0.6], 200],
    ["TEA_TARGETWEIGHT(320, 76, 60%)", [320, 76, 0.6], { thrown: expect.stringMatching(/^moisture .*got 76$/) }],
    ["TEA_TARGETWEIGHT(A1:A3, 75%, 60%)", [[[320], [""], [200]], 0.75, 0.6], [[200], [""], [125]]],
    ["TEA_TARGETWEIGHT(A1:A3, 75%, 60%)", [[[320], ["#N/A"], [200]], 0.75, 0.6], [[200], ["#N/A"], [125]]],
    ["TEA_TARGETWEIGHT(A2, 75%, 60%)", ["#N/A", 0.75, 0.6], { thrown: "#N/A" }],
    ["TEA_TURNTIMES(B1, B2, B3)", [9 / 24, 2 / 24, 0.75 / 24].map(momentHere), [[0.40625], [0.4375]]],
    ["TEA_CHARGESPLIT(1000, 300, , 1)", [1000, 300, "", 1], [[334], [333], [333]]],
    ["TEA_DRYMATTER(100)", [100], { thrown: expect.stringMatching(/^moisture must be given/) }],
  ])("=%s shows what it says", (formula, given, shows) => {
    expect(guide).toContain(`\`=${formula}\``);
    const answer = calledIn(contextWith(script), /_(\w+)/.exec(formula)?.[1] ?? "", given);
    expect(rounded(answer)).toEqual(shows);
  });

  test("a loss that is too large stands in its row of the table alone", () => {
    const rows = calledIn(contextWith(script), "LOSSMEANINGS", [320, 0.2, 0.3]) as readonly (readonly unknown[])[];
    expect(rows.map((row) => row.includes("#VALUE!"))).toEqual([false, false, true, true]);
  });

  test("the last of 30,000 rows is the one that it names", () => {
    const weights = Array.from({ length: 30_000 }, (_, row) => [row + 1]);
    const rows = calledIn(contextWith(script), "TARGETWEIGHT", [weights, 0.75, 0.6]) as readonly (readonly number[])[];
    expect(rows.at(-1)?.[0]).toBeCloseTo(18750, 6);
  });
});

/** As a sheet shows a number that is not in its last digit what it should be. */
const rounded = (answer: unknown): unknown =>
  Array.isArray(answer) ? answer.map(rounded) : typeof answer === "number" ? Number(answer.toPrecision(14)) : answer;

describe("the folder", () => {
  test("holds the page, and what the page leads to", () => {
    const page = text("index.html");
    const addresses = [...page.matchAll(/(?:href|src)="([^"#]+)"/g)].map(([, address]) => address as string);
    expect(addresses).toEqual(expect.arrayContaining(["tea-mass-balance.js", "appsscript.json", "page.css"]));
    const near = addresses.filter((address) => !/^(https|data):/.test(address));
    expect(near.filter((address) => !existsSync(join(folder, address)))).toEqual([]);
  });

  test("has a manifest that asks for this sheet alone, and keeps no log", () => {
    const manifest = JSON.parse(text("appsscript.json")) as Record<string, unknown>;
    expect(manifest.runtimeVersion).toBe("V8");
    expect(manifest.exceptionLogging).toBe("NONE");
    expect(manifest.oauthScopes).toEqual([expect.stringMatching(/\/spreadsheets\.currentonly$/)]);
  });
});
