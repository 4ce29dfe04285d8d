/**
 * The tags in the text of a part and where they stand, to change a few characters and leave all others. For parts that
 * were read before, and so are well-formed.
 */
export interface Tag {
  /** Without its prefix. */
  readonly name: string;
  /** Where `<` stands, and the place behind `>`. */
  readonly start: number;
  readonly end: number;
  readonly is: "open" | "close" | "empty";
}

export class TagScanner {
  readonly text: string;
  #at: number;

  constructor(text: string, at = 0) {
    this.text = text;
    this.#at = at;
  }

  /** undefined at the end. */
  next(): Tag | undefined {
    const { text } = this;
    for (;;) {
      const start = text.indexOf("<", this.#at);
      if (start < 0) return undefined;
      const sign = text.charCodeAt(start + 1);
      if (sign === exclamation)
        this.#at = text.startsWith("<!--", start) ? behind(text, "-->", start) : behind(text, "]]>", start);
      else if (sign === question) this.#at = behind(text, "?>", start);
      else return this.#tag(start, sign === slash);
    }
  }

  /** Goes on behind the element that a tag opens. */
  skip(tag: Tag): Tag {
    if (tag.is !== "open") return tag;
    for (let depth = 1; ; ) {
      const next = this.next();
      if (!next) throw new Error("an element has no end");
      if (next.is === "open") depth += 1;
      else if (next.is === "close") depth -= 1;
      if (depth === 0) return next;
    }
  }

  #tag(start: number, isClosing: boolean): Tag {
    const { text } = this;
    const nameStart = isClosing ? start + 2 : start + 1;
    let at = nameStart;
    let localStart = nameStart;
    for (; ; at += 1) {
      const sign = text.charCodeAt(at);
      if (sign === colon) localStart = at + 1;
      else if (sign <= space || sign === greater || sign === slash) break;
    }
    const name = text.slice(localStart, at);
    // A value in quotes may hold the sign that ends a tag.
    for (; text.charCodeAt(at) !== greater; at += 1) {
      const sign = text.charCodeAt(at);
      if (sign === quote || sign === apostrophe) at = text.indexOf(text.charAt(at), at + 1);
    }
    this.#at = at + 1;
    const isEmpty = text.charCodeAt(at - 1) === slash;
    return { name, start, end: at + 1, is: isClosing ? "close" : isEmpty ? "empty" : "open" };
  }
}

const [exclamation, question, slash, colon, greater, space, quote, apostrophe] = [33, 63, 47, 58, 62, 32, 34, 39];

const behind = (text: string, sign: string, from: number): number => text.indexOf(sign, from) + sign.length;

/** An element and where it stands. */
export interface Span {
  readonly name: string;
  readonly start: number;
  readonly end: number;
  /** Where what is inside begins and ends; both `end` for an element that is empty. */
  readonly inside: number;
  readonly insideEnd: number;
}

/** The elements right inside the one that holds everything, or inside another. */
export function childrenOf(text: string, parent?: Span): Span[] {
  const scanner = new TagScanner(text, parent?.inside ?? 0);
  if (!parent) scanner.next();
  const found: Span[] = [];
  if (parent && parent.inside === parent.end) return found;
  for (;;) {
    const tag = scanner.next();
    if (!tag || tag.is === "close") return found;
    const last = scanner.skip(tag);
    found.push({
      name: tag.name,
      start: tag.start,
      end: last.end,
      inside: tag.end,
      insideEnd: tag.is === "empty" ? tag.end : last.start,
    });
  }
}

/** The prefix, with its colon, that the tag at a place has. */
export const prefixAt = (text: string, start: number): string =>
  /^<([^\s:/>]+:)?/.exec(text.slice(start, start + 80))?.[1] ?? "";

interface Attribute {
  /** As it is written, with its prefix. */
  readonly name: string;
  /** With characters in place of references. */
  readonly value: string;
  /** The whole of it with the space before, to be taken out. */
  readonly text: string;
}

/** The attributes of a tag. */
function attributesOf(tag: string): Attribute[] {
  return [...tag.matchAll(/\s+([^\s=/>]+)\s*=\s*("[^"]*"|'[^']*')/g)].map(([text, name = "", value = ""]) => ({
    name,
    value: plain(value.slice(1, -1)),
    text,
  }));
}

export const valueIn = (tag: string, name: string): string | undefined =>
  attributesOf(tag).find((attribute) => attribute.name === name)?.value;

/** The tag with this value for an attribute; without it where there is none. */
export function withAttribute(tag: string, name: string, value: string | undefined): string {
  const there = attributesOf(tag).find((attribute) => attribute.name === name);
  if (there) {
    if (there.value === value) return tag;
    return tag.replace(there.text, () => (value === undefined ? "" : ` ${name}="${inAttribute(value)}"`));
  }
  return value === undefined ? tag : tag.replace(/\s*\/?>$/, (end) => ` ${name}="${inAttribute(value)}"${end.trim()}`);
}

const references: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

export const plain = (text: string): string =>
  text.includes("&")
    ? text.replace(/&(?:#x([0-9A-F]+)|#(\d+)|(\w+));/gi, (all, hex?: string, digits?: string, name?: string) => {
        if (hex) return String.fromCodePoint(Number.parseInt(hex, 16));
        return digits ? String.fromCodePoint(Number(digits)) : (references[name ?? ""] ?? all);
      })
    : text;

export const inText = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");

export const inAttribute = (text: string): string => inText(text).replaceAll('"', "&quot;").replaceAll("\n", "&#10;");

/** What takes the place of what stands from `start` to `end`. */
export interface Replacement {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Replacements must not reach into each other; of two at one place the first given comes first. */
export function replaced(text: string, replacements: readonly Replacement[]): string {
  const inOrder = replacements.map((each, index) => ({ ...each, index }));
  inOrder.sort((one, other) => one.start - other.start || one.end - other.end || one.index - other.index);
  const pieces: string[] = [];
  let at = 0;
  for (const { start, end, text: piece } of inOrder) {
    if (start < at) throw new Error("two changes reach into each other");
    pieces.push(text.slice(at, start), piece);
    at = end;
  }
  pieces.push(text.slice(at));
  return pieces.join("");
}
