/**
 * What the functions of the script for Google Sheets hand their arguments to. In this script core/entry.ts is exchanged
 * for entry-without-page.ts, so that no explanation is shipped in it but the comments that Google makes its help of.
 */
import { catalogue } from "../core/catalogue";
import { type SheetAnswer, sheetFunction } from "./sheet-function";

declare global {
  /** Declared by the script beside the functions that call it. Google offers no name that ends in _ to a maker. */
  var teaMassBalance_: (id: string, given: ArrayLike<unknown>) => SheetAnswer;
}

/** Google reads the whole script anew for each call: no function but the one that is called is made ready. */
teaMassBalance_ = (id, given) => {
  const entry = catalogue.find(({ spec }) => spec.id === id);
  if (entry === undefined) throw new Error(`the catalogue has no ${id}`);
  return sheetFunction(entry.spec)(Array.from(given));
};
