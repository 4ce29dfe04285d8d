import { barX, type PlotOptions, ruleX, text } from "@observablehq/plot";
import { useCallback } from "react";
import { useMessages } from "../use-messages";
import { frame, placesScale, shownTick, shownWeight } from "./drawing-parts";
import { PlotFigure } from "./plot-figure";

export interface Charge {
  readonly name: string;
  readonly load: number;
}

interface ChargesPictureProps {
  readonly charges: readonly Charge[];
  /** What no charge may pass, where the pan has such a limit. */
  readonly limit?: number | undefined;
  readonly unit: string;
}

/** The charges of a lot against the pan's limit. */
export function ChargesPicture({ charges, limit, unit }: ChargesPictureProps) {
  const { picture } = useMessages();
  const { tooHeavy, limit: limitWord } = picture;
  const drawn = useCallback(
    (width: number) => chargesDrawing({ charges, limit, unit }, width, tooHeavy, limitWord),
    [charges, limit, unit, tooHeavy, limitWord],
  );
  if (charges.length === 0) return null;
  const over = charges.filter(({ load }) => isOver(load, limit)).length;
  const heaviest = shownWeight(Math.max(...charges.map(({ load }) => load)), unit);
  const limitSentence =
    limit === undefined
      ? ""
      : over > 0
        ? picture.overLimit(over, shownWeight(limit, unit))
        : picture.withinLimit(shownWeight(limit, unit));
  return (
    <PlotFigure
      title={picture.chargesTitle}
      alternative={`${picture.charges(charges.length, heaviest)} ${limitSentence}`.trim()}
      drawn={drawn}
      headings={[
        picture.charge,
        picture.load,
        ...(limit === undefined ? [] : [picture.limit]),
        ...(over === 0 ? [] : [picture.flag]),
      ]}
      rows={charges.map(({ name, load }) => [
        name,
        shownWeight(load, unit),
        ...(limit === undefined ? [] : [shownWeight(limit, unit)]),
        ...(over === 0 ? [] : [isOver(load, limit) ? picture.tooHeavy : ""]),
      ])}
    />
  );
}

/** Rounding of doubles is no overload. */
const isOver = (load: number, limit: number | undefined): boolean => limit !== undefined && load > limit * (1 + 1e-9);

function chargesDrawing(
  { charges, limit, unit }: ChargesPictureProps,
  width: number,
  tooHeavy: string,
  limitWord: string,
): PlotOptions {
  const names = charges.map(({ name }) => name);
  const bars = charges.map(({ load }, place) => ({ place, load, over: isOver(load, limit) }));
  type Bar = (typeof bars)[number];
  const sizes = frame(names, width);
  return {
    ...sizes,
    marginTop: 20,
    height: sizes.height + 12,
    x: { label: unit === "" ? null : unit, ticks: 4, nice: true, tickFormat: shownTick },
    y: placesScale(names),
    color: { type: "identity" },
    marks: [
      barX(bars, {
        x: "load",
        y: "place",
        fill: "var(--picture-first)",
        stroke: ({ over }: Bar) => (over ? "var(--picture-alarm)" : "var(--picture-line)"),
        strokeWidth: ({ over }: Bar) => (over ? 3 : 1),
        insetTop: 2,
        insetBottom: 2,
      }),
      text(bars, {
        x: 0,
        y: "place",
        dx: 6,
        textAnchor: "start",
        text: ({ load, over }: Bar) => (over ? `▲ ${shownWeight(load, "")} ${tooHeavy}` : shownWeight(load, "")),
        fill: "var(--picture-text)",
        stroke: "var(--picture-halo)",
        strokeWidth: 4,
      }),
      ruleX([0]),
      ...(limit === undefined
        ? []
        : [
            ruleX([limit], { stroke: "var(--picture-alarm)", strokeWidth: 2, strokeDasharray: "5 3" }),
            text([limitWord], {
              x: limit,
              frameAnchor: "top",
              dy: -14,
              textAnchor: "end",
              fill: "var(--picture-alarm)",
            }),
          ]),
    ],
  };
}
