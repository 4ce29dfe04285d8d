/** How far two shares may differ and still count as equal: far below what any scale shows, far above rounding. */
export const shareTolerance = 1e-9;

/** Whether one share is above another by more than rounding. */
export const isAbove = (share: number, limit: number): boolean => share > limit + shareTolerance;
