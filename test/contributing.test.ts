import { readFileSync } from "node:fs";
import { expect, test } from "vitest";

const text = (path: string): string => readFileSync(path, "utf8");

test("the commit that is shown to contributors is what stands in the project", () => {
  const shown = text("CONTRIBUTING.md");
  expect(shown).toContain(`\`\`\`ts\n${text("src/core/moisture/water.ts")}\`\`\`\n`);
  for (const line of ['import { water, waterPage } from "./moisture/water";\n', "  entry(water, waterPage),\n"]) {
    expect(shown).toContain(line);
    expect(text("src/core/catalogue.ts")).toContain(line);
  }
});
