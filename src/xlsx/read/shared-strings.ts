/** The texts that cells name by their number. */
import type { PackageParts } from "../container/package-parts";
import { readXml } from "../container/xml-events";
import { Refusal } from "../refusal";
import { unescaped } from "./escaped-text";
import { longestText, mostCells } from "./limits";

interface SharedStrings {
  readonly strings: readonly string[];
  /** Whether words in some text look different from the others. */
  readonly hasRichText: boolean;
}

export function sharedStrings(parts: PackageParts, path: string | undefined): SharedStrings {
  const entry = path === undefined ? undefined : parts.archive.entry(path);
  const strings: string[] = [];
  let hasRichText = false;
  if (!entry) return { strings, hasRichText };
  const text = new TextCollector();
  readXml(parts.archive, entry, {
    open(name) {
      if (name === "r") hasRichText = true;
      if (name === "si") text.begin();
      else text.open(name);
    },
    text: (given) => text.take(given),
    close(name) {
      if (name !== "si") return text.close(name);
      if (strings.length === mostCells) throw new Refusal("many texts");
      strings.push(text.end());
    },
  });
  return { strings, hasRichText };
}

/** The text of a cell from its pieces: without how it is spelled out to be read aloud. */
export class TextCollector {
  #text = "";
  #isInText = false;
  #isPhonetic = false;

  begin(): void {
    this.#text = "";
    this.#isInText = false;
    this.#isPhonetic = false;
  }

  open(name: string): void {
    if (name === "rPh") this.#isPhonetic = true;
    else if (name === "t") this.#isInText = !this.#isPhonetic;
  }

  take(text: string): void {
    if (this.#isInText) this.#text += text;
  }

  close(name: string): void {
    if (name === "rPh") this.#isPhonetic = false;
    else if (name === "t") this.#isInText = false;
  }

  end(): string {
    return textOfCell(this.#text);
  }
}

export function textOfCell(written: string): string {
  const text = unescaped(written);
  if (text.length > longestText) {
    throw new Refusal({ kind: "long text", length: text.length, most: longestText });
  }
  return text;
}
