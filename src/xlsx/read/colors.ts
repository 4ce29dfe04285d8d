/** Colours as files say them: outright, by a number of an old palette, or by their place in the theme, lighter or darker. */
import { childrenAt, elementAt, type XmlElement } from "../container/xml-tree";

/** The order in which cells number the colours of a theme; it is not that of the theme's part (18.8.3). */
const themeOrder = [
  "lt1",
  "dk1",
  "lt2",
  "dk2",
  "accent1",
  "accent2",
  "accent3",
  "accent4",
  "accent5",
  "accent6",
  "hlink",
  "folHlink",
];

export class Colors {
  readonly #theme: readonly (string | undefined)[];
  readonly #palette: readonly string[];

  /** `own`: the element of styles.xml in which a file writes a palette of its own. */
  constructor(theme: XmlElement | undefined, own: XmlElement | undefined) {
    const scheme = elementAt(theme, "themeElements", "clrScheme");
    this.#theme = themeOrder.map((name) => {
      const [color] = childrenAt(scheme, name);
      return color?.attributes.lastClr ?? color?.attributes.val;
    });
    const written = childrenAt(own, "indexedColors").map(({ attributes }) => attributes.rgb?.slice(-6) ?? "000000");
    this.#palette = written.length > 0 ? written : usualPalette;
  }

  /** `#rrggbb`; undefined for what every program chooses by itself: the text's colour, and the paper's. */
  of(color: XmlElement | undefined, what: "text" | "paper"): string | undefined {
    const { rgb, indexed, theme, tint, auto } = color?.attributes ?? {};
    if (auto === "1" || auto === "true") return undefined;
    if (rgb !== undefined) return hexOf(rgb.slice(-6), tint);
    if (indexed !== undefined) return hexOf(this.#palette[Number(indexed)], tint);
    if (theme === undefined) return undefined;
    const usual = what === "text" ? 1 : 0;
    return Number(theme) === usual && !Number(tint) ? undefined : hexOf(this.#theme[Number(theme)], tint);
  }
}

function hexOf(color: string | undefined, tint: string | undefined): string | undefined {
  if (color === undefined || !/^[0-9A-F]{6}$/i.test(color)) return undefined;
  const shift = Number(tint ?? 0);
  return `#${(shift ? tinted(color, shift) : color).toLowerCase()}`;
}

/** Only the lightness moves: down to black at -1, up to white at 1 (18.8.19). */
function tinted(color: string, tint: number): string {
  const [red = 0, green = 0, blue = 0] = [0, 2, 4].map((at) => Number.parseInt(color.slice(at, at + 2), 16) / 255);
  const [most, least] = [Math.max(red, green, blue), Math.min(red, green, blue)];
  const lightness = (most + least) / 2;
  const spread = most - least;
  const saturation = spread === 0 ? 0 : spread / (1 - Math.abs(2 * lightness - 1));
  const moved = tint < 0 ? lightness * (1 + tint) : lightness * (1 - tint) + tint;
  const newSpread = saturation * (1 - Math.abs(2 * moved - 1));
  // Red, green and blue keep their order and their distances in proportion.
  const channel = (value: number) => moved + (spread === 0 ? 0 : ((value - lightness) / spread) * newSpread);
  return [red, green, blue].map((value) => byteOf(channel(value))).join("");
}

const byteOf = (value: number): string =>
  Math.round(Math.min(1, Math.max(0, value)) * 255)
    .toString(16)
    .padStart(2, "0");

/** The palette of old files (18.8.27): eight colours twice, then 48 more. */
const usualPalette: readonly string[] = (
  "000000 FFFFFF FF0000 00FF00 0000FF FFFF00 FF00FF 00FFFF 000000 FFFFFF FF0000 00FF00 0000FF FFFF00 FF00FF 00FFFF " +
  "800000 008000 000080 808000 800080 008080 C0C0C0 808080 9999FF 993366 FFFFCC CCFFFF 660066 FF8080 0066CC CCCCFF " +
  "000080 FF00FF FFFF00 00FFFF 800080 800000 008080 0000FF 00CCFF CCFFFF CCFFCC FFFF99 99CCFF FF99CC CC99FF FFCC99 " +
  "3366FF 33CCCC 99CC00 FFCC00 FF9900 FF6600 666699 969696 003366 339966 003300 333300 993300 993366 333399 333333"
).split(" ");
