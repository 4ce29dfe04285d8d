import { readFileSync } from "node:fs";
import { compileFunction } from "node:vm";
import { transformSync } from "esbuild";
import { expect, test } from "vitest";
import { filesOfEngine, mends, mendsInNode, quicker, quickerInNode } from "../../src/build/quicker-engine";

/** As it comes: a new version of it may no longer say what is put right. */
const fileOf = (form: string) => `node_modules/@univerjs/engine-formula/lib/${form}/index.js`;

test.each(["cjs", "es"])("the engine's file for %s still holds what is put right, and is sound afterwards", (form) => {
  const text = readFileSync(fileOf(form), "utf8");
  expect(`/${fileOf(form)}`).toMatch(filesOfEngine);
  const found = mends.map(({ before }) => text.match(before)?.length ?? 0);
  expect(found).toEqual([expect.any(Number), 1, 1]);
  expect(found[0]).toBeGreaterThan(1000);
  const mended = quicker(text);
  expect(mended).not.toContain('_defineProperty(this, "');
  expect(mended.split("\n")).toHaveLength(text.split("\n").length + 2);
  expect(() => compileFunction(transformSync(mended, { format: "cjs" }).code)).not.toThrow();
});

test.each(mendsInNode)(
  "$file still holds what Node does without, once, and is sound without it",
  ({ file, before }) => {
    const path = `node_modules/@univerjs/${file}/lib/cjs/index.js`;
    expect(`/${path}`).toMatch(filesOfEngine);
    const text = readFileSync(path, "utf8");
    expect(text.match(before)).toHaveLength(1);
    expect(quickerInNode(text)).not.toMatch(before);
    expect(() => compileFunction(quickerInNode(text))).not.toThrow();
  },
);

test("nothing but the engine's packages is changed", () => {
  expect("/tea/node_modules/numfmt/dist/numfmt.js").not.toMatch(filesOfEngine);
  expect("/tea/src/engine/open-engine.ts").not.toMatch(filesOfEngine);
});
