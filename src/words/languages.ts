/**
 * THE list of languages. A further one is a folder with the same words and a line here; `npm run generate` then writes what
 * names every language (in-every-language, and where the workbook page has its samples), and `npm run samples` those.
 */
interface LanguageOfWords {
  /** As those who speak it call it. */
  readonly name: string;
  /** As a developer calls it. */
  readonly inEnglish: string;
  /** As the attribute `lang` names it. */
  readonly tag: string;
  /** As a browser names it that speaks it. */
  readonly locale: string;
}

/** By the beginning of the name that a host gives its language: `zh-CN` is `zh`. The first stands in for any other. */
export const languages = {
  en: { name: "English", inEnglish: "English", tag: "en", locale: "en-GB" },
  zh: { name: "中文", inEnglish: "Chinese", tag: "zh-Hans", locale: "zh-CN" },
} as const satisfies Readonly<Record<string, LanguageOfWords>>;

export type Language = keyof typeof languages;

export const languageIds = Object.keys(languages) as [Language, ...Language[]];

/** What is spoken until someone says otherwise: the language of the host, `zh-CN`, where there are words in it. */
export const languageOf = (locale: string): Language =>
  languageIds.find((id) => locale.toLowerCase().split(/[-_]/)[0] === id) ?? languageIds[0];
