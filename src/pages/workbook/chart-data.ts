/** What a chart of the workbook shows at the moment, as numbers and in words. */
import { numfmt } from "@univerjs/core";
import { areaWithin, partsOf } from "../../workbook/references";
import type { Chart, ChartAxis } from "../../workbook/workbook";
import { axisLimits, type Limits } from "./axis-limits";
import { words } from "./words";

export interface ChartPoint {
  /** A number where dots stand, a name under a column. */
  readonly across: number | string;
  readonly up: number;
}

export interface ChartData {
  readonly kind: Chart["kind"];
  readonly title: string;
  readonly description: string;
  readonly series: readonly { readonly name: string; readonly color: string; readonly points: readonly ChartPoint[] }[];
  readonly across: ChartAxis;
  readonly up: ChartAxis;
  /** undefined over names. */
  readonly acrossLimits: Limits | undefined;
  readonly upLimits: Limits;
}

type Value = number | string | boolean | undefined;
/** What stands in a cell of a sheet, by its name. */
type ReadCell = (sheet: string, row: number, column: number) => Value;

/** Ranges that name no sheet are those of the chart's own. */
export function chartData(chart: Chart, ownSheet: string, read: ReadCell): ChartData {
  const series = chart.series.map(({ name, color, across, up }) => {
    const places = valuesIn(across, ownSheet, read);
    const points = valuesIn(up, ownSheet, read).flatMap((value, index): ChartPoint[] => {
      const place = places[index];
      if (typeof value !== "number") return [];
      if (chart.kind === "columns") return [{ across: place === undefined ? "" : String(place), up: value }];
      return typeof place === "number" ? [{ across: place, up: value }] : [];
    });
    return { name, color, points };
  });
  const points = series.flatMap((each) => each.points);
  const isOverNames = chart.kind === "columns";
  const places = points.flatMap(({ across }) => (typeof across === "number" ? [across] : []));
  return {
    kind: chart.kind,
    title: chart.title,
    description: chart.description,
    series,
    across: chart.across,
    up: chart.up,
    acrossLimits: isOverNames ? undefined : axisLimits(places, chart.across),
    upLimits: axisLimits(
      points.map(({ up }) => up),
      chart.up,
      isOverNames ? 0 : undefined,
    ),
  };
}

/** The cells of a range one after the other; none where it is no range of cells. */
function valuesIn(range: string, ownSheet: string, read: ReadCell): Value[] {
  const { sheet = ownSheet, cells } = partsOf(range);
  const area = areaWithin(cells, { rows: 0, columns: 0 });
  if (!area) return [];
  return Array.from({ length: area.rows * area.columns }, (_, index) =>
    read(sheet, area.row + Math.floor(index / area.columns), area.column + (index % area.columns)),
  );
}

/** A number as the axis writes it. */
export function onAxis({ format }: ChartAxis, value: number): string {
  if (format && format !== "General") return numfmt.format(format, value);
  return String(Number(value.toPrecision(5)));
}

/** So many values are read out one by one; of more, how many they are and how far they reach. */
const mostRead = 24;

/** What the chart says, for those who cannot see it. */
export function chartInWords(data: ChartData): string {
  const title = data.title && `${data.title}.`;
  return [title, data.description, ...data.series.map((series) => seriesInWords(data, series))]
    .filter((sentence) => sentence !== "")
    .join(" ");
}

function seriesInWords(
  { across, up, kind, upLimits }: ChartData,
  { name, points }: ChartData["series"][number],
): string {
  const place = (point: ChartPoint) => (typeof point.across === "number" ? onAxis(across, point.across) : point.across);
  const read = (some: readonly ChartPoint[]) =>
    some.map((point) => `${place(point)} ${onAxis(up, point.up)}`.trim()).join(", ");
  const { values, nothing, points: pointsInWords, beyond } = words().charts;
  const label = name || up.title || values;
  if (points.length === 0) return nothing(label);
  if (points.length <= mostRead) return `${label}: ${read(points)}.`;
  const ups = points.map((point) => point.up).sort((one, other) => one - other);
  const [from, to] = [onAxis(up, ups[0] as number), onAxis(up, ups.at(-1) as number)];
  const wild = points.filter((point) => isBeyond(point.up, upLimits)).slice(0, mostRead);
  const further = wild.length === 0 ? "" : beyond(read(wild));
  return `${pointsInWords(label, kind === "dots" ? "dots" : "columns", points.length, from, to)}${further}.`;
}

export const isBeyond = (value: number, { from, to }: Limits): boolean => value < from || value > to;
