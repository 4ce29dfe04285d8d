import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import type { Language } from "../../words/languages";
import type { Scene } from "./scenes";

/** What was to be read in each picture when it was taken, and which picture that was. */
export const recordFile = "docs/guide/pictures.json";

export interface Taken {
  readonly sha256: string;
  readonly words: readonly string[];
}

/** The README begins with the English picture of the lot. */
export const pictureFile = ({ name }: Scene, language: Language): string => `docs/guide/${language}-${name}.png`;

export const takenOf = (file: string, words: readonly string[]): Taken => ({ sha256: sumOf(file), words });

export const sumOf = (file: string): string => createHash("sha256").update(readFileSync(file)).digest("hex");
