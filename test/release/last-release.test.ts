import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { lastRelease, type Release, reasonsAgainst, recordRelease } from "../../src/release/last-release";

const weight = { name: "weight", optional: false, takes: "cell", holds: "number", bounds: { above: 0 } } as const;
const one = { id: "ONE", parameters: [weight], shape: "row", columns: ["load"] } as const;
const two = { id: "TWO", parameters: [], shape: "cell", columns: [] } as const;
const last: Release = { version: "1.2.3", signatures: [one] };

test("the first release follows nothing", () => {
  expect(reasonsAgainst(last, undefined)).toEqual([]);
});

test("a later version may add a function, an optional parameter and a column", () => {
  const signatures = [
    { ...one, parameters: [weight, { ...weight, name: "readability", optional: true }], columns: ["load", "rest"] },
    two,
  ];
  expect(reasonsAgainst({ version: "1.10.0", signatures }, last)).toEqual([]);
});

test("what would break saved workbooks is named", () => {
  const signatures = [{ ...one, parameters: [{ ...weight, name: "mass" }], columns: ["rest"] }];
  expect(reasonsAgainst({ version: "2.0.0", signatures }, last)).toEqual([
    "ONE: parameter 1 was weight and is mass",
    "ONE: column 1 was load and is rest",
  ]);
  expect(reasonsAgainst({ version: "2.0.0", signatures: [] }, last)).toEqual(["ONE is gone"]);
});

test("the same version may be built again, but not with other functions or wider bounds", () => {
  expect(reasonsAgainst(last, last)).toEqual([]);
  const more = [...last.signatures, two];
  expect(reasonsAgainst({ version: "1.2.3", signatures: more }, last)).toEqual([
    "1.2.3 was released with other functions: raise the version",
  ]);
  const wider = [{ ...one, parameters: [{ ...weight, bounds: {} }] }];
  expect(reasonsAgainst({ version: "1.2.3", signatures: wider }, last)).toHaveLength(1);
  expect(reasonsAgainst({ version: "1.2.4", signatures: wider }, last)).toEqual([]);
});

test("an older version does not follow a newer one", () => {
  expect(reasonsAgainst({ ...last, version: "1.2.2" }, last)).toEqual([
    "1.2.2 is older than 1.2.3, which was released",
  ]);
  expect(reasonsAgainst({ ...last, version: "1.10.0" }, last)).toEqual([]);
});

test.each(["1.3.0-beta", "1.3", "v1.3.0", "next"])("%s is refused: its order is not known", (version) => {
  expect(reasonsAgainst({ ...last, version }, last)).toEqual([`${version} is no version such as 1.2.3`]);
  expect(reasonsAgainst({ ...last, version }, undefined)).toEqual([`${version} is no version such as 1.2.3`]);
});

test("a release is recorded and read again", () => {
  const folder = mkdtempSync(join(tmpdir(), "tea-last-"));
  const file = join(folder, "last.json");
  expect(lastRelease(file)).toBeUndefined();
  recordRelease(last, file);
  expect(lastRelease(file)).toEqual(last);
  rmSync(folder, { recursive: true });
});

test("a correction passes with the next minor version, and has to be needed", () => {
  const narrower = [{ ...one, parameters: [{ ...weight, bounds: { above: 0, atMost: 5 } }] }];
  const correction = {
    version: "1.3.0",
    id: "ONE",
    parameter: "weight",
    of: "greatest",
    before: 1e12,
    after: 5,
    why: "more is no weight of tea",
  } as const;
  const because = (version: string, made = [correction]) =>
    reasonsAgainst({ version, signatures: narrower }, last, made);
  expect(because("1.3.0")).toEqual([]);
  expect(because("2.0.0")).toEqual([]);
  expect(because("1.2.4")).toEqual(["1.2.4 corrects what 1.2.3 did: raise the minor version"]);
  expect(because("1.3.0", [])).toEqual(["ONE: weight could be 1000000000000 and has to be 5 or less"]);
  expect(reasonsAgainst({ version: "1.3.0", signatures: [one] }, last, [correction])).toEqual([
    "ONE: the correction of weight from 1000000000000 to 5 is not needed",
  ]);
  // What a release already brought is history.
  expect(reasonsAgainst({ version: "1.4.0", signatures: [one] }, { ...last, version: "1.3.0" }, [correction])).toEqual(
    [],
  );
});
