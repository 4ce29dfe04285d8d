import { barX, type PlotOptions, rect, text } from "@observablehq/plot";
import { useCallback } from "react";
import { useMessages } from "../use-messages";
import { frame, placesScale, shownClock } from "./drawing-parts";
import { PlotFigure } from "./plot-figure";

export interface DayFiring {
  readonly charge: number;
  readonly pan: number;
  readonly start: number;
  readonly end: number;
  readonly overruns: boolean;
}

/** In days, on the clock of the firings. */
export interface Pause {
  readonly from: number;
  readonly to: number;
}

interface DayPictureProps {
  readonly firings: readonly DayFiring[];
  readonly pauses: readonly Pause[];
}

/** The day as a bar for each firing, a line for each pan, with the breaks and what overruns. */
export function DayPicture({ firings, pauses }: DayPictureProps) {
  const { picture, joined } = useMessages();
  const { pan: panWord } = picture;
  const pans = [...new Set(firings.map(({ pan }) => pan))].sort((one, other) => one - other);
  const drawn = useCallback(
    (width: number, hatch: string) => dayDrawing(firings, pauses, width, hatch, panWord),
    [firings, pauses, panWord],
  );
  const overruns = firings.filter((firing) => firing.overruns).length;
  const first = Math.min(...firings.map(({ start }) => start));
  const last = Math.max(...firings.map(({ end }) => end));
  return (
    <PlotFigure
      title={picture.dayTitle}
      alternative={joined.sentences([
        picture.day(firings.length, pans.length, `${shownClock(first)}–${shownClock(last)}`),
        picture.dayOverruns(overruns),
        ...pauses.map(({ from, to }) => picture.dayBreak(shownClock(from), shownClock(to))),
      ])}
      drawn={drawn}
      headings={[picture.charge, picture.pan, picture.start, picture.end, picture.flag]}
      rows={firings.map(({ charge, pan, start, end, overruns }) => [
        String(charge),
        String(pan),
        shownClock(start),
        shownClock(end),
        overruns ? picture.overruns : "",
      ])}
    />
  );
}

function dayDrawing(
  firings: readonly DayFiring[],
  pauses: readonly Pause[],
  width: number,
  hatch: string,
  panWord: string,
): PlotOptions {
  const pans = [...new Set(firings.map(({ pan }) => pan))].sort((one, other) => one - other);
  const names = pans.map((pan) => `${panWord} ${pan}`);
  const bars = firings.map((firing) => ({ ...firing, place: pans.indexOf(firing.pan) }));
  type Bar = (typeof bars)[number];
  const sizes = frame(names, width);
  return {
    ...sizes,
    height: sizes.height + pans.length * 10,
    x: { label: null, ticks: 4, tickFormat: shownClock },
    y: placesScale(names),
    color: { type: "identity" },
    marks: [
      rect(pauses, { x1: "from", x2: "to", fill: hatch }),
      barX(bars, {
        x1: "start",
        x2: "end",
        y: "place",
        fill: "var(--picture-first)",
        stroke: ({ overruns }: Bar) => (overruns ? "var(--picture-alarm)" : "var(--picture-line)"),
        strokeWidth: ({ overruns }: Bar) => (overruns ? 3 : 1),
        insetTop: 3,
        insetBottom: 3,
      }),
      text(bars, {
        x: ({ start, end }: Bar) => (start + end) / 2,
        y: "place",
        text: ({ charge, overruns }: Bar) => (overruns ? `▲${charge}` : String(charge)),
        fill: "var(--picture-text)",
        stroke: "var(--picture-halo)",
        strokeWidth: 4,
      }),
    ],
  };
}
