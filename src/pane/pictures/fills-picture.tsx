import { dot, type PlotOptions, ruleY, text } from "@observablehq/plot";
import { useCallback } from "react";
import { useMessages } from "../use-messages";
import { shownTick, shownWeight } from "./drawing-parts";
import { PlotFigure } from "./plot-figure";

export interface Fills {
  readonly weights: readonly number[];
  readonly nominal: number;
  readonly tolerance: number;
}

interface FillsPictureProps extends Fills {
  readonly unit: string;
}

/** Rounding of doubles makes no package short. */
const isShort = (weight: number, { nominal, tolerance }: Fills): boolean =>
  nominal - weight > tolerance + 1e-9 * nominal;

/** The packages that were weighed, against what they state and what one may be short. */
export function FillsPicture({ weights, nominal, tolerance, unit }: FillsPictureProps) {
  const { picture, joined } = useMessages();
  const { nominal: nominalWord } = picture;
  const drawn = useCallback(
    (width: number) => fillsDrawing({ weights, nominal, tolerance }, width, nominalWord, unit),
    [weights, nominal, tolerance, nominalWord, unit],
  );
  const short = weights.filter((weight) => isShort(weight, { weights, nominal, tolerance })).length;
  const [lightest, heaviest] = [Math.min(...weights), Math.max(...weights)];
  return (
    <PlotFigure
      title={picture.fillsTitle}
      alternative={joined.sentences([
        picture.fills(
          weights.length,
          `${shownWeight(lightest, unit)}–${shownWeight(heaviest, unit)}`,
          shownWeight(nominal, unit),
        ),
        ...(short === 0 ? [] : [picture.fillsShort(short, shownWeight(nominal - tolerance, unit))]),
      ])}
      drawn={drawn}
      headings={[picture.package, picture.weight, picture.flag]}
      rows={weights.map((weight, index) => [
        String(index + 1),
        shownWeight(weight, unit),
        isShort(weight, { weights, nominal, tolerance }) ? picture.short : "",
      ])}
    />
  );
}

function fillsDrawing(fills: Fills, width: number, nominalWord: string, unit: string): PlotOptions {
  const { weights, nominal } = fills;
  const dots = weights.map((weight, index) => ({ number: index + 1, weight, short: isShort(weight, fills) }));
  type Dot = (typeof dots)[number];
  return {
    marginLeft: 44,
    marginRight: 14,
    marginTop: 14,
    marginBottom: 32,
    height: 200,
    width,
    x: { label: null, ticks: Math.min(6, weights.length), tickFormat: shownTick, domain: [0.5, weights.length + 0.5] },
    y: { label: unit === "" ? null : unit, ticks: 4, nice: true, tickFormat: shownTick },
    color: { type: "identity" },
    marks: [
      ruleY([nominal], { stroke: "var(--picture-line)", strokeWidth: 2 }),
      text([nominalWord], { y: nominal, frameAnchor: "right", dy: -8, textAnchor: "end", fill: "var(--picture-text)" }),
      dot(dots, {
        x: "number",
        y: "weight",
        r: 4,
        symbol: ({ short }: Dot) => (short ? "triangle" : "circle"),
        fill: "var(--picture-first)",
        stroke: ({ short }: Dot) => (short ? "var(--picture-alarm)" : "var(--picture-line)"),
      }),
    ],
  };
}
