import { describe, expect, test } from "vitest";
import { fileOf, keptIn, newerLots, newUnread, sorted } from "../../src/lots/kept-file";
import {
  begunOnDay,
  inOrder,
  type Lot,
  lotSchema,
  moved,
  newLot,
  type Weighing,
  withEntries,
  withoutWeighing,
  withWeighing,
} from "../../src/lots/lot";

const morning = new Date(2026, 4, 12, 9, 0).getTime();
const minute = 60_000;
const lot = newLot("a", "12 May, 1", "g", morning);
const weighing = (id: string, text: string, at = morning): Weighing => ({
  id,
  charge: 1,
  round: 1,
  text,
  unit: "g",
  at,
});

describe("a lot", () => {
  test("keeps a weighing at the time of its first digit while it is typed on", () => {
    const begun = withWeighing(lot, weighing("w", "2"), morning);
    const typed = withWeighing(begun, weighing("w", "212", morning + minute), morning + minute);
    expect(typed.weighings).toEqual([weighing("w", "212")]);
    expect(typed.changed).toBe(morning + minute);
  });

  test("has no weighing that was emptied again, and can take one back", () => {
    const two = withWeighing(withWeighing(lot, weighing("one", "212"), morning), weighing("two", "198"), morning);
    expect(withWeighing(two, weighing("two", " "), morning).weighings).toEqual([weighing("one", "212")]);
    expect(withoutWeighing(two, "two", morning).weighings).toEqual([weighing("one", "212")]);
  });

  test("gives a weighing in the wrong lot to another, at the time at which it was weighed", () => {
    const other = newLot("b", "12 May, 2", "kg", morning);
    const wrong = withWeighing(lot, weighing("w", "212"), morning);
    const { from, to } = moved("w", wrong, other, morning + minute);
    expect(from.weighings).toEqual([]);
    expect(to.weighings).toEqual([weighing("w", "212")]);
    expect(moved("unknown", wrong, other, morning)).toEqual({ from: wrong, to: other });
  });

  test("remembers when the time that a job begins at was typed, and not when another field was", () => {
    const started = withEntries(lot, "turns", { start: { texts: ["13:40"] } }, morning);
    expect(started.jobs.turns?.clockTyped).toBe(morning);
    const { start } = started.jobs.turns?.entries ?? {};
    const later = withEntries(
      started,
      "turns",
      { ...(start && { start }), interval: { texts: ["0:30"] } },
      morning + 26 * 60 * minute,
    );
    expect(later.jobs.turns?.clockTyped).toBe(morning);
    expect(withEntries(lot, "scale", { weight: { texts: ["240"] } }, morning).jobs.scale?.clockTyped).toBeUndefined();
  });

  test("is counted on the day on which it was begun, and stands before older ones", () => {
    const yesterday = newLot("y", "11 May, 1", "g", morning - 24 * 60 * minute);
    expect(inOrder([yesterday, lot]).map(({ id }) => id)).toEqual(["a", "y"]);
    expect(begunOnDay([yesterday, lot], morning)).toBe(1);
  });
});

describe("everything kept as one file", () => {
  const full: Lot = {
    ...withEntries(
      withWeighing(lot, weighing("w", "1,2 kg"), morning),
      "turns",
      { start: { texts: ["13:40", 1] } },
      morning,
    ),
    sent: morning,
    endWeights: { "1": { text: "120", unit: "g" } },
  };

  test("reads as it was written, and any lot fits the schema", () => {
    expect(keptIn(fileOf([full], [], morning))).toEqual({ lots: [full], unread: [] });
    expect(lotSchema.parse(full)).toEqual(full);
  });

  test("hands on what this version cannot read", () => {
    const { weighings: _, ...lacking } = full;
    expect(keptIn(fileOf([lot], [{ odd: 1 }, lacking], morning))).toEqual({
      lots: [lot],
      unread: [{ odd: 1 }, lacking],
    });
    expect(newUnread([{ odd: 1 }], [{ odd: 1 }, lacking, lacking])).toEqual([lacking]);
  });

  test("brings back what an earlier version could not read and this one can", () => {
    expect(keptIn(fileOf([], [lot, { odd: 1 }], morning))).toEqual({ lots: [lot], unread: [{ odd: 1 }] });
  });

  test("counts of one lot the record that changed last", () => {
    const changed = { ...lot, changed: morning + minute };
    expect(sorted([changed, lot]).lots).toEqual([changed]);
    expect(sorted([lot, { ...lot, sent: morning }]).lots).toEqual([{ ...lot, sent: morning }]);
  });

  test.each(["", "{}", "[1]", '{"holds":"tea-mass-balance lots","version":2,"saved":1,"lots":[]}'])(
    "is not taken for one when it reads %j",
    (text) => expect(keptIn(text)).toBeUndefined(),
  );

  test("with a lot that lacks a part is refused as a whole", () => {
    const { weighings: _, ...lacking } = full;
    expect(keptIn(fileOf([lot, lacking as Lot], [], morning))).toBeUndefined();
  });

  test("brings back lots that are not there, and those that changed since", () => {
    const changed = { ...lot, changed: morning + minute };
    const other = newLot("b", "x", "g", morning);
    expect(newerLots([lot], [lot])).toEqual([]);
    expect(
      newerLots([lot], [changed, other])
        .map(({ id }) => id)
        .sort(),
    ).toEqual(["a", "b"]);
    expect(newerLots([changed], [lot])).toEqual([]);
  });
});
