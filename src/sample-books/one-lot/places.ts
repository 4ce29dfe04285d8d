/** Where things stand in the book, for the sheets that refer to each other. */

/** Inputs of the sheet Lot. */
export const given = {
  fresh: "B9",
  aired: "B10",
  siftOuts: "B11",
  forPan: "B12",
  finished: "B13",
  finishedMoisture: "B14",
  freshMoisture: "B15",
  panLoad: "B18",
  largestLoad: "B19",
  readability: "B20",
  usualLoss: "B30",
  leastLoss: "B31",
  mostLoss: "B32",
  weightError: "B35",
  freshMoistureError: "B36",
  finishedMoistureError: "B37",
  wrapStart: "B43",
  wrapLasts: "B44",
  turnEvery: "B45",
} as const;

/** Rounds on the sheet Lot: name in A, target in B, its kind in C. */
export const firstRoundRow = 24;
export const rounds = 4;
const lastRoundRow = firstRoundRow + rounds - 1;
export const roundNames = `A${firstRoundRow}:A${lastRoundRow}`;
export const targets = `B${firstRoundRow}:B${lastRoundRow}`;
export const targetKinds = `C${firstRoundRow}:C${lastRoundRow}`;
/** The columns of the sheet Lot that hold one round each, in the plan and in the table of one point either side. */
export const roundColumns = ["G", "H", "I", "J"] as const;

/** Answers of the sheet Lot. */
export const found = {
  charges: "F5",
  assumed: "E9",
  /** The weights that the lot is worked out from: those typed, or what stands in for one that was left blank. */
  aired: "F13",
  siftOuts: "F14",
  forPan: "F15",
  missing: "F16",
  airedMoisture: "G13",
  forPanMoisture: "G15",
  freshMoisture: "F49",
  medianOfPastLots: "G49",
  finishedMoisture: "F60",
  expected: "F63",
  difference: "F65",
  check: "F66",
  outturn: "F67",
  leafRatio: "F68",
  recovery: "F69",
  unwrap: "B46",
  firstTurn: "B47",
} as const;

/** The first rows of the tables on the sheet Lot: what remains, plan, steps, band, one point either side. */
export const remainsRow = 12;
export const planRow = 20;
/** The last row that the plan may grow to: the answers below it stand in its way. */
export const lastPlanRow = 45;
export const freshMoistureRow = 49;
export const stepsRow = 52;
export const bandRow = 62;
export const eitherSideRow = 73;
export const wrapRow = 42;
/** The last row that times of turning may grow to before they lose their format. */
export const lastTurnRow = 66;
/** The charges that the card and the proof have room for. The plan itself takes as many as it needs. */
export const cardCharges = 8;

/** Past lots: from this row on, as many as there is room for. */
export const firstPastRow = 6;
export const lastPastRow = 25;

/** A cell of the sheet Lot, or a range of it, as other sheets name it. */
export const onLot = (reference: string): string => `Lot!${reference.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2")}`;
