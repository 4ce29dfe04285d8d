import { bind } from "../../cells/bind";
import { lotFlags } from "../../core/season/lot-flags";
import type { Finding } from "../finding";
import { weightOf } from "../known-cell";
import type { KnownSheet } from "../known-sheet";
import { inOneUnit } from "../units";

const flags = bind(lotFlags);

/** Lots whose outturn is far from the sheet's own: as LOTFLAGS flags them, where there are enough of them. */
export function outturnFar({ lots }: KnownSheet): Finding[] {
  const finished = lots.flatMap((lot) => {
    const [fresh, tea] = inOneUnit(weightOf(lot.fresh), weightOf(lot.finished));
    // Copies and sums of a book that stands elsewhere have been looked at there.
    const isWritten = lot.fresh.typed || lot.finished.typed;
    return isWritten && tea > 0 && tea <= fresh ? [{ fresh, tea, at: lot.finished }] : [];
  });
  if (finished.length === 0) return [];
  const column = (of: "fresh" | "tea") => finished.map((lot) => [lot[of]]);
  const rows = flags(column("fresh"), column("tea"), null, false);
  return finished.flatMap(({ at }, index): Finding[] => {
    const [outturn, z, flag] = rows[index] ?? [];
    if (typeof outturn !== "number" || typeof z !== "number" || (flag !== "high" && flag !== "low")) return [];
    const details = { outturn: `${(outturn * 100).toFixed(1)} %`, z: z.toFixed(1).replace("-", "−") };
    return [{ rule: "outturn far from the others", row: at.row, column: at.column, details }];
  });
}
