import { isInHundredths, isTime, type Quantity } from "../core/quantities";
import { shownTime } from "../core/shown";
import { workingNumber } from "../core/working";

/** A value of a working with its unit: a share in percent, a time as a clock shows it, text as it is. */
export function shownValue(value: unknown, quantity: Quantity | undefined, unit = ""): string {
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "object" && value !== null && "code" in value) return String(value.code);
  if (typeof value !== "number") return String(value ?? "");
  if (quantity && isInHundredths(quantity)) return `${workingNumber(value * 100)} %`;
  if (quantity && isTime(quantity)) return shownTime(value, quantity);
  return unit === "" ? workingNumber(value) : `${workingNumber(value)} ${unit}`;
}
