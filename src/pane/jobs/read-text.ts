import type { Parameter } from "../../core/define";
import { moistureError, type Quantity } from "../../core/quantities";
import type { Messages, Says } from "../messages/messages";
import { shownNumber, type WeightUnit } from "./shown-number";

/** What a form takes a text for. */
export type Understood =
  | { readonly is: "blank" }
  | { readonly is: "value"; readonly value: number | string }
  | { readonly is: "problem"; readonly says: Says };

export type FieldKind = "choice" | "text" | "percent" | "points" | "time" | "number";

/** How a quantity is typed. Errors of moistures are typed in points, since 0.5 is half a point to everyone. */
export function kindOf(quantity: Quantity): FieldKind {
  if (quantity.holds === "choice") return "choice";
  if (quantity.holds !== "number") return "text";
  if (quantity === moistureError) return "points";
  if (quantity.format.includes("%")) return "percent";
  return quantity.format.includes("mm") ? "time" : "number";
}

/**
 * Reads what was typed. A cell never guesses; a form does, by rules that it shows the outcome of: a percentage may be
 * written 76, 76 % or 0.76, where a bare number below 1 is a share and any other a percentage. A comma is a decimal
 * mark, unless it may as well mark thousands.
 */
export function understood(text: string, { quantity, optional, blank }: Parameter, unit: WeightUnit): Understood {
  const typed = text.normalize("NFKC").trim();
  if (typed === "") return optional || blank === "waits" ? { is: "blank" } : problem((m) => m.problems.needed);
  const kind = kindOf(quantity);
  if (kind === "text" || kind === "choice") return { is: "value", value: typed };
  const value = kind === "time" ? timeOf(typed) : numberOf(typed, kind);
  if (typeof value !== "number") return value;
  const broken = brokenBounds(value, quantity);
  if (!broken) return { is: "value", value };
  return problem((m) => m.problems.must(boundsInWords(quantity, unit, m)));
}

const problem = (says: Says): Understood => ({ is: "problem", says });

function numberOf(typed: string, kind: "percent" | "points" | "number"): number | Understood {
  const [, digits = "", sign] = /^([-−+]?[\d.,\s]+?)\s*(%)?$/.exec(typed) ?? [];
  if (/^[-−+]?[1-9]\d{0,2},\d{3}$/.test(digits) || /[.,].*[.,]/.test(digits)) {
    return problem((m) => m.problems.twoWays(typed));
  }
  const plain = digits
    .replace(/(\d)\s(?=\d{3}(?!\d))/g, "$1")
    .replace(",", ".")
    .replace("−", "-");
  const number = /^[-+]?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : Number.NaN;
  if (!Number.isFinite(number) || (sign && kind === "number")) return problem((m) => m.problems.notNumber(typed));
  if (kind === "number") return number;
  const isShare = kind === "percent" && !sign && Math.abs(number) < 1;
  // 5.8 % as it is written, 0.058: divided by 100 it would be 0.057999999999999996.
  return isShare ? number : Number(`${plain}e-2`);
}

/** Hours and minutes as the share of a day. More than a day is written as hours. */
function timeOf(typed: string): number | Understood {
  const [, hours, minutes, seconds = "0"] = /^(\d{1,3}):([0-5]\d)(?::([0-5]\d))?$/.exec(typed) ?? [];
  if (hours === undefined) return problem((m) => m.problems.notTime(typed));
  return (Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds)) / 86_400;
}

function brokenBounds(value: number, { bounds: { above, atLeast, below, atMost, whole } }: Quantity): boolean {
  return (
    (above !== undefined && value <= above) ||
    (atLeast !== undefined && value < atLeast) ||
    (below !== undefined && value >= below) ||
    (atMost !== undefined && value > atMost) ||
    (whole === true && !Number.isInteger(value))
  );
}

function boundsInWords(quantity: Quantity, unit: WeightUnit, { problems, units, unitWords }: Messages): string[] {
  const { above, atLeast, below, atMost, whole } = quantity.bounds;
  const shown = (bound: number) => shownNumber(bound, quantity, unit, { units, unitWords });
  return [
    ...(whole ? [problems.whole] : []),
    ...(above === undefined ? [] : [problems.above(shown(above))]),
    ...(atLeast === undefined ? [] : [problems.atLeast(shown(atLeast))]),
    ...(below === undefined ? [] : [problems.below(shown(below))]),
    ...(atMost === undefined ? [] : [problems.atMost(shown(atMost))]),
  ];
}
