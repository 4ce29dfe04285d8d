import type { FunctionPage, FunctionSpec } from "./define";

/** A line of the catalogue: what runs, and what explains it. */
export interface Entry {
  readonly spec: FunctionSpec;
  readonly page: FunctionPage;
}

/**
 * The functions script that Excel loads before the first cell resolves is built with this module exchanged for
 * entry-without-page.ts, so that no page is shipped in it.
 */
export const entry = <const Spec extends FunctionSpec, const Page extends FunctionPage>(spec: Spec, page: Page) => ({
  spec,
  page,
});

/** What explains and what no answer or refusal is made of: it is not shipped in the functions script either. */
export const explained = <What>(what: What): What => what;
