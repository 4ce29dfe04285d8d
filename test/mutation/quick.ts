import fc from "fast-check";
import { beforeEach } from "vitest";

/** There are thousands of mutants: what a property can find is found in a few runs of it, and without a million rows. */
fc.configureGlobal({ numRuns: 15 });

beforeEach(({ task, skip }) => {
  if (task.name.includes("million")) skip();
});
