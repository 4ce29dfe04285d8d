import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { catalogue } from "../../src/core/catalogue";
import { ErrorMessages } from "../../src/engine/error-messages";
import { descriptionsFor, executorsFor } from "../../src/engine/executors";
import { type NodeWorkbook, openInNode } from "../../src/engine/node-workbook";
import { addressOf } from "../../src/workbook/addresses";
import type { Cell, Sheet } from "../../src/workbook/workbook";

const percentages = Array.from({ length: 99 }, (_, index) => index + 1);

const sheetOf = (name: string, cells: Cell[]): Sheet => ({
  name,
  cells,
  columnWidths: {},
  rowHeights: {},
  merges: [],
});

let book: NodeWorkbook;

beforeAll(async () => {
  const cells = percentages.map((percent, row) => ({ row, column: 0, formula: `=TEA.DRYMATTER(1,${percent}%)` }));
  book = openInNode({ name: "Percentages", sheets: [sheetOf("Percentages", cells)] });
  await book.calculate();
});

afterAll(() => book.close());

describe("the functions in a worksheet", () => {
  it("take a percentage as the number that it is", () => {
    const answers = percentages.map((_, row) => book.value("Percentages", addressOf(row, 0)));
    expect(answers).toEqual(percentages.map((percent) => 1 - percent / 100));
  });
});

describe("the help while typing", () => {
  const descriptions = descriptionsFor(catalogue);

  it("knows every function that runs, by the same name", () => {
    const names = executorsFor(catalogue, new ErrorMessages()).map(([, name]) => name);
    expect(descriptions.map(({ functionName }) => functionName)).toEqual(names);
  });

  it("says what a function answers, what its arguments mean, and shows an example", () => {
    const help = descriptions.find(({ functionName }) => functionName === "TEA.TARGETWEIGHT");
    expect(help?.abstract).toBe("What the scale should read when leaf has reached a target moisture.");
    expect(help?.description).toContain("=TEA.TARGETWEIGHT(320,0.75,0.6)");
    expect(help?.functionParameter[2]).toEqual({
      name: "targetMoisture",
      detail: "moisture wanted, wet basis",
      example: "0.6",
      require: 1,
      repeat: 0,
    });
  });

  it("marks what may be left out, with what stands in for it", () => {
    const help = descriptions.find(({ functionName }) => functionName === "TEA.MOISTURENOW");
    const dryLoss = help?.functionParameter.find(({ name }) => name === "dryLoss");
    expect(dryLoss?.require).toBe(0);
    expect(dryLoss?.detail).toMatch(/\(counts as 0\)$/);
  });
});

describe("error messages", () => {
  it("tell their listeners when a calculation is done, until these stop listening", () => {
    const errors = new ErrorMessages();
    let told = 0;
    const stop = errors.subscribe(() => {
      told += 1;
    });
    errors.settle(() => undefined);
    stop();
    errors.settle(() => undefined);
    expect(told).toBe(1);
  });
});
