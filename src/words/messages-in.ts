/** What the pane says, by language. English stands in for others; their words are fetched when they are spoken. */
import { english } from "./en/messages";
import type { Language } from "./languages";
import type { Messages } from "./messages";

/** What is there from the beginning. */
export const firstMessages: Messages = english;

export const messagesIn: Readonly<Record<Language, () => Promise<Messages>>> = {
  en: async () => english,
  zh: () => import("./zh/messages").then(({ chinese }) => chinese),
};
