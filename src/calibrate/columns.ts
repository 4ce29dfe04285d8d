import type { Column } from "../generate/measured";

/** How often something was so, or what part of what was tried at once. */
export const share = (name: string): Column => ({ name, of: "share" });
export const mean = (name: string): Column => ({ name, of: "mean" });
/** The usual size of what may lie to either side. */
export const usual = (name: string): Column => ({ name, of: "root mean square" });

/** A share counts 1 where it is so. */
export const counted = (is: boolean): number => (is ? 1 : 0);

/** A share as a sentence gives it: what is not quite all is not rounded up to all, nor what is not quite none to none. */
export function inWords(of100: number): string {
  const rounded = Math.round(of100);
  if (rounded === 100 && of100 < 100) return "over 99";
  return rounded === 0 && of100 > 0 ? "under 1" : String(rounded);
}
