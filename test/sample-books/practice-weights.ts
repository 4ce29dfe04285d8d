import { catalogue } from "../../src/core/catalogue";
import { rowsOf } from "../../src/core/describe";

/** The weights of checks on common practice, which belong to no sample. */
export const practiceWeights: readonly number[] = catalogue.flatMap(({ page }) =>
  page.checks
    .filter(({ status }) => status === "common practice")
    .flatMap(({ given, expected }) => [...given, ...rowsOf(expected).flat()])
    .filter((value): value is number => typeof value === "number" && value > 100),
);
