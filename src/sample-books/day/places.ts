/** Where things stand in the book of a day, for the sheets that refer to each other. */

/** The sheet Day: the plan spills under its headings, with rows to spare. */
export const day = {
  leaf: "B5",
  panLoad: "B6",
  maxLoad: "B7",
  readability: "B8",
  firstStart: "B9",
  pans: "B10",
  breakStart: "B11",
  breakEnd: "B12",
  firings: "B15:B17",
  rests: "C15:C17",
  charges: "F4",
  end: "F5",
  longest: "F6",
  overruns: "F7",
  headRow: 10,
  firstRow: 11,
  /** Room for 27 firings and the total. */
  lastRow: 38,
  onePan: { end: "F40", longest: "F41", overruns: "F42" },
} as const;

export const drying = {
  weight: "B4",
  moisture: "B5",
  target: "B6",
  endMoisture: "B7",
  targetWeight: "B8",
  endWeight: "B9",
  firstRow: 11,
  lastRow: 22,
  forecastRow: 5,
  openRow: 8,
} as const;

export const picking = {
  firstRow: 5,
  lastRow: 8,
  finished: "B14",
  freshMoisture: "B15",
  finishedMoisture: "B16",
  dryLoss: "B17",
  rate: "B18",
  halfWidth: "B19",
  fresh: "F4",
  budsRow: 7,
  meanRow: 10,
} as const;

export const packing = {
  finished: "B4",
  moisture: "B5",
  driest: "B6",
  scatter: "B7",
  confidence: "B8",
  readability: "B9",
  firstSize: 12,
  lastSize: 13,
  nominal: "B15",
  tolerance: "B16",
  packages: "B17",
  firstNet: 20,
  lastNet: 31,
  planRow: 4,
  checkRow: 20,
} as const;

export const stock = {
  /** Each block: its headings, then five rows. */
  tea: { headRow: 4, firstRow: 5, lastRow: 9 },
  leaf: { headRow: 13, firstRow: 14, lastRow: 18 },
  verdictRow: 10,
  leafVerdictRow: 19,
} as const;

/** `Day!$B$5`, from another sheet; also of a range. */
export const on = (sheet: string, reference: string): string =>
  `${sheet}!${reference.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2")}`;
