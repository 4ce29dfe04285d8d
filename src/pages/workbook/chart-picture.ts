/** Draws a chart of the workbook. Fetched when a sheet with charts is first shown. */
import { axisX, axisY, barY, dot, gridY, type Markish, plot, ruleY, text } from "@observablehq/plot";
import type { Limits } from "./axis-limits";
import { type ChartData, type ChartPoint, isBeyond, onAxis } from "./chart-data";

const symbols = ["circle", "diamond2", "triangle", "square"] as const;
/** More wild values than this get their arrow without the number. */
const mostNumbers = 8;

interface Drawn extends ChartPoint {
  readonly color: string;
  readonly shape: number;
}

/** The picture in these sizes, without its title. */
export function chartPicture(data: ChartData, width: number, height: number): Element {
  const drawn = data.series.flatMap(({ color, points }, shape) =>
    points.map((point): Drawn => ({ ...point, color: ownColor(color), shape })),
  );
  const svg = plot({
    width,
    height,
    marginTop: 14,
    marginRight: 16,
    marginBottom: data.across.title ? 42 : 30,
    marginLeft: 52,
    x: data.acrossLimits
      ? { type: "linear", domain: [data.acrossLimits.from, data.acrossLimits.to] }
      : { type: "band", domain: [...new Set(drawn.map(({ across }) => across))], padding: 0.3 },
    y: { type: "linear", domain: [data.upLimits.from, data.upLimits.to] },
    color: { type: "identity" },
    r: { type: "identity" },
    symbol: { type: "identity" },
    marks: [
      gridY({ ticks: 5, stroke: "var(--chart-grid)", strokeOpacity: 1 }),
      axisY({
        ticks: 5,
        tickSize: 0,
        label: data.up.title || null,
        labelArrow: "none",
        labelAnchor: "center",
        tickFormat: (value: number) => onAxis(data.up, value),
      }),
      axisX({
        tickSize: data.acrossLimits ? 4 : 0,
        label: data.across.title || null,
        labelArrow: "none",
        labelAnchor: "center",
        ...(data.acrossLimits && { ticks: Math.max(2, Math.floor(width / 90)) }),
        tickFormat: (value: number | string) =>
          typeof value === "number" ? onAxis(data.across, value) : shortened(value, width / (drawn.length + 1)),
      }),
      ...(data.acrossLimits ? dots(data, drawn, data.acrossLimits) : columns(data, drawn)),
    ],
  });
  // What the policy of the page forbids; its few rules stand in charts.css.
  for (const style of svg.querySelectorAll("style")) style.remove();
  svg.setAttribute("aria-hidden", "true");
  return svg;
}

function dots(data: ChartData, drawn: readonly Drawn[], across: Limits): Markish[] {
  const isWild = (point: Drawn) => isBeyond(point.up, data.upLimits) || isBeyond(point.across as number, across);
  const usual = drawn.filter((point) => !isWild(point));
  const wild = drawn.filter(isWild);
  const arrow = (point: Drawn) => {
    if (point.up > data.upLimits.to) return "▲";
    if (point.up < data.upLimits.from) return "▼";
    return (point.across as number) > across.to ? "▶" : "◀";
  };
  const number = (point: Drawn) => {
    if (wild.length > mostNumbers) return "";
    return isBeyond(point.up, data.upLimits) ? onAxis(data.up, point.up) : onAxis(data.across, point.across as number);
  };
  const isFarRight = (point: Drawn) => (point.across as number) > across.from + (across.to - across.from) * 0.8;
  const edge = (some: readonly Drawn[], anchor: "start" | "end") =>
    text(some, {
      x: (point: Drawn) => within(point.across as number, across),
      y: (point: Drawn) => within(point.up, data.upLimits),
      text: (point: Drawn) =>
        (anchor === "start" ? `${arrow(point)} ${number(point)}` : `${number(point)} ${arrow(point)}`).trim(),
      fill: "color",
      textAnchor: anchor,
      dx: anchor === "start" ? -5 : 5,
      stroke: "var(--chart-paper)",
      strokeWidth: 3,
      fontWeight: 600,
    });
  return [
    dot(usual, {
      x: "across",
      y: "up",
      r: ({ shape }: Drawn) => (shape === 0 ? 3.2 : 5.5),
      symbol: ({ shape }: Drawn) => symbols[shape % symbols.length],
      fill: "color",
      stroke: "var(--chart-paper)",
      strokeWidth: 0.7,
    }),
    edge(
      wild.filter((point) => !isFarRight(point)),
      "start",
    ),
    edge(wild.filter(isFarRight), "end"),
  ];
}

function columns(data: ChartData, drawn: readonly Drawn[]): Markish[] {
  const { upLimits, up } = data;
  const label = (point: Drawn) => {
    if (point.up > upLimits.to) return `▲ ${onAxis(up, point.up)}`;
    if (point.up < upLimits.from) return `▼ ${onAxis(up, point.up)}`;
    return onAxis(up, point.up);
  };
  const isWild = (point: Drawn) => isBeyond(point.up, upLimits);
  const labels = (some: readonly Drawn[], options: object) =>
    text(some, { x: "across", y: (point: Drawn) => within(point.up, upLimits), text: label, ...options });
  return [
    barY(drawn, {
      x: "across",
      y1: within(0, upLimits),
      y2: (point: Drawn) => within(point.up, upLimits),
      fill: "color",
    }),
    labels(
      drawn.filter((point) => !isWild(point)),
      { dy: -7 },
    ),
    labels(drawn.filter(isWild), { dy: 8, fontWeight: 600, stroke: "var(--chart-paper)", strokeWidth: 3 }),
    ruleY([within(0, upLimits)], { stroke: "var(--chart-quiet)" }),
  ];
}

const within = (value: number, { from, to }: Limits): number => Math.min(to, Math.max(from, value));

/** The colour that the workbook gives, lighter in the dark. */
export const ownColor = (color: string): string => `color-mix(in oklab, ${color} var(--chart-own), var(--chart-lift))`;

function shortened(name: string, room: number): string {
  const letters = [...name];
  const most = Math.max(3, Math.floor(room / 5.5));
  return letters.length > most ? `${letters.slice(0, most - 1).join("")}…` : name;
}
