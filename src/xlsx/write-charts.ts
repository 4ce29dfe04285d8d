import type * as Library from "wasm-xlsxwriter";
import { areaWithin, partsOf } from "../workbook/references";
import { sheetColumns, sheetRows } from "../workbook/sheet-size";
import { pixelsOf } from "../workbook/sizes";
import type { Chart, ChartAxis, ChartSeries, Sheet } from "../workbook/workbook";
import type { SpreadsheetWriter } from "./spreadsheet-writer";

/** A chart of the file's own, which follows its cells. */
export function writeChart(writer: SpreadsheetWriter, target: Library.Worksheet, sheet: Sheet, chart: Chart): void {
  const { Color, ChartFont } = writer;
  const written = new writer.Chart(chart.kind === "dots" ? writer.ChartType.Scatter : writer.ChartType.Column);
  const { width, height } = pixelsOf(sheet, chart.area);
  written.setWidth(width).setHeight(height).setAltText(chart.description);
  written
    .title()
    .setName(chart.title)
    .setFont(new ChartFont().setSize(12).setColor(Color.parse(titleColor)));
  for (const [index, series] of chart.series.entries()) written.pushSeries(seriesOf(writer, chart, series, index));
  setAxis(writer, written.xAxis(), chart.across);
  setAxis(writer, written.yAxis(), chart.up);
  if (chart.series.length > 1) written.legend().setPosition(writer.ChartLegendPosition.Bottom);
  else written.legend().setHidden();
  // Between lots there is nothing: a missing one is no zero.
  written.showEmptyCellsAs(writer.ChartEmptyCells.Gaps);
  target.insertChart(chart.area.row, chart.area.column, written);
}

const titleColor = "#2e5e4e";

function seriesOf(writer: SpreadsheetWriter, chart: Chart, series: ChartSeries, index: number): Library.ChartSeries {
  const { ChartFormat, ChartSolidFill, Color } = writer;
  const filled = () => new ChartFormat().setSolidFill(new ChartSolidFill().setColor(Color.parse(series.color)));
  const written = new writer.ChartSeries()
    .setName(series.name)
    .setCategories(rangeOf(writer, series.across))
    .setValues(rangeOf(writer, series.up));
  if (chart.kind === "columns") {
    const label = new writer.ChartDataLabel().showValue();
    return written.setFormat(filled()).setDataLabel(chart.up.format ? label.setNumFormat(chart.up.format) : label);
  }
  return written.setFormat(new ChartFormat().setNoLine()).setMarker(markerOf(writer, filled(), index));
}

/** The library reads a range from a text as well, but not a sheet's name with an apostrophe in it. */
function rangeOf({ ChartRange }: SpreadsheetWriter, written: string): Library.ChartRange {
  const { sheet, cells } = partsOf(written);
  const area = areaWithin(cells, { rows: sheetRows, columns: sheetColumns });
  if (sheet === undefined || !area) return ChartRange.newFromString(written);
  const { row, column, rows, columns } = area;
  return ChartRange.newFromRange(sheet, row, column, row + rows - 1, column + columns - 1);
}

/** Shapes differ too, for paper without colour. */
function markerOf(writer: SpreadsheetWriter, format: Library.ChartFormat, index: number): Library.ChartMarker {
  const { Circle, Diamond, Triangle, Square } = writer.ChartMarkerType;
  const shapes = [Circle, Diamond, Triangle, Square] as const;
  return new writer.ChartMarker()
    .setType(shapes[index % shapes.length] ?? Circle)
    .setSize(index === 0 ? 5 : 9)
    .setFormat(format.setNoBorder());
}

function setAxis(writer: SpreadsheetWriter, axis: Library.ChartAxis, { title, format, least, most }: ChartAxis): void {
  if (title) axis.setName(title).setNameFont(new writer.ChartFont().unsetBold());
  if (format) axis.setNumFormat(format);
  if (least !== undefined) axis.setMin(least);
  if (most !== undefined) axis.setMax(most);
}
