import { buildPageOnce } from "../../src/build/workbook-page-build";

/** Before any test file begins, since two of them at a time would build into the same folder. */
export async function setup(): Promise<void> {
  await buildPageOnce();
}
