import { bind } from "../../../cells/bind";
import { lotFlags } from "../../../core/season/lot-flags";
import type { Finding } from "../finding";
import type { KnownSheet } from "../known-sheet";

const flags = bind(lotFlags);

/** Lots whose outturn is far from the sheet's own: as LOTFLAGS flags them, where there are enough of them. */
export function outturnFar({ lots }: KnownSheet): Finding[] {
  const finished = lots.filter(
    ({ fresh, finished: { value } }) =>
      typeof fresh.value === "number" && typeof value === "number" && value > 0 && value <= fresh.value,
  );
  if (finished.length === 0) return [];
  const column = (of: "fresh" | "finished") => finished.map((lot) => [lot[of].value]);
  const rows = flags(column("fresh"), column("finished"), null, false);
  return finished.flatMap((lot, index): Finding[] => {
    const [outturn, z, flag] = rows[index] ?? [];
    if (typeof outturn !== "number" || typeof z !== "number" || (flag !== "high" && flag !== "low")) return [];
    const details = { outturn: `${(outturn * 100).toFixed(1)} %`, z: z.toFixed(1).replace("-", "−") };
    return [{ rule: "outturn far from the others", row: lot.finished.row, column: lot.finished.column, details }];
  });
}
