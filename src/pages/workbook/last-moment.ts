/**
 * What is kept while a page goes away. The browser's database drops what it is still writing then; this storage is
 * done when the call returns, but has room for a few megabytes only. The next visit takes the newer of the two.
 */
import type { Workbook } from "../../workbook/workbook";

const placeOf = (key: string): string => `tea-mass-balance/last-moment/${key}`;

/** Keys whose work this page must not keep any more: it is about to be left for what stands there now. */
const settled = new Set<string>();
export const settle = (key: string): void => void settled.add(key);
export const isSettled = (key: string): boolean => settled.has(key);

/** Does what it can: a browser without room or permission keeps nothing here. */
export function keepAtLastMoment(key: string, workbook: Workbook): void {
  try {
    localStorage.setItem(placeOf(key), JSON.stringify({ version: 1, savedAt: new Date(), workbook }));
  } catch {
    // The database may still be in time.
  }
}

/** As it was kept, to be checked by whoever reads it; undefined when there is nothing. */
export function atLastMoment(key: string): { readonly savedAt: Date } | undefined {
  try {
    const content = JSON.parse(localStorage.getItem(placeOf(key)) ?? "null");
    return content ? { ...content, savedAt: new Date(content.savedAt) } : undefined;
  } catch {
    return undefined;
  }
}

/** Forgets it, unless it was kept after that moment. */
export function dropLastMoment(key: string, moment = new Date()): void {
  const found = atLastMoment(key);
  try {
    if (found === undefined || found.savedAt <= moment) localStorage.removeItem(placeOf(key));
  } catch {
    // What cannot be read cannot be in the way.
  }
}
