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
import { LotPicture, type LotStage } from "./lot-picture";
import { type LotFlagWord, type LotOutturn, OutturnPicture } from "./outturn-picture";

interface AnswerPictureProps {
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
