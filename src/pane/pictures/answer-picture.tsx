import { useMemo } from "react";
import { bind } from "../../cells/bind";
import { lotFlags } from "../../core/season/lot-flags";
import { outturn } from "../../core/yields/outturn";
import { useMessages } from "../messages/messages";
import { type Charge, ChargesPicture } from "./charges-picture";
import { LotPicture, type LotStage } from "./lot-picture";
import { type LotFlagWord, type LotOutturn, OutturnPicture } from "./outturn-picture";

interface AnswerPictureProps {
  /** The function that gave the rows. */
  readonly id: string;
  readonly given: readonly unknown[];
  /** As its cells hold them, without headings. */
  readonly rows: readonly (readonly unknown[])[];
  /** What no charge may pass. */
  readonly limit?: number | undefined;
  readonly unit: string;
}

/** The picture of an answer, for the functions that have one. */
export function AnswerPicture({ id, given, rows, limit, unit }: AnswerPictureProps) {
  const { answerText, columns } = useMessages();
  const stages = useMemo(() => stagesIn(id, rows, answerText), [id, rows, answerText]);
  const charges = useMemo(() => (id === "CHARGEPLAN" ? chargesIn(rows) : []), [id, rows]);
  const lots = useMemo(() => (id === "SEASONTABLE" ? lotsIn(given) : undefined), [id, given]);
  if (stages.length > 0) {
    return <LotPicture stages={stages} unit={unit} rowName={id === "LOSSMEANINGS" ? columns.meaning : undefined} />;
  }
  if (charges.length > 0) return <ChargesPicture charges={charges} limit={limit} unit={unit} />;
  return lots === undefined ? null : <OutturnPicture {...lots} />;
}

/** Where weight and moisture stand in the rows of a function. */
const stageColumns: Readonly<Record<string, readonly [weight: number, moisture: number]>> = {
  DRYINGSTEPS: [1, 2],
  LOSSMEANINGS: [1, 3],
  STAGEBALANCE: [1, 2],
  BALANCEFIT: [2, 4],
};

function stagesIn(id: string, rows: AnswerPictureProps["rows"], word: (text: string) => string): LotStage[] {
  const columns = stageColumns[id];
  if (columns === undefined) return [];
  // The last row of a fit holds its verdict, and sums of squares where weights would stand.
  const own = id === "BALANCEFIT" ? rows.slice(0, -1) : rows;
  return own.flatMap((row) => {
    const [weight, moisture] = [row[columns[0]], row[columns[1]]];
    return typeof weight === "number" && typeof moisture === "number"
      ? [{ name: word(String(row[0])), weight, moisture }]
      : [];
  });
}

const chargesIn = (rows: AnswerPictureProps["rows"]): Charge[] =>
  rows.flatMap(([name, load]) =>
    typeof name === "number" && typeof load === "number" ? [{ name: String(name), load }] : [],
  );

/** The lots of a season by their number and group, flagged where there are enough of them to compare. */
function lotsIn([groups, fresh, finished]: readonly unknown[]): { lots: LotOutturn[]; areCompared: boolean } {
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
