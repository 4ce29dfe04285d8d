/** styles.xml with the looks that it does not have yet: put behind the others, so that no number changes. */
import type { Style } from "../../workbook/workbook";
import { builtInFormats } from "../read/number-formats";
import { grown, placed } from "./growing-lists";
import {
  childrenOf,
  inAttribute,
  prefixAt,
  type Replacement,
  replaced,
  type Span,
  TagScanner,
  valueIn,
  withAttribute,
} from "./tag-scanner";

/** The order of the lists in the part, and of what a font says (ECMA-376 part 1, 18.8). */
const listOrder = [
  "numFmts",
  "fonts",
  "fills",
  "borders",
  "cellStyleXfs",
  "cellXfs",
  "cellStyles",
  "dxfs",
  "tableStyles",
  "colors",
  "extLst",
];
const fontOrder = [
  "b",
  "i",
  "strike",
  "condense",
  "extend",
  "outline",
  "shadow",
  "u",
  "vertAlign",
  "sz",
  "color",
  "name",
  "family",
  "charset",
  "scheme",
];

export const emptyStyles =
  '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><fonts count="1"><font><sz val="11"/><name val="Calibri"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="1"><xf/></cellXfs></styleSheet>';

export class StylesPatch {
  readonly #text: string;
  readonly #prefix: string;
  readonly #lists = new Map<string, ItemList>();
  readonly #readStyle: (number: number) => Style | undefined;
  #highestFormat: number;

  /** `styleOf`: the look with a number, as the reader understands it. */
  constructor(text: string, styleOf: (number: number) => Style | undefined) {
    this.#text = text;
    this.#readStyle = styleOf;
    this.#prefix = prefixAt(text, new TagScanner(text).next()?.start ?? 0);
    for (const list of childrenOf(text)) this.#lists.set(list.name, new ItemList(text, list));
    const ids = this.#list("numFmts").items.map((item) => Number(valueIn(tagOf(item), "numFmtId") ?? 0));
    // The numbers below 164 are for formats that every program knows.
    this.#highestFormat = Math.max(163, ...ids);
  }

  /** The number of the look with which cells of another number come to look as they are to. */
  numberFor(before: number, wanted: Style): number {
    const had = this.#readStyle(before) ?? {};
    const base = this.#list("cellXfs").items[before] ?? `<${this.#prefix}xf/>`;
    let tag = tagOf(base);
    let inside = base.endsWith("/>") ? "" : base.slice(tag.length, base.lastIndexOf("</"));
    const point = (name: string, number: number, applied: string) => {
      tag = withAttribute(withAttribute(tag, name, String(number)), applied, "1");
    };
    if (had.format !== wanted.format) point("numFmtId", this.#format(wanted.format), "applyNumberFormat");
    if (fontDiffers(had, wanted))
      point("fontId", this.#font(Number(valueIn(tag, "fontId") ?? 0), had, wanted), "applyFont");
    if (had.fill !== wanted.fill) point("fillId", this.#fill(wanted.fill), "applyFill");
    if (had.border !== wanted.border) point("borderId", this.#border(wanted.border), "applyBorder");
    if (had.align !== wanted.align || had.wrap !== wanted.wrap) {
      tag = withAttribute(tag, "applyAlignment", "1");
      inside = this.#aligned(inside, wanted);
    }
    return this.#list("cellXfs").numberOf(element(tag, inside, `${this.#prefix}xf`));
  }

  /** undefined where every look was there already. */
  written(): string | undefined {
    const replacements: Replacement[] = [];
    const missing: { name: string; text: string }[] = [];
    for (const [name, list] of this.#lists) {
      const change = list.written(`${this.#prefix}${name}`);
      if (change && "text" in change) missing.push({ name, text: change.text });
      else if (change) replacements.push(...change);
    }
    for (const { name, text } of missing) replacements.push(placed(this.#text, name, text, listOrder));
    return replacements.length > 0 ? replaced(this.#text, replacements) : undefined;
  }

  #list(name: string): ItemList {
    const known = this.#lists.get(name);
    if (known) return known;
    const made = new ItemList(this.#text, undefined);
    this.#lists.set(name, made);
    return made;
  }

  #format(code = "General"): number {
    for (const [number, builtIn] of builtInFormats) if (builtIn === code) return number;
    const list = this.#list("numFmts");
    const known = list.items.find((item) => valueIn(tagOf(item), "formatCode") === code);
    if (known !== undefined) return Number(valueIn(tagOf(known), "numFmtId"));
    this.#highestFormat += 1;
    list.numberOf(`<${this.#prefix}numFmt numFmtId="${this.#highestFormat}" formatCode="${inAttribute(code)}"/>`);
    return this.#highestFormat;
  }

  /** Like the font before, but for what is to differ. */
  #font(before: number, had: Style, wanted: Style): number {
    const list = this.#list("fonts");
    const base = list.items[before] ?? `<${this.#prefix}font/>`;
    const parts = new Map(childrenOf(base).map(({ name, start, end }) => [name, base.slice(start, end)]));
    const set = (name: string, attributes: string | undefined) => {
      if (attributes === undefined) parts.delete(name);
      else parts.set(name, `<${this.#prefix}${name}${attributes}/>`);
    };
    if (had.bold !== wanted.bold) set("b", wanted.bold ? "" : undefined);
    if (had.italic !== wanted.italic) set("i", wanted.italic ? "" : undefined);
    if (had.size !== wanted.size) set("sz", ` val="${wanted.size ?? this.#usualSize()}"`);
    if (had.color !== wanted.color) set("color", wanted.color && ` rgb="${argb(wanted.color)}"`);
    const place = (name: string) => (fontOrder.includes(name) ? fontOrder.indexOf(name) : fontOrder.length);
    const inside = [...parts].sort(([one], [other]) => place(one) - place(other)).map(([, text]) => text);
    return list.numberOf(element(tagOf(base), inside.join(""), `${this.#prefix}font`));
  }

  #usualSize(): string {
    const [first = ""] = this.#list("fonts").items;
    const size = childrenOf(first).find(({ name }) => name === "sz");
    return (size && valueIn(first.slice(size.start, size.end), "val")) ?? "11";
  }

  #fill(color: string | undefined): number {
    if (color === undefined) return 0;
    const x = this.#prefix;
    return this.#list("fills").numberOf(
      `<${x}fill><${x}patternFill patternType="solid"><${x}fgColor rgb="${argb(color)}"/><${x}bgColor indexed="64"/></${x}patternFill></${x}fill>`,
    );
  }

  #border(border: Style["border"]): number {
    if (border === undefined) return 0;
    const x = this.#prefix;
    const side = (name: string, isDrawn: boolean) =>
      isDrawn ? `<${x}${name} style="thin"><${x}color auto="1"/></${x}${name}>` : `<${x}${name}/>`;
    const isRound = border === "thin";
    const sides = `${side("left", isRound)}${side("right", isRound)}${side("top", isRound)}${side("bottom", true)}`;
    return this.#list("borders").numberOf(`<${x}border>${sides}<${x}diagonal/></${x}border>`);
  }

  #aligned(inside: string, { align, wrap }: Style): string {
    const span = childrenOf(`<x>${inside}</x>`).find(({ name }) => name === "alignment");
    const before = span ? inside.slice(span.start - 3, span.end - 3) : `<${this.#prefix}alignment/>`;
    const after = withAttribute(withAttribute(before, "horizontal", align), "wrapText", wrap ? "1" : undefined);
    return span ? inside.replace(before, () => after) : `${after}${inside}`;
  }
}

/** The items of a list, and those that are to come behind them. */
class ItemList {
  readonly items: string[];
  readonly #text: string;
  readonly #span: Span | undefined;
  readonly #had: number;
  readonly #numbers = new Map<string, number>();

  constructor(text: string, span: Span | undefined) {
    this.#text = text;
    this.#span = span;
    this.items = span ? childrenOf(text, span).map(({ start, end }) => text.slice(start, end)) : [];
    this.#had = this.items.length;
    this.items.forEach((item, index) => {
      if (!this.#numbers.has(item)) this.#numbers.set(item, index);
    });
  }

  /** The number of an item, which is put behind the others where it is not there. */
  numberOf(item: string): number {
    const known = this.#numbers.get(item);
    if (known !== undefined) return known;
    this.items.push(item);
    this.#numbers.set(item, this.items.length - 1);
    return this.items.length - 1;
  }

  /** The list where it has grown; without a place where the part had none. */
  written(name: string): readonly Replacement[] | { readonly text: string } | undefined {
    const added = this.items.slice(this.#had).join("");
    if (added === "") return undefined;
    const count = this.items.length;
    if (!this.#span) return { text: `<${name} count="${count}">${added}</${name}>` };
    return grown(this.#text, this.#span, added, count, name);
  }
}

const tagOf = (item: string): string => item.slice(0, new TagScanner(item).next()?.end ?? 0);

const element = (tag: string, inside: string, name: string): string => {
  const open = tag.replace(/\s*\/?>$/, "");
  return inside === "" ? `${open}/>` : `${open}>${inside}</${name}>`;
};

const fontDiffers = (one: Style, other: Style): boolean =>
  one.bold !== other.bold || one.italic !== other.italic || one.size !== other.size || one.color !== other.color;

const argb = (color: string): string => `FF${color.slice(1).toUpperCase()}`;
