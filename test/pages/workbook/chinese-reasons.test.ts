import { afterAll, expect, test, vi } from "vitest";
import { mustBe } from "../../../src/core/errors";
import { placeOf } from "../../../src/workbook/addresses";

const settings = "../../../src/pane/settings";
vi.doMock(settings, () => ({ keptSettings: { read: () => ({ language: "zh" }) } }));
// The page's words remember which language is spoken; other tests of this process speak another.
vi.resetModules();
const { hindrances } = await import("../../../src/pages/workbook/hindrances");
const { KnownWorkbook } = await import("../../../src/pages/workbook/known-workbook");
const { hindranceAfterAddress, waitsFor } = await import("../../../src/pages/workbook/words");
afterAll(() => {
  vi.doUnmock(settings);
  vi.resetModules();
});

/** A book of two lots, the second load of which is a text. */
const cells = {
  A1: "批次",
  B1: "鲜叶（克）",
  C1: "锅量（克）",
  A2: "春1",
  B2: 900,
  C2: 300,
  A3: "春2",
  B3: 800,
  C3: "350 克",
};

test("in Chinese a refused cell goes by its heading and the name of its row as well", () => {
  const workbook = new KnownWorkbook({
    name: "试",
    sheets: [
      {
        ...{ name: "批次", columnWidths: {}, rowHeights: {}, merges: [] },
        cells: [
          ...Object.entries(cells).map(([address, value]) => ({ ...placeOf(address), value })),
          { ...placeOf("E3"), formula: "=TEA.CHARGECOUNT(B3,C3)", value: "#VALUE!" },
          { ...placeOf("F3"), formula: "=E3+1", value: "#VALUE!" },
        ],
      },
    ],
  });
  const { refusal, message } = mustBe("panLoad", "a number", "350 克");
  const isRefused = placeOf("E3");
  const [cause] = hindrances(
    workbook,
    ({ row, column }) =>
      row === isRefused.row && column === isRefused.column ? { message, reason: refusal } : undefined,
    () => undefined,
  );
  const sentence = cause && hindranceAfterAddress(cause);
  expect(cause).toMatchObject(placeOf("C3"));
  expect(sentence).toContain("春2 的锅量（克）");
  expect(sentence).toContain("“春2 的锅量（克）”必须");
  expect(sentence).not.toContain("panLoad");
  expect(cause && waitsFor(cause, { sheet: "批次", ...placeOf("F3") })).toContain("C3");
});
