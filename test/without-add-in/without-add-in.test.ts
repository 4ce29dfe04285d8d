import { describe, expect, test } from "vitest";
import { HostProblem } from "../../src/host/host-problem";
import type { BookName } from "../../src/host/workbook-host";
import { asTyped, namedFormulas, namedIds, neededFor } from "../../src/named-formulas/named-formulas";
import { ownNames } from "../../src/named-formulas/own-names";
import { carryOut, type Progress, readBook } from "../../src/without-add-in/carry-out";
import { formulasIn, planOf, type Way } from "../../src/without-add-in/plan";
import { type FakeCell, FakeWorkbookHost } from "../host/fake-workbook-host";

const formula = (text: string, value: FakeCell["value"] = 0.2): FakeCell => ({ formula: text, value });

/** Lots of an invented farm. */
const farm = () =>
  new FakeWorkbookHost({
    Lots: {
      C2: formula("=TEA.OUTTURN(A2,B2)"),
      C3: formula("=ROUND(tea.outturn (A3,B3),3)", 0.215),
      C4: formula('="TEA.OUTTURN("&A4', "TEA.OUTTURN(5"),
      C5: formula("=SUM(A2:A4)", 5),
      D2: formula("=TEA.LOTFLAG(C2,C3:C9,1)", ""),
      D3: formula("=TEA.STOCKBALANCE(A:A,B:B)+TEA.WATER(A2,0.7)", "#VALUE!"),
    },
    Pan: { A1: formula("=TEA.TARGETWEIGHT(320,75%,60%)", 200) },
    Old: { A1: formula("=TEA_WATER(10,0.7)", 7) },
  });

const typed = (name: string): BookName => ({ name, formula: asTyped(namedFormulas.get(name)?.formula ?? "") });

const planned = async (host: FakeWorkbookHost, way: Way) => planOf(await readBook(host), way);

const changed = async (host: FakeWorkbookHost, way: Way, keepsNames = false) =>
  carryOut(host, await planned(host, way), { keepsNames, onProgress: () => undefined });

const formulasOf = (host: FakeWorkbookHost, sheet: string, ...addresses: string[]) =>
  addresses.map((address) => host.cell(sheet, address)?.formula);

describe("the typed form of a named formula", () => {
  test("has brackets around what may be left out, and no mark of a file", () => {
    for (const { formula: text } of namedFormulas.values()) expect(asTyped(text)).not.toContain("_xl");
    const optional = asTyped(namedFormulas.get("TEA_OVENMOISTURE")?.formula ?? "");
    expect(optional).toMatch(/^=LAMBDA\(weight_before,weight_after,\[dish_weight\],/);
    expect(optional).toContain("ISOMITTED(dish_weight)");
  });

  test("fits what Excel takes", () => {
    for (const { formula: text, comment } of namedFormulas.values()) {
      expect(asTyped(text).length).toBeLessThan(8192);
      expect(comment.length).toBeLessThanOrEqual(255);
    }
  });
});

describe("names of ours", () => {
  test("are known whatever spaces, capitals and numbers a spreadsheet gives them back with", () => {
    const { name, formula: text } = typed("_TEA_NUMBER");
    const other = text.replaceAll(",", ", ").replaceAll("held", "HELD").replaceAll("0", "0.0");
    expect(ownNames([{ name: name.toLowerCase(), formula: other }]).ours).toEqual(new Set([name]));
  });

  test("are known in both forms", () => {
    for (const { name, formula: text } of namedFormulas.values()) {
      expect(ownNames([{ name, formula: asTyped(text) }]).ours).toEqual(new Set([name]));
    }
  });

  test("are not ours with another text, nor on one sheet alone", () => {
    const { name, formula: text } = typed("TEA_WATER");
    const changedText = { name, formula: text.replace('""', '" "') };
    for (const each of [changedText, { name, formula: "=Lots!$A$1" }, { name, formula: text, sheet: "Lots" }]) {
      expect(ownNames([each])).toEqual({ ours: new Set(), taken: new Set([name]) });
    }
  });
});

describe("the plan", () => {
  test("counts what becomes of each formula, and reads nothing into texts", async () => {
    const plan = await planned(farm(), "to names");
    expect(plan.sheets).toMatchObject([
      {
        sheet: "Lots",
        changes: [
          { row: 1, column: 2, was: "=TEA.OUTTURN(A2,B2)", formula: "=TEA_OUTTURN(A2,B2)", value: 0.2 },
          {
            ...{ row: 2, column: 2, was: "=ROUND(tea.outturn (A3,B3),3)", value: 0.215 },
            formula: "=ROUND(TEA_OUTTURN(A3,B3),3)",
          },
          {
            ...{ row: 2, column: 3, was: "=TEA.STOCKBALANCE(A:A,B:B)+TEA.WATER(A2,0.7)", value: "#VALUE!" },
            formula: "=TEA.STOCKBALANCE(A:A,B:B)+TEA_WATER(A2,0.7)",
          },
        ],
      },
      {
        sheet: "Pan",
        changes: [
          {
            ...{ row: 0, column: 0, was: "=TEA.TARGETWEIGHT(320,75%,60%)", value: 200 },
            formula: "=TEA_TARGETWEIGHT(320,75%,60%)",
          },
        ],
      },
    ]);
    expect(formulasIn(plan)).toBe(4);
    expect(plan.without).toEqual(["LOTFLAG", "STOCKBALANCE"]);
    const names = ["TEA_OUTTURN", "TEA_WATER", "TEA_TARGETWEIGHT"];
    expect(plan.put.map(({ name }) => name)).toEqual(neededFor(names).map(({ name }) => name));
  });

  test("puts in what is not there yet", async () => {
    const host = farm();
    host.bookNames = neededFor(["TEA_WATER"]).map(({ name }) => typed(name));
    const there = new Set(host.bookNames.map(({ name }) => name));
    expect((await planned(host, "to names")).put.filter(({ name }) => there.has(name))).toEqual([]);
  });

  test("leaves protected sheets, and what they call", async () => {
    const host = farm();
    host.protectedSheets.add("Pan");
    const plan = await planned(host, "to names");
    expect(plan.locked).toEqual([{ sheet: "Pan", formulas: 1 }]);
    expect(plan.put.map(({ name }) => name)).not.toContain("TEA_TARGETWEIGHT");
  });

  test("keeps a name of the maker's, and leaves to the add-in what would need it", async () => {
    const host = farm();
    host.bookNames = [{ name: "Tea_Outturn", formula: "=Lots!$C$2" }];
    const plan = await planned(host, "to names");
    expect([plan.taken, plan.blocked]).toEqual([["TEA_OUTTURN"], ["OUTTURN"]]);
    expect(formulasIn(plan)).toBe(2);
    host.bookNames = [{ name: "_TEA_NUMBER", formula: "=5" }];
    const none = await planned(host, "to names");
    expect([formulasIn(none), none.put, none.blocked]).toEqual([0, [], ["OUTTURN", "TARGETWEIGHT", "WATER"]]);
  });

  test("changes what names of the maker's call", async () => {
    const host = farm();
    host.bookNames = [{ name: "Load", formula: "=LAMBDA(x,TEA.WATER(x,0.7))", comment: "mine" }];
    const plan = await planned(host, "to names");
    expect(plan.changed).toEqual([{ name: "Load", formula: "=LAMBDA(x,TEA_WATER(x,0.7))", comment: "mine" }]);
  });

  test("has a function as a value keep its name", async () => {
    const host = new FakeWorkbookHost({ Lots: { A1: formula("=MAP(B1:B3,C1:C3,TEA_WATER)") } });
    host.bookNames = neededFor(["TEA_WATER"]).map(({ name }) => typed(name));
    expect(await planned(host, "back")).toMatchObject({ sheets: [], uncalled: [] });
  });
});

describe("carrying it out", () => {
  test("goes there and back, and leaves what it found", async () => {
    const host = farm();
    const mine = { name: "Pans", formula: "=Pan!$A$1" };
    host.bookNames = [mine];
    const outcome = await changed(host, "to names");
    expect(outcome).toMatchObject({ formulas: 4, left: [], sheetsLeft: [], takenOut: [], others: [] });
    expect(formulasOf(host, "Lots", "C2", "C4", "D2")).toEqual([
      "=TEA_OUTTURN(A2,B2)",
      '="TEA.OUTTURN("&A4',
      "=TEA.LOTFLAG(C2,C3:C9,1)",
    ]);
    expect(host.bookNames.map(({ name }) => name).sort()).toEqual([...outcome.put, "Pans"].sort());

    const back = await changed(host, "back");
    // One more: it called by name from the beginning.
    expect(back.formulas).toBe(5);
    expect(formulasOf(host, "Lots", "C2", "C3")).toEqual(["=TEA.OUTTURN(A2,B2)", "=ROUND(TEA.OUTTURN(A3,B3),3)"]);
    expect(host.bookNames).toEqual([mine]);
  });

  test("says how far it is, sheet by sheet", async () => {
    const host = farm();
    const heard: Progress[] = [];
    await carryOut(host, await planned(host, "to names"), {
      keepsNames: false,
      onProgress: (each) => heard.push(each),
    });
    expect(heard).toEqual([
      { sheet: "Lots", done: 0, all: 4 },
      { sheet: "Pan", done: 3, all: 4 },
    ]);
  });

  test("names the cells that could not be changed, and goes on", async () => {
    const host = farm();
    host.stubborn.add("Lots!C3");
    expect(await changed(host, "to names")).toMatchObject({
      formulas: 3,
      left: [{ sheet: "Lots", row: 2, column: 2, trouble: "formula not taken" }],
    });
  });

  test("names a sheet that was protected meanwhile, and goes on", async () => {
    const host = farm();
    const plan = await planned(host, "to names");
    host.protectedSheets.add("Lots");
    const outcome = await carryOut(host, plan, { keepsNames: false, onProgress: () => undefined });
    expect(outcome.sheetsLeft).toEqual([{ sheet: "Lots", trouble: "sheet protected" }]);
    expect(outcome.formulas).toBe(1);
  });

  test("keeps on the way back the names that a cell still calls, and all of them when told to", async () => {
    const host = farm();
    await changed(host, "to names");
    const all = host.bookNames;
    host.stubborn.add("Pan!A1");
    const outcome = await changed(host, "back");
    const kept = neededFor(["TEA_TARGETWEIGHT"]).map(({ name }) => name);
    expect(host.bookNames.map(({ name }) => name).sort()).toEqual([...kept].sort());
    expect(outcome.takenOut).toHaveLength(all.length - kept.length);

    const other = farm();
    await changed(other, "to names");
    expect((await changed(other, "back", true)).takenOut).toEqual([]);
    expect(other.bookNames).toEqual(all);
  });

  test("changes nothing where a name is refused", async () => {
    const host = farm();
    host.putNames = async () => {
      throw new HostProblem("not here", "place or formula not known");
    };
    await expect(changed(host, "to names")).rejects.toBeInstanceOf(HostProblem);
    expect(formulasOf(host, "Lots", "C2")).toEqual(["=TEA.OUTTURN(A2,B2)"]);
  });

  test("stops before it begins in an Excel that has no LAMBDA", async () => {
    const host = farm();
    host.expressions["SUM(LAMBDA(given,VSTACK(given))(1))"] = "#NAME?";
    await expect(changed(host, "to names")).rejects.toMatchObject({ trouble: "not in this Excel" });
    expect([formulasOf(host, "Lots", "C2"), host.bookNames]).toEqual([["=TEA.OUTTURN(A2,B2)"], []]);
    // The way back takes none.
    await expect(changed(host, "back")).resolves.toMatchObject({ formulas: 1 });
  });

  test("names the cells that show something else than before, but for the last digits", async () => {
    const host = farm();
    const answers: Record<string, FakeCell["value"]> = { "=TEA_OUTTURN(A2,B2)": "#NAME?" };
    host.calculation = (text) =>
      answers[text] ?? (text.startsWith("=ROUND") ? 0.215 + 1e-15 : text.includes("STOCK") ? "#VALUE!" : 200);
    const { others } = await changed(host, "to names");
    expect(others).toEqual([{ sheet: "Lots", row: 1, column: 2, before: 0.2, now: "#NAME?" }]);
  });
});

test("every function that has a named formula goes there and back", async () => {
  const cells = Object.fromEntries(
    [...namedIds].map((id, row) => [`A${row + 1}`, formula(`=TEA.${id}(B1,"TEA.${id}(",C1)`)]),
  );
  const host = new FakeWorkbookHost({ All: cells });
  await changed(host, "to names");
  expect(formulasOf(host, "All", "A1")[0]).toMatch(/^=TEA_/);
  expect(host.bookNames).toHaveLength(namedFormulas.size);
  await changed(host, "back");
  expect([...namedIds].map((_, row) => host.cell("All", `A${row + 1}`))).toEqual(Object.values(cells));
  expect(host.bookNames).toEqual([]);
});
