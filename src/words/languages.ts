/** THE list of languages. A further one is a folder with the same words, and a line here. */
import { english } from "./en/messages";
import type { Messages } from "./messages";
import { chinese } from "./zh/messages";

export interface LanguageOfWords {
  /** As those who speak it call it. */
  readonly name: string;
  /** As the attribute `lang` names it. */
  readonly tag: string;
  readonly messages: Messages;
}

/** By the beginning of the name that a host gives its language: `zh-CN` is `zh`. The first stands in for any other. */
export const languages = {
  en: { name: "English", tag: "en", messages: english },
  zh: { name: "中文", tag: "zh-Hans", messages: chinese },
} as const satisfies Readonly<Record<string, LanguageOfWords>>;

export type Language = keyof typeof languages;

export const languageIds = Object.keys(languages) as [Language, ...Language[]];

/** What is spoken until someone says otherwise: the language of the host, `zh-CN`, where there are words in it. */
export const languageOf = (locale: string): Language =>
  languageIds.find((id) => locale.toLowerCase().split(/[-_]/)[0] === id) ?? languageIds[0];
