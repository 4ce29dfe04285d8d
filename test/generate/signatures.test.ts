import { describe, expect, test } from "vitest";
import { signatureBreaches, staleFiles } from "../../src/generate/generate";
import { breaches, type Signature } from "../../src/generate/signatures";

const recorded: Signature = {
  id: "LEAFSHARE",
  parameters: [
    { name: "weight", optional: false },
    { name: "readability", optional: true },
  ],
  columns: ["step", "weight"],
};
const required = (name: string) => ({ name, optional: false });
const optional = (name: string) => ({ name, optional: true });
const changed = (change: Partial<Signature>) => breaches([recorded], [{ ...recorded, ...change }]);

describe("saved workbooks go on working", () => {
  test("when nothing changed, a function came, an optional was appended or a column added on the right", () => {
    expect(changed({})).toEqual([]);
    expect(breaches([recorded], [{ ...recorded, id: "ANOTHER" }, recorded])).toEqual([]);
    expect(changed({ parameters: [...recorded.parameters, optional("headers")] })).toEqual([]);
    expect(changed({ columns: ["step", "weight", "moisture"] })).toEqual([]);
  });

  test.each([
    ["a function goes", breaches([recorded], []), "LEAFSHARE is gone"],
    [
      "a parameter is renamed",
      changed({ parameters: [required("mass"), optional("readability")] }),
      "LEAFSHARE: parameter 1 was weight and is mass",
    ],
    [
      "a parameter goes",
      changed({ parameters: [required("weight")] }),
      "LEAFSHARE: parameter 2 was readability and is gone",
    ],
    [
      "an optional becomes required",
      changed({ parameters: [required("weight"), required("readability")] }),
      "LEAFSHARE: readability was optional and is required",
    ],
    [
      "a required parameter becomes optional",
      changed({ parameters: [optional("weight"), optional("readability")] }),
      "LEAFSHARE: weight was required and is optional",
    ],
    [
      "a required parameter is appended",
      changed({ parameters: [...recorded.parameters, required("moisture")] }),
      "LEAFSHARE: moisture was appended and is not optional",
    ],
    [
      "a column is put before another",
      changed({ columns: ["step", "moisture", "weight"] }),
      "LEAFSHARE: column 2 was weight and is moisture",
    ],
    ["a column goes", changed({ columns: ["step"] }), "LEAFSHARE: column 2 was weight and is gone"],
  ])("no longer when %s", (_change, found, line) => {
    expect(found).toEqual([line]);
  });
});

test("the catalogue keeps every signature that was recorded", () => {
  expect(signatureBreaches()).toEqual([]);
});

test("no generated page, signature or token is stale (npm run generate writes them)", () => {
  expect(staleFiles()).toEqual([]);
});
