import { dot, type PlotOptions, ruleX, ruleY, text } from "@observablehq/plot";
import { useCallback } from "react";
import { useMessages } from "../use-messages";
import { frame, placesScale, shownShare, shownTick } from "./drawing-parts";
import { PlotFigure } from "./plot-figure";

/** As LOTFLAG flags a lot; "" is as usual. */
export type LotFlagWord = "high" | "low" | "more out than in" | "";

export interface LotOutturn {
  readonly name: string;
  readonly outturn: number;
  readonly flag: LotFlagWord;
}

/** More lots than this do not fit a picture: the latest are drawn, and the table has them all. */
const mostDrawn = 40;

interface OutturnPictureProps {
  readonly lots: readonly LotOutturn[];
  /** Whether there are enough of them for flags. */
  readonly areCompared: boolean;
}

/** The outturn of each lot, with the flagged ones marked. */
export function OutturnPicture({ lots, areCompared }: OutturnPictureProps) {
  const { picture, joined } = useMessages();
  const { flags } = picture;
  const drawn = useCallback((width: number) => outturnDrawing(lots.slice(-mostDrawn), width, flags), [lots, flags]);
  if (lots.length === 0) return null;
  const outturns = lots.map(({ outturn }) => outturn);
  const [lowest, highest] = [Math.min(...outturns), Math.max(...outturns)];
  const flagged = lots.filter(({ flag }) => flag !== "").map(({ name, flag }) => joined.aside(name, flags[flag]));
  const unflagged = areCompared ? picture.noneFlagged : picture.tooFewToFlag;
  return (
    <PlotFigure
      title={picture.outturnTitle}
      alternative={joined.sentences([
        picture.outturn(lots.length, shownShare(lowest), shownShare(highest)),
        flagged.length === 0 ? unflagged : picture.flagged(joined.list(flagged)),
      ])}
      drawn={drawn}
      legend={flagged.length === 0 ? <p className="notes">{unflagged}</p> : undefined}
      headings={[picture.lotName, picture.outturnName, ...(flagged.length === 0 ? [] : [picture.flag])]}
      rows={lots.map(({ name, outturn, flag }) => [
        name,
        shownShare(outturn),
        ...(flagged.length === 0 ? [] : [flags[flag]]),
      ])}
    />
  );
}

const signs: Readonly<Record<LotFlagWord, string>> = { high: "▲", low: "▼", "more out than in": "!", "": "" };

function outturnDrawing(
  lots: readonly LotOutturn[],
  width: number,
  words: Readonly<Record<LotFlagWord, string>>,
): PlotOptions {
  const names = lots.map(({ name }) => name);
  const marks = lots.map(({ outturn, flag }, place) => ({ place, percent: outturn * 100, flag }));
  type Mark = (typeof marks)[number];
  const sorted = marks.map(({ percent }) => percent).sort((one, other) => one - other);
  const highest = sorted.at(-1) as number;
  const isFarRight = ({ percent }: Mark): boolean => percent > highest * 0.6;
  const label = {
    y: "place",
    x: "percent",
    text: ({ flag }: Mark) => `${signs[flag]} ${words[flag]}`,
    fill: "var(--picture-alarm)",
  };
  const flagged = marks.filter(({ flag }) => flag !== "");
  return {
    ...frame(names, width),
    x: { label: "%", ticks: 4, nice: true, tickFormat: shownTick, domain: [0, highest * 1.05] },
    y: placesScale(names),
    color: { type: "identity" },
    marks: [
      ruleY(marks, { y: "place", x1: 0, x2: "percent", stroke: "var(--picture-grid)" }),
      ruleX([sorted[Math.floor(sorted.length / 2)] as number], {
        stroke: "var(--picture-line)",
        strokeDasharray: "2 3",
      }),
      dot(marks, {
        x: "percent",
        y: "place",
        r: ({ flag }: Mark) => (flag === "" ? 4 : 6),
        symbol: ({ flag }: Mark) => (flag === "" ? "circle" : "diamond"),
        fill: ({ flag }: Mark) => (flag === "" ? "var(--picture-first)" : "var(--picture-alarm)"),
        stroke: "var(--picture-line)",
      }),
      text(
        flagged.filter((mark) => !isFarRight(mark)),
        { ...label, dx: 10, textAnchor: "start" },
      ),
      text(flagged.filter(isFarRight), { ...label, dx: -10, textAnchor: "end" }),
      ruleX([0]),
    ],
    r: { type: "identity" },
    symbol: { type: "ordinal", domain: ["circle", "diamond"], range: ["circle", "diamond"] },
  };
}
