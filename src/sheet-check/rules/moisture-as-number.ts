import type { Finding } from "../finding";
import type { KnownSheet } from "../known-sheet";
import { isMoisture } from "../roles";

/**
 * A moisture of 76 where 76 % was meant. One between 1 and 10 in a cell that shows percent is on dry basis instead,
 * unless it is one of finished tea, which is never so wet.
 */
export const moistureAsNumber = ({ area, cells }: KnownSheet): Finding[] =>
  cells.flatMap(({ role, fedAs, value, share = 0, typed, row, column }) => {
    if (!typed || share < 1) return [];
    if (!isMoisture(role) && !isMoisture(fedAs)) return [];
    // A heading that says dry basis is another finding, with other advice.
    if (role === "dry-basis moisture") return [];
    const format = area.formats[row - area.row]?.[column - area.column] ?? "";
    if (share < 10 && format.includes("%") && role !== "finished moisture") return [];
    return [{ rule: "moisture typed as a number of percent", row, column, details: { value: String(value) } }];
  });
