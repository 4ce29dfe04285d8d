import { useRef, useState } from "react";
import type { Language } from "../words/languages";

/** A language with what is said in it. */
export interface Spoken<Words> {
  readonly language: Language;
  readonly words: Words;
  /** The language that was wanted, where its words could not be fetched. */
  readonly missing?: Language;
}

/** Fetches the words of each language. */
type WordsIn<Words> = Readonly<Record<Language, () => Promise<Words>>>;

/** The wanted language; what is there from the beginning where its words cannot be fetched. */
export async function firstSpoken<Words>(
  wanted: Language,
  wordsIn: WordsIn<Words>,
  there: Spoken<Words>,
): Promise<Spoken<Words>> {
  try {
    return { language: wanted, words: await wordsIn[wanted]() };
  } catch {
    return { ...there, missing: wanted };
  }
}

/** What is spoken, and how another language is asked for; `heard` hears of one once its words are there. */
export function useSpoken<Words>(first: Spoken<Words>, wordsIn: WordsIn<Words>, heard: (language: Language) => void) {
  const [spoken, speak] = useState(first);
  const asked = useRef<Language>();
  const ask = async (wanted: Language): Promise<void> => {
    asked.current = wanted;
    speak(({ language, words }) => ({ language, words }));
    const fetched = await wordsIn[wanted]().catch(() => undefined);
    // The last one asked for counts, whichever comes last.
    if (asked.current !== wanted) return;
    if (fetched === undefined) return speak((before) => ({ ...before, missing: wanted }));
    speak({ language: wanted, words: fetched });
    heard(wanted);
  };
  return { ...spoken, ask };
}
