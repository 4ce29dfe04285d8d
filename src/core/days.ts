/** Times and dates as a spreadsheet counts them: in days. */
export const minutesInDay = 1440;
export const secondsInDay = 86_400;
export const millisecondsInDay = 86_400_000;

/** Day 0, as the 29 February 1900 that never was makes it, in milliseconds as dates count them. */
export const dayZero = /* @__PURE__ */ Date.UTC(1899, 11, 30);

export const wholeSeconds = (days: number): number => Math.round(days * secondsInDay);
