/** The season's tables, worked out by the functions of the catalogue. */
import { bind } from "../../cells/bind";
import type { Grid } from "../../cells/values";
import type { Column } from "../../core/define";
import { seasonTable } from "../../core/season/season-table";
import { outturn } from "../../core/yields/outturn";
import type { SeasonLot } from "./season";

export const tableColumns: readonly Column[] = "columns" in seasonTable.result ? seasonTable.result.columns : [];

/** What SEASONTABLE makes of the lots, with its headings. */
export const tableBy = (lots: readonly SeasonLot[], groupOf: (lot: SeasonLot) => string): Grid =>
  bind(seasonTable)(
    lots.map((lot) => [groupOf(lot)]),
    lots.map(({ fresh }) => [fresh]),
    lots.map(({ finished }) => [finished ?? null]),
    null,
    null,
    true,
  );

export const outturns = (lots: readonly SeasonLot[]): Grid =>
  bind(outturn)(
    lots.map(({ fresh }) => [fresh]),
    lots.map(({ finished }) => [finished ?? null]),
  );

/** `noPlot`: what stands where a lot names none. */
export const plotOf =
  (noPlot: string) =>
  ({ plot }: SeasonLot): string =>
    plot || noPlot;

export const namesPlots = (lots: readonly SeasonLot[]): boolean => lots.some(({ plot }) => plot !== "");
