import * as library from "wasm-xlsxwriter";

export type SpreadsheetWriter = typeof library;

/**
 * The library that writes .xlsx files, ready for use. In Node it is ready once imported; in a browser its default
 * export fetches the compiled part first, which the bundler has put beside the page as an asset.
 */
export async function spreadsheetWriter(): Promise<SpreadsheetWriter> {
  const { default: fetchCompiledPart } = library as { default?: () => Promise<unknown> };
  await fetchCompiledPart?.();
  return library;
}
