/** The looks that cells name by their number, as far as the grid shows them. */

import { type Style, usualFont } from "../../workbook/workbook";
import type { PackageParts } from "../container/package-parts";
import { isTrue } from "../container/xml-events";
import { childrenAt, elementAt, type XmlElement } from "../container/xml-tree";
import { Colors } from "./colors";
import { builtInFormats } from "./number-formats";

/** By the number that a cell has; undefined where the look is plain. Cells of one look share one object. */
export function readStyles(
  parts: PackageParts,
  paths: { readonly styles: string | undefined; readonly theme: string | undefined },
): readonly (Style | undefined)[] {
  const styles = paths.styles === undefined ? undefined : parts.tree(paths.styles);
  const colors = new Colors(
    paths.theme === undefined ? undefined : parts.tree(paths.theme),
    elementAt(styles, "colors"),
  );
  const formats = new Map(builtInFormats);
  for (const { attributes } of childrenAt(styles, "numFmts")) {
    formats.set(Number(attributes.numFmtId), attributes.formatCode ?? "General");
  }
  const fonts = childrenAt(styles, "fonts");
  const usualSize = elementAt(fonts[0], "sz")?.attributes.val;
  const lookOfFont = fonts.map((font) => fontLook(font, colors, usualSize));
  const fills = childrenAt(styles, "fills").map((fill) => fillOf(fill, colors));
  const borders = childrenAt(styles, "borders").map(borderOf);
  return childrenAt(styles, "cellXfs").map((xf) => {
    const number = (name: string) => Number(xf.attributes[name] ?? 0);
    const format = formats.get(number("numFmtId"));
    const fill = fills[number("fillId")];
    const border = borders[number("borderId")];
    const style: Style = {
      ...(format && format !== "General" && { format }),
      ...lookOfFont[number("fontId")],
      ...(fill && { fill }),
      ...alignmentOf(elementAt(xf, "alignment")),
      ...(border && { border }),
    };
    return Object.keys(style).length > 0 ? style : undefined;
  });
}

/** What cells have when nobody chose a size: in our files, in those of other programs, and in this one. */
function fontLook(font: XmlElement, colors: Colors, usualSize: string | undefined): Style {
  const isOn = (name: string) => {
    const element = elementAt(font, name);
    return element !== undefined && isTrue(element.attributes.val ?? "1");
  };
  const size = Number(elementAt(font, "sz")?.attributes.val ?? 0);
  const isUsual = !size || [usualFont.size, 11, Number(usualSize)].includes(size);
  const color = colors.of(elementAt(font, "color"), "text");
  return {
    ...(isOn("b") && { bold: true }),
    ...(isOn("i") && { italic: true }),
    ...(!isUsual && { size }),
    ...(color && { color }),
  };
}

function fillOf(fill: XmlElement, colors: Colors): string | undefined {
  const pattern = elementAt(fill, "patternFill");
  return pattern?.attributes.patternType === "solid" ? colors.of(elementAt(pattern, "fgColor"), "paper") : undefined;
}

/** A line below alone, or all round. */
function borderOf(border: XmlElement): Style["border"] {
  const has = (side: string) => !["none", undefined].includes(elementAt(border, side)?.attributes.style);
  if (!has("bottom")) return undefined;
  return has("top") ? "thin" : "bottom";
}

function alignmentOf(alignment: XmlElement | undefined): Style {
  const { horizontal, wrapText } = alignment?.attributes ?? {};
  const isSide = horizontal === "left" || horizontal === "center" || horizontal === "right";
  return { ...(isSide && { align: horizontal }), ...(isTrue(wrapText) && { wrap: true }) };
}
