import { dot, line, type PlotOptions, rect, ruleX, ruleY, text } from "@observablehq/plot";
import { useCallback } from "react";
import { useMessages } from "../use-messages";
import { shownClock, shownTick, shownWeight } from "./drawing-parts";
import { PlotFigure } from "./plot-figure";

export interface DryingCurve {
  readonly readings: readonly { readonly time: number; readonly weight: number }[];
  readonly target: number;
  /** When the target comes; undefined where there is no answer yet. */
  readonly early: number | undefined;
  readonly likely: number | undefined;
  readonly late: number | undefined;
}

interface DryingPictureProps extends DryingCurve {
  readonly unit: string;
}

/** The weighings of a drying, the target, and the range in which it comes. */
export function DryingPicture({ readings, target, early, likely, late, unit }: DryingPictureProps) {
  const { picture, joined } = useMessages();
  const { target: targetWord } = picture;
  const drawn = useCallback(
    (width: number, hatch: string) =>
      dryingDrawing({ readings, target, early, likely, late }, width, hatch, targetWord, unit),
    [readings, target, early, likely, late, targetWord, unit],
  );
  const [first, last] = [readings[0]?.weight ?? 0, readings[readings.length - 1]?.weight ?? 0];
  const range =
    early === undefined || late === undefined ? [] : [picture.dryingRange(shownClock(early), shownClock(late))];
  return (
    <PlotFigure
      title={picture.dryingTitle}
      alternative={joined.sentences([
        picture.drying(
          readings.length,
          `${shownWeight(first, unit)} → ${shownWeight(last, unit)}`,
          shownWeight(target, unit),
        ),
        ...range,
        ...(likely === undefined ? [] : [picture.dryingLikely(shownClock(likely))]),
      ])}
      drawn={drawn}
      headings={[picture.time, picture.weight]}
      rows={[
        ...readings.map(({ time, weight }) => [shownClock(time), shownWeight(weight, unit)]),
        ...[early, likely, late].flatMap((moment) =>
          moment === undefined ? [] : [[shownClock(moment), joined.aside(shownWeight(target, unit), targetWord)]],
        ),
      ]}
    />
  );
}

function dryingDrawing(
  { readings, target, early, likely, late }: DryingCurve,
  width: number,
  hatch: string,
  targetWord: string,
  unit: string,
): PlotOptions {
  const range = early === undefined || late === undefined ? [] : [{ from: early, to: late }];
  return {
    marginLeft: 44,
    marginRight: 14,
    marginTop: 14,
    marginBottom: 32,
    height: 220,
    width,
    x: { label: null, ticks: 4, nice: true, tickFormat: shownClock },
    y: { label: unit === "" ? null : unit, ticks: 4, nice: true, tickFormat: shownTick },
    color: { type: "identity" },
    marks: [
      rect(range, { x1: "from", x2: "to", fill: hatch }),
      ruleY([target], { stroke: "var(--picture-alarm)", strokeWidth: 2, strokeDasharray: "5 3" }),
      text([targetWord], {
        y: target,
        frameAnchor: "left",
        dx: 4,
        dy: -8,
        textAnchor: "start",
        fill: "var(--picture-alarm)",
      }),
      ...(likely === undefined ? [] : [ruleX([likely], { stroke: "var(--picture-line)", strokeWidth: 2 })]),
      line(readings, { x: "time", y: "weight", stroke: "var(--picture-line)" }),
      dot(readings, { x: "time", y: "weight", r: 4, fill: "var(--picture-first)", stroke: "var(--picture-line)" }),
    ],
  };
}
