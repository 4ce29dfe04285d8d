import { describe, expect, test } from "vitest";
import { CellError } from "../../src/cells/values";
import { readingSays, readingsOfCharge, readWeight, readyWhen, roundOf } from "../../src/lots/charge-readings";
import { firingPlan } from "../../src/lots/firing-plan";
import { newLot, withEntries, withWeighing } from "../../src/lots/lot";
import { spreadsheetTime } from "../../src/lots/spreadsheet-time";
import { english } from "../../src/words/en/messages";

const morning = new Date(2026, 4, 12, 9, 0).getTime();
const minute = 60_000;
const wording = { messages: english, unit: "g" } as const;
const lot = newLot("a", "12 May, 1", "g", morning);
const planned = withEntries(
  lot,
  "charges",
  {
    weight: { texts: ["960"] },
    moisture: { texts: ["75 %"] },
    panLoad: { texts: ["240"] },
    targets: { texts: ["60 %", "20 %"] },
    targetKinds: { texts: ["moisture", "moisture"] },
  },
  morning,
);

describe("the plan of a lot", () => {
  test("stands as charges with what the scale should read, round by round", () => {
    // Four of 240 g with 60 g of dry matter: 60 / 0.4 = 150 g at 60 %, 60 / 0.8 = 75 g at 20 %.
    const plan = firingPlan(planned, wording);
    expect(plan?.charges.map(({ number, load }) => [number, load])).toEqual(
      [1, 2, 3, 4].map((number) => [number, 240]),
    );
    for (const { targets } of plan?.charges ?? [])
      expect(targets).toEqual([expect.closeTo(150, 9), expect.closeTo(75, 9)]);
    expect(plan?.moisture).toBe(0.75);
    expect(plan?.rounds).toEqual(["60 % moisture left", "20 % moisture left"]);
    expect(plan?.examples).toEqual([]);
  });

  test("is none before someone has typed something, and names what is still ours", () => {
    expect(firingPlan(lot, wording)).toBeUndefined();
    expect(firingPlan(undefined, wording)).toBeUndefined();
    const begun = withEntries(lot, "charges", { weight: { texts: ["700"] } }, morning);
    expect(firingPlan(begun, wording)?.examples).toContain(english.inputs.moisture?.label);
    const broken = withEntries(lot, "charges", { weight: { texts: ["much"] } }, morning);
    expect(firingPlan(broken, wording)).toBeUndefined();
  });
});

describe("a reading at the pan", () => {
  const plan = firingPlan(planned, wording);
  const charge = plan?.charges[0];
  if (plan === undefined || charge === undefined) throw new Error("the plan has no charges");

  test("says what is left to lose and how moist the leaf is now", () => {
    // 60 g of dry matter in 200 g: 70 % water; 50 g above the 150 g of the first target.
    const { left, moisture } = readingSays(200, charge, 1, plan);
    expect(left).toBeCloseTo(50, 9);
    expect(moisture).toBeCloseTo(0.7, 9);
    expect(readingSays(140, charge, 1, plan).left).toBeCloseTo(-10, 9);
  });

  test("below the dry matter is an error that says so", () => {
    expect(readingSays(50, charge, 1, plan).moisture).toBeInstanceOf(CellError);
  });

  test("belongs to the round whose target is not reached yet", () => {
    const at = (round: number, weight: number) => ({ id: `${weight}`, round, weight, at: morning });
    expect(roundOf(charge, [])).toBe(1);
    expect(roundOf(charge, [at(1, 180)])).toBe(1);
    expect(roundOf(charge, [at(1, 150)])).toBe(2);
    // Someone went on to the next round a little early.
    expect(roundOf(charge, [at(1, 152), at(2, 148)])).toBe(2);
    expect(roundOf(charge, [at(1, 150), at(2, 75)])).toBe(2);
  });

  test("is read in the unit in which it was typed, with comma or point", () => {
    expect(readWeight("172,5", "g", "g")).toEqual({ is: "value", value: 172.5 });
    expect(readWeight("0.24", "kg", "g")).toEqual({ is: "value", value: 240 });
    expect(readWeight("1.2 kg", "g", "g")).toEqual({ is: "value", value: 1200 });
    expect(readWeight("heavy", "g", "g").is).toBe("problem");
    const typed = ["240", "heavy", "200,5"].reduce(
      (all, text, index) =>
        withWeighing(all, { id: text, charge: 2, round: 1, text, unit: "g", at: morning + index }, morning),
      planned,
    );
    expect(readingsOfCharge(typed, 2).map(({ weight }) => weight)).toEqual([240, 200.5]);
    expect(readingsOfCharge(typed, 1)).toEqual([]);
    const late = { id: "late", charge: 2, round: 1, text: "220", unit: "g" as const, at: morning + 1 };
    expect(readingsOfCharge(withWeighing(typed, late, morning), 2).map(({ weight }) => weight)).toEqual([
      240, 220, 200.5,
    ]);
  });
});

describe("when a charge will be ready", () => {
  const readings = [420, 381.5, 351, 327.5].map((weight, index) => ({
    ...{ id: `${index}`, round: 1, weight },
    at: morning + index * 20 * minute,
  }));
  const minutesLater = (minutes: number) => spreadsheetTime(morning) + minutes / 1440;

  test("is not said before the third reading", () => {
    expect(readyWhen(readings.slice(0, 2), 265.3, 258.5)).toBeUndefined();
  });

  // The figures of DRYINGTIME's own checks, in minutes from the first reading.
  test("is said from three timed readings on", () => {
    const ready = readyWhen(readings.slice(0, 3), 265.3, 258.5);
    expect(ready?.early).toBeCloseTo(minutesLater(96.1967213115), 6);
    expect(ready?.likely).toBeUndefined();
    expect(ready?.late).toBeCloseTo(minutesLater(261.8787999569), 6);
    const four = readyWhen(readings, 265.3, 258.5);
    expect(four?.likely).toBeCloseTo(minutesLater(213.2408724617), 6);
  });

  test("has no late moment without a weight that it would end at", () => {
    const ready = readyWhen(readings.slice(0, 3), 265.3, undefined);
    expect([ready?.early === undefined, ready?.likely, ready?.late]).toEqual([false, undefined, undefined]);
  });

  test("says why not when weights rise", () => {
    const rising = readings.map((reading, index) => (index === 2 ? { ...reading, weight: 400 } : reading));
    expect(readyWhen(rising.slice(0, 3), 265.3, undefined)?.refusal?.message).toContain("weights must not rise");
  });
});
