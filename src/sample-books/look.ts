import { heading, ink, quiet, tint } from "../workbook/colours";
import type { Style } from "../workbook/workbook";

/** The styles that the sample books share: what is typed is tinted, what is worked out is plain. */
export const title: Style = { bold: true, size: 16, color: heading };
export const remark: Style = { color: quiet, italic: true };
export const section: Style = { bold: true, size: 12, color: heading, border: "bottom" };
export const columnHead: Style = { bold: true, color: quiet, align: "right" };
export const columnHeadLeft: Style = { bold: true, color: quiet };
export const label: Style = { color: ink };
export const unit: Style = { color: quiet };
/** Says that a number is still the sample's. */
export const mark: Style = { color: "#8a5a00" };
export const answer: Style = { bold: true, color: ink };

/** Yours to type in. */
export const input = (format?: string): Style => ({
  color: ink,
  fill: tint,
  border: "thin",
  align: format === undefined ? "left" : "right",
  ...(format === undefined ? {} : { format }),
});

/** Worked out. Right-aligned even where it is a text that waits, so that columns keep their edge. */
export const result = (format: string): Style => ({ color: ink, format, align: "right" });

/** To the decimals of a scale that reads tenths of a gram. */
export const grams = "0.0";
export const percent = "0.0%";
export const clock = "hh:mm";
export const span = "[h]:mm";
export const whole = "0";
export const date = "yyyy-mm-dd";
