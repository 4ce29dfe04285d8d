/**
 * THE list of languages. A further one is a folder with the same words, a line here, and one in each of messages-in.ts,
 * page-in.ts, phone-in.ts and samples-in.ts.
 */
interface LanguageOfWords {
  /** As those who speak it call it. */
  readonly name: string;
  /** As the attribute `lang` names it. */
  readonly tag: string;
}

/** By the beginning of the name that a host gives its language: `zh-CN` is `zh`. The first stands in for any other. */
export const languages = {
  en: { name: "English", tag: "en" },
  zh: { name: "中文", tag: "zh-Hans" },
} as const satisfies Readonly<Record<string, LanguageOfWords>>;

export type Language = keyof typeof languages;

export const languageIds = Object.keys(languages) as [Language, ...Language[]];

/** What is spoken until someone says otherwise: the language of the host, `zh-CN`, where there are words in it. */
export const languageOf = (locale: string): Language =>
  languageIds.find((id) => locale.toLowerCase().split(/[-_]/)[0] === id) ?? languageIds[0];
