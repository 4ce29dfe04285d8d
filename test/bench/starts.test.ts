import { execFileSync } from "node:child_process";
import { expect, test } from "vitest";

test("the bench, bundled as the functions script is, finds the project and runs", () => {
  const written = execFileSync(process.execPath, ["--import", "tsx", "src/bench/run.ts", "--memory", "cells"], {
    encoding: "utf8",
  });
  expect(Number(written)).toBeGreaterThan(0);
});
