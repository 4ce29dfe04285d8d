import { readFileSync } from "node:fs";
import { expect, test } from "vitest";

test("every command installs first what is missing", () => {
  const { scripts } = JSON.parse(readFileSync("package.json", "utf8")) as { scripts: Record<string, string> };
  const commands = Object.keys(scripts).filter((name) => !(name.startsWith("pre") && name.slice(3) in scripts));
  expect(commands).toContain("picture");
  for (const name of commands) expect(scripts[`pre${name}`], name).toMatch(/^node src\/build\/install-first\.mjs/);
});
