import type { WeightUnit } from "../../sheet-check/units";

export const outturnHeading = "outturn";

/** `fresh kg`. */
export const weightHeading = (which: "fresh" | "finished", unit: WeightUnit | undefined): string =>
  unit === undefined ? which : `${which} ${unit}`;
