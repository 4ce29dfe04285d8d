import { barX, type PlotOptions, ruleX, stackX, text } from "@observablehq/plot";
import { useCallback } from "react";
import { useMessages } from "../use-messages";
import { frame, placesScale, shownTick, shownWeight } from "./drawing-parts";
import { PlotFigure } from "./plot-figure";

export interface LotStage {
  readonly name: string;
  readonly weight: number;
  /** Wet basis. */
  readonly moisture: number;
}

interface Part {
  readonly place: number;
  readonly part: "dry" | "water";
  readonly value: number;
}

interface LotPictureProps {
  readonly stages: readonly LotStage[];
  readonly unit: string;
  /** What the rows of the table are, where they are no stages. */
  readonly rowName?: string | undefined;
}

/** A lot as bars of dry matter and water, from stage to stage. */
export function LotPicture({ stages, unit, rowName }: LotPictureProps) {
  const { picture, joined } = useMessages();
  const drawn = useCallback((width: number, hatch: string) => lotDrawing(stages, width, hatch, unit), [stages, unit]);
  if (stages.length === 0) return null;
  const bars = stages.map(({ name, weight, moisture }) =>
    picture.bar(name, shownWeight(weight, unit), shownWeight(weight * (1 - moisture), unit)),
  );
  return (
    <PlotFigure
      title={picture.lotTitle}
      alternative={picture.lot(joined.parts(bars))}
      drawn={drawn}
      legend={
        <ul className="legend">
          <li className="first">{picture.dry}</li>
          <li className="second">{picture.water}</li>
        </ul>
      }
      headings={[rowName ?? picture.stage, picture.weight, picture.dry, picture.water]}
      rows={stages.map(({ name, weight, moisture }) => [
        name,
        shownWeight(weight, unit),
        shownWeight(weight * (1 - moisture), unit),
        shownWeight(weight * moisture, unit),
      ])}
    />
  );
}

/** Parts narrower than this share of the widest bar hold no number. */
const widthOfNumber = 0.14;

function lotDrawing(stages: readonly LotStage[], width: number, hatch: string, unit: string): PlotOptions {
  const names = stages.map(({ name }) => name);
  const widest = Math.max(...stages.map(({ weight }) => weight));
  const parts = stages.flatMap(({ weight, moisture }, place): Part[] => [
    { place, part: "dry", value: weight * (1 - moisture) },
    { place, part: "water", value: weight * moisture },
  ]);
  const fill = ({ part }: Part): string => (part === "dry" ? "var(--picture-first)" : hatch);
  return {
    ...frame(names, width),
    x: { label: unit === "" ? null : unit, ticks: 4, nice: true, tickFormat: shownTick },
    y: placesScale(names),
    color: { type: "identity" },
    marks: [
      barX(parts, { x: "value", y: "place", fill, stroke: "var(--picture-line)", insetTop: 2, insetBottom: 2 }),
      text(
        parts.filter(({ value }) => value > widest * widthOfNumber),
        stackX({
          x: "value",
          y: "place",
          text: ({ value }: Part) => shownWeight(value, ""),
          fill: "var(--picture-text)",
          stroke: "var(--picture-halo)",
          strokeWidth: 4,
        }),
      ),
      ruleX([0]),
    ],
  };
}
