import { expect, test } from "vitest";
import { parted } from "../../src/build/pages-apart";

const file = `import { defineFunction, type FunctionPage } from "../define";
import { furnace } from "../sources";

const most = limitOf(500);
const shown = [[1], [2]];

interface Drying {
  readonly weight: number;
}

export const drying = defineFunction({ id: "DRYING", calculate: ({ weight }: Drying) => least(weight, most) });

function least(one: number, other: number): number {
  return Math.min(one, other);
}

export const dryingPage: FunctionPage = { examples: [shown], working: (weight: number) => [least(weight, most), furnace] };
`;

test("what runs goes without its page, and shares what both need", () => {
  const { runs, page } = parted(file, "/farm/src/core/time/drying.ts");
  expect(runs).toContain("export const drying =");
  expect(runs).not.toMatch(/dryingPage|shown/);
  expect(runs).toContain("export { most, least };");
  expect(page).toContain("export const dryingPage");
  expect(page).toContain("const shown = [[1], [2]];");
  expect(page).not.toMatch(/defineFunction\(|function least/);
  expect(page).toContain('export * from "./drying";');
  expect(page).toContain('import { most, least } from "./drying";');
  expect(page).toContain('import { furnace } from "../sources";');
});
