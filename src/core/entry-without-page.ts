import type { FunctionSpec } from "./define";

/** Stands in for entry.ts in the functions script: the minifier then drops every page as unused. */
export const entry = (spec: FunctionSpec) => ({ spec });

/** Likewise for what explains a quantity or a table: an object without properties, that a spread leaves no trace of. */
export const explained = () => ({});
