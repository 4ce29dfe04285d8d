import { useMemo } from "react";
import { bind } from "../../cells/bind";
import type { FunctionSpec, TableResult } from "../../core/define";
import { Phrase } from "../../core/phrases";
import { lotFlags } from "../../core/season/lot-flags";
import { ownRows } from "../../core/tables";
import { outturn } from "../../core/yields/outturn";
import type { Messages } from "../../words/messages";
import { useMessages } from "../use-messages";
import { type Charge, ChargesPicture } from "./charges-picture";
import { type DayFiring, DayPicture, type Pause } from "./day-picture";
import { type DryingCurve, DryingPicture } from "./drying-picture";
import { type Fills, FillsPicture } from "./fills-picture";
import { LotPicture, type LotStage } from "./lot-picture";
import { type LotFlagWord, type LotOutturn, OutturnPicture } from "./outturn-picture";

export interface AnswerPictureProps {
  /** The function that gave the rows. */
  readonly spec: FunctionSpec;
  readonly given: readonly unknown[];
  /** As its cells hold them, without headings, and with what it says as phrases. */
  readonly rows: readonly (readonly unknown[])[];
  /** What no charge may pass. */
  readonly limit?: number | undefined;
  readonly unit: string;
}

/** The picture of an answer, for the functions that have one. */
export function AnswerPicture({ spec, given, rows, limit, unit }: AnswerPictureProps) {
  const { phrase, columns } = useMessages();
  const table = spec.result.shape === "table" ? spec.result : undefined;
  const picture = table?.picture;
  const stages = useMemo(() => stagesIn(table, rows, phrase), [table, rows, phrase]);
  const charges = useMemo(() => chargesIn(table, rows), [table, rows]);
  const lots = useMemo(() => lotsIn(spec, given), [spec, given]);
  const day = useMemo(() => dayIn(spec, given, rows), [spec, given, rows]);
  const curve = useMemo(() => dryingIn(spec, given, rows), [spec, given, rows]);
  const fills = useMemo(() => fillsIn(spec, given), [spec, given]);
  if (day) return <DayPicture {...day} />;
  if (curve) return <DryingPicture {...curve} unit={unit} />;
  if (fills) return <FillsPicture {...fills} unit={unit} />;
  if (stages.length > 0) {
    return (
      <LotPicture stages={stages} unit={unit} rowName={picture?.shows === "meanings" ? columns.meaning : undefined} />
    );
  }
  if (charges.length > 0) return <ChargesPicture charges={charges} limit={limit} unit={unit} />;
  return lots === undefined ? null : <OutturnPicture {...lots} />;
}

type Rows = AnswerPictureProps["rows"];

const placeOf = ({ columns }: TableResult, name: string): number => columns.findIndex((column) => column.name === name);

function stagesIn(table: TableResult | undefined, rows: Rows, words: Messages["phrase"]): LotStage[] {
  const picture = table?.picture;
  if (table === undefined || (picture?.shows !== "stages" && picture?.shows !== "meanings")) return [];
  const [names, weights, moistures] = [picture.name, picture.weight, picture.moisture].map((name) =>
    placeOf(table, name),
  ) as [number, number, number];
  return ownRows(table, rows).flatMap((row) => {
    const [weight, moisture] = [row[weights], row[moistures]];
    return typeof weight === "number" && typeof moisture === "number"
      ? [{ name: row[names] instanceof Phrase ? words(row[names].saying) : String(row[names]), weight, moisture }]
      : [];
  });
}

function chargesIn(table: TableResult | undefined, rows: Rows): Charge[] {
  const picture = table?.picture;
  if (table === undefined || picture?.shows !== "charges") return [];
  const [names, loads] = [placeOf(table, picture.name), placeOf(table, picture.load)];
  return rows.flatMap((row) => {
    const [name, load] = [row[names], row[loads]];
    return typeof name === "number" && typeof load === "number" ? [{ name: String(name), load }] : [];
  });
}

/** What was given for a parameter, as a list of numbers; blanks are gaps. */
function numbersGiven({ parameters }: FunctionSpec, given: readonly unknown[], wanted: string): (number | undefined)[] {
  const argument = given[parameters.findIndex(({ name }) => name === wanted)];
  const cells = Array.isArray(argument) ? argument.flat() : [argument];
  return cells.map((cell) => (typeof cell === "number" ? cell : undefined));
}

function dayIn(spec: FunctionSpec, given: readonly unknown[], rows: Rows) {
  const { result } = spec;
  const picture = result.shape === "table" ? result.picture : undefined;
  if (result.shape !== "table" || picture?.shows !== "day") return undefined;
  const [charge, pan, start, end, note] = [picture.charge, picture.pan, picture.start, picture.end, picture.note].map(
    (name) => placeOf(result, name),
  ) as [number, number, number, number, number];
  const firings = ownRows(result, rows).flatMap((row): DayFiring[] => {
    const [which, where, from, to] = [row[charge], row[pan], row[start], row[end]];
    return typeof which === "number" && typeof where === "number" && typeof from === "number" && typeof to === "number"
      ? [{ charge: which, pan: where, start: from, end: to, overruns: row[note] !== "" }]
      : [];
  });
  if (firings.length === 0) return undefined;
  const [from] = numbersGiven(spec, given, picture.breakStart);
  const [to] = numbersGiven(spec, given, picture.breakEnd);
  return { firings, pauses: from === undefined || to === undefined ? [] : pausesIn(firings, from, to) };
}

/** The daily breaks that lie within the firings, on each day that they reach into. */
function pausesIn(firings: readonly DayFiring[], from: number, to: number): Pause[] {
  if (from === to) return [];
  const first = Math.min(...firings.map(({ start }) => start));
  const last = Math.max(...firings.map(({ end }) => end));
  const length = (to - from + 1) % 1;
  const pauses: Pause[] = [];
  for (let day = Math.floor(first) - 1; day <= Math.floor(last); day += 1) {
    const pause = { from: day + from, to: day + from + length };
    if (pause.to > first && pause.from < last) pauses.push(pause);
  }
  return pauses;
}

function dryingIn(spec: FunctionSpec, given: readonly unknown[], rows: Rows): DryingCurve | undefined {
  const { result } = spec;
  const picture = result.shape === "row" ? result.picture : undefined;
  if (result.shape !== "row" || picture?.shows !== "drying") return undefined;
  const times = numbersGiven(spec, given, picture.times);
  const weights = numbersGiven(spec, given, picture.weights);
  const readings = times.flatMap((time, row) => {
    const weight = weights[row];
    return time === undefined || weight === undefined ? [] : [{ time, weight }];
  });
  const [target] = numbersGiven(spec, given, picture.target);
  if (readings.length === 0 || target === undefined) return undefined;
  const [early, likely, late] = [picture.early, picture.likely, picture.late].map((wanted) => {
    const moment = rows[0]?.[result.columns.findIndex(({ name }) => name === wanted)];
    return typeof moment === "number" ? moment : undefined;
  });
  return { readings, target, early, likely, late };
}

function fillsIn(spec: FunctionSpec, given: readonly unknown[]): Fills | undefined {
  const picture = spec.result.shape === "row" ? spec.result.picture : undefined;
  if (picture?.shows !== "fills") return undefined;
  const weights = numbersGiven(spec, given, picture.weights).filter((weight) => weight !== undefined);
  const [nominal] = numbersGiven(spec, given, picture.nominal);
  const [tolerance] = numbersGiven(spec, given, picture.tolerance);
  return weights.length === 0 || nominal === undefined || tolerance === undefined
    ? undefined
    : { weights, nominal, tolerance };
}

/** The lots of a season by their number and group, flagged where there are enough of them to compare. */
function lotsIn(
  { result, parameters }: FunctionSpec,
  given: readonly unknown[],
): { lots: LotOutturn[]; areCompared: boolean } | undefined {
  const picture = result.shape === "table" ? result.picture : undefined;
  if (picture?.shows !== "lots") return undefined;
  const [groups, fresh, finished] = [picture.groups, picture.fresh, picture.finished].map(
    (wanted) => given[parameters.findIndex(({ name }) => name === wanted)],
  );
  const flagged = bind(lotFlags)(fresh, finished, null, false);
  const areCompared = flagged[0]?.length === 3;
  const rows = areCompared ? flagged : bind(outturn)(fresh, finished);
  const lots = rows.flatMap(([share, , flag], row) => {
    const group = Array.isArray(groups) ? groups[row]?.[0] : groups;
    return typeof share === "number"
      ? [{ name: `${row + 1} ${group ?? ""}`.trim(), outturn: share, flag: (flag ?? "") as LotFlagWord }]
      : [];
  });
  return { lots, areCompared };
}
