/** Where things stand in the book of the moisture bench. */
export const oven = { firstRow: 7, lastRow: 12, limit: "B4", halfWidth: "B5", meanRow: 8, spreadRow: 12 } as const;
export const scale = { firstRow: 5, lastRow: 14, readability: "B16", accuracy: "B17", readings: "B18" } as const;
export const losses = { weight: "B4", moisture: "B5", loss: "B6", tableRow: 4, target: "B9" } as const;
export const conversions = {
  firstBasis: 6,
  lastBasis: 10,
  firstWeight: 14,
  lastWeight: 19,
  firstArea: 23,
  lastArea: 25,
} as const;
