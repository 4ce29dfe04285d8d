/** Whether memory or the browser's storage gave out, somewhere down the chain of causes. */
export function isTooLarge(problem: unknown): boolean {
  if (!(problem instanceof Error || problem instanceof DOMException)) return false;
  const isOutOfRoom = problem instanceof RangeError || problem.name === "QuotaExceededError";
  return isOutOfRoom || isTooLarge((problem as Error).cause);
}
