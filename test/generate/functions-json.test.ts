import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import { describe, expect, test } from "vitest";
import { catalogue } from "../../src/core/catalogue";
import { functionsJson } from "../../src/generate/functions-json";
import { jsdocStubs } from "./jsdoc-stubs";

const origin = "https://example.org/tea";
const ours = functionsJson(catalogue, origin);

interface Reading {
  readonly parameters: readonly { readonly name: string; readonly description?: string }[];
  readonly result: object;
}

const withoutMeanings = <Read extends Reading>(entry: Read) => ({
  ...entry,
  parameters: entry.parameters.map(({ description: _, ...rest }) => rest),
});

async function microsoftsReading(source: string) {
  const folder = mkdtempSync(join(tmpdir(), "tea-stubs-"));
  try {
    const file = join(folder, "stubs.ts");
    writeFileSync(file, source);
    const { metadataJson, errors } = await generateCustomFunctionsMetadata(file);
    expect(errors).toEqual([]);
    return JSON.parse(metadataJson) as { functions: Reading[] };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

describe("functions.json", () => {
  test("says the same as Microsoft's own tool about the same functions", async () => {
    const theirs = await microsoftsReading(jsdocStubs(catalogue, origin));
    // The bounds behind each meaning are ours alone; errors as arguments the tool cannot express.
    expect(ours.functions.map(withoutMeanings)).toEqual(
      // The tool leaves out the type of an answer that may be anything.
      theirs.functions.map(withoutMeanings).map((entry) => ({ ...entry, result: { type: "any", ...entry.result } })),
    );
    const meanings = theirs.functions.flatMap((entry) => entry.parameters.map(({ description }) => description));
    const ourMeanings = ours.functions.flatMap((entry) => entry.parameters.map(({ description }) => description));
    expect(meanings).toHaveLength(ourMeanings.length);
    meanings.forEach((meaning, index) => {
      expect(ourMeanings[index]?.startsWith(`${meaning}; `), `${ourMeanings[index]} begins with ${meaning}`).toBe(true);
    });
  });

  test("lets errors reach the functions, where the schema wants it: at the top", () => {
    expect(ours.allowErrorForDataTypeAny).toBe(true);
    expect(JSON.stringify(ours.functions)).not.toContain("allowErrorForDataTypeAny");
  });

  test("lists every function of the catalogue once, without an inner dot", () => {
    expect(ours.functions.map(({ id }) => id)).toEqual(catalogue.map(({ spec }) => spec.id));
    for (const { id, name } of ours.functions) {
      expect(id).toMatch(/^[A-Z0-9]+$/);
      expect(name).toBe(id);
    }
  });
});
