import { readFileSync } from "node:fs";
import { compileFunction } from "node:vm";
import { transformSync } from "esbuild";
import { expect, test } from "vitest";
import { filesOfEngine, mends, pauseForTyping, quicker } from "../../src/build/quicker-engine";

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

test("the engine's file for Node still has its pause, and once only", () => {
  const file = "node_modules/@univerjs/sheets-formula/lib/cjs/index.js";
  expect(`/${file}`).toMatch(filesOfEngine);
  expect(readFileSync(file, "utf8").match(pauseForTyping.before)).toHaveLength(1);
});

test("nothing but the engine's packages is changed", () => {
  expect("/tea/node_modules/numfmt/dist/numfmt.js").not.toMatch(filesOfEngine);
  expect("/tea/src/engine/open-engine.ts").not.toMatch(filesOfEngine);
});
