/** The charts of a file, as far as our model holds them: other kinds, and what else a chart may have, are passed over. */

import type { Area, Chart, ChartAxis, ChartSeries } from "../../workbook/workbook";
import type { PackageParts } from "../container/package-parts";
import { elementAt, elementsNamed, type XmlElement } from "../container/xml-tree";

/** The charts on the sheet that a part holds. */
export function readCharts(parts: PackageParts, sheetPath: string): Chart[] {
  return parts.relations(sheetPath).flatMap(({ kind, target }) => (kind === "drawing" ? chartsIn(parts, target) : []));
}

function chartsIn(parts: PackageParts, drawingPath: string): Chart[] {
  const drawing = parts.tree(drawingPath);
  const targets = new Map(parts.relations(drawingPath).map(({ id, target }) => [id, target]));
  return elementsNamed("twoCellAnchor", drawing).flatMap((anchor) => {
    const [reference] = elementsNamed("chart", anchor);
    const content = parts.tree(targets.get(reference?.attributes.id ?? "") ?? "");
    const chart = content && chartOf(content, anchor);
    return chart ? [chart] : [];
  });
}

/** undefined for a kind that our model does not have. */
function chartOf(content: XmlElement, anchor: XmlElement): Chart | undefined {
  const chart = elementAt(content, "chart");
  const plot = elementAt(chart, "plotArea");
  const dots = elementAt(plot, "scatterChart");
  const columns = elementAt(plot, "barChart");
  const drawn = dots ?? columns;
  if (!drawn || (columns && elementAt(columns, "barDir")?.attributes.val !== "col")) return undefined;
  const axes = (plot?.children ?? []).filter(({ name }) => ["valAx", "catAx", "dateAx"].includes(name));
  const axisAt = (position: string) =>
    axisOf(axes.find((axis) => elementAt(axis, "axPos")?.attributes.val === position));
  const [properties] = elementsNamed("cNvPr", anchor);
  return {
    kind: dots ? "dots" : "columns",
    title: textOf(elementAt(chart, "title")),
    description: properties?.attributes.descr ?? "",
    area: areaUnder(anchor),
    series: elementsNamed("ser", drawn).map(seriesOf),
    across: axisAt("b"),
    up: axisAt("l"),
  };
}

function seriesOf(series: XmlElement): ChartSeries {
  const named = elementAt(series, "tx");
  const color = elementAt(series, "marker") ?? series;
  return {
    name: elementsNamed("v", named)[0]?.text ?? "",
    across: rangeOf(elementAt(series, "xVal") ?? elementAt(series, "cat")),
    up: rangeOf(elementAt(series, "yVal") ?? elementAt(series, "val")),
    color: `#${elementAt(color, "spPr", "solidFill", "srgbClr")?.attributes.val ?? usualColor}`.toLowerCase(),
  };
}

/** Of series whose colour the file leaves to its theme. */
const usualColor = "2e5e4e";

const rangeOf = (values: XmlElement | undefined): string => elementsNamed("f", values)[0]?.text ?? "";

function axisOf(axis: XmlElement | undefined): ChartAxis {
  const format = elementAt(axis, "numFmt")?.attributes;
  const end = (name: string) => elementAt(axis, "scaling", name)?.attributes.val;
  const [least, most] = [end("min"), end("max")];
  return {
    title: textOf(elementAt(axis, "title")),
    ...(format?.formatCode && format.sourceLinked !== "1" && { format: format.formatCode }),
    ...(least !== undefined && { least: Number(least) }),
    ...(most !== undefined && { most: Number(most) }),
  };
}

const textOf = (title: XmlElement | undefined): string =>
  elementsNamed("t", title)
    .map(({ text }) => text)
    .join("");

/** From the cell in which the chart begins to the one in which it ends. */
function areaUnder(anchor: XmlElement): Area {
  const number = (corner: string, part: string): number => Number(elementAt(anchor, corner, part)?.text ?? 0);
  const [row, column] = [number("from", "row"), number("from", "col")];
  const endRow = number("to", "row") + (number("to", "rowOff") > 0 ? 1 : 0);
  const endColumn = number("to", "col") + (number("to", "colOff") > 0 ? 1 : 0);
  return { row, column, rows: Math.max(1, endRow - row), columns: Math.max(1, endColumn - column) };
}
