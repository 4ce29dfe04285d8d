import type { Quantity } from "../core/quantities";
import { workingNumber } from "../core/working";

/** A value of a working with its unit: a share in percent, a time as a clock shows it, text as it is. */
export function shownValue(value: unknown, quantity: Quantity | undefined, unit = ""): string {
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "object" && value !== null && "code" in value) return String(value.code);
  if (typeof value !== "number") return String(value ?? "");
  const format = quantity?.format ?? "";
  if (format.includes("%")) return `${workingNumber(value * 100)} %`;
  if (format.includes("mm")) return clockTime(value, format === "hh:mm");
  return unit === "" ? workingNumber(value) : `${workingNumber(value)} ${unit}`;
}

function clockTime(days: number, ofDay: boolean): string {
  const minutes = Math.round(days * 1440);
  const hours = Math.floor(minutes / 60);
  return `${ofDay ? String(hours % 24).padStart(2, "0") : hours}:${String(minutes % 60).padStart(2, "0")}`;
}
