import { createContext, useContext } from "react";
import { chinese } from "./chinese";
import { english, type Messages } from "./english";

export type { Messages } from "./english";

/** Something to say in the language that the pane speaks when it is read. */
export type Says = (messages: Messages) => string;

export const languages = ["en", "zh"] as const;
export type Language = (typeof languages)[number];

export const messagesIn: Readonly<Record<Language, Messages>> = { en: english, zh: chinese };

/** What the pane speaks until someone says otherwise: the language of the host, `zh-CN`, where it has messages in it. */
export const languageOf = (locale: string): Language => (/^zh\b/i.test(locale) ? "zh" : "en");

/** As the attribute `lang` names it. */
export const languageTag: Readonly<Record<Language, string>> = { en: "en", zh: "zh-Hans" };

export const MessagesContext = createContext<Messages>(english);

/** The words of the pane in the language that it speaks now. */
export const useMessages = (): Messages => useContext(MessagesContext);
