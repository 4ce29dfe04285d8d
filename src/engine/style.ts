import { BorderStyleTypes, HorizontalAlign, type IStyleData, WrapStrategy } from "@univerjs/core";
import type { Style } from "../workbook/workbook";

const line = { s: BorderStyleTypes.THIN, cl: { rgb: "#7f7f7f" } };

const alignments = {
  left: HorizontalAlign.LEFT,
  center: HorizontalAlign.CENTER,
  right: HorizontalAlign.RIGHT,
} as const;

/** A style as the engine writes it. */
export function engineStyle(style: Style): IStyleData {
  const data: IStyleData = {};
  if (style.format !== undefined) data.n = { pattern: style.format };
  if (style.bold !== undefined) data.bl = style.bold ? 1 : 0;
  if (style.italic !== undefined) data.it = style.italic ? 1 : 0;
  if (style.size !== undefined) data.fs = style.size;
  if (style.color !== undefined) data.cl = { rgb: style.color };
  if (style.fill !== undefined) data.bg = { rgb: style.fill };
  if (style.align !== undefined) data.ht = alignments[style.align];
  if (style.wrap !== undefined) data.tb = style.wrap ? WrapStrategy.WRAP : WrapStrategy.OVERFLOW;
  if (style.border === "thin") data.bd = { t: line, r: line, b: line, l: line };
  if (style.border === "bottom") data.bd = { b: line };
  return data;
}

/** What our model keeps of an engine's style; undefined when that is nothing. */
export function modelStyle(data: IStyleData): Style | undefined {
  const style: { -readonly [Key in keyof Style]: Style[Key] } = {};
  if (data.n?.pattern && data.n.pattern !== "General") style.format = data.n.pattern;
  if (isFlag(data.bl)) style.bold = data.bl === 1;
  if (isFlag(data.it)) style.italic = data.it === 1;
  if (data.fs) style.size = data.fs;
  if (data.cl?.rgb) style.color = data.cl.rgb;
  if (data.bg?.rgb) style.fill = data.bg.rgb;
  const align = (["left", "center", "right"] as const).find((name) => alignments[name] === data.ht);
  if (align !== undefined) style.align = align;
  if (data.tb) style.wrap = data.tb === WrapStrategy.WRAP;
  if (data.bd?.b) style.border = data.bd.t ? "thin" : "bottom";
  return Object.keys(style).length > 0 ? style : undefined;
}

const isFlag = (value: unknown): boolean => value === 0 || value === 1;
