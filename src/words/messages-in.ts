/** What the pane says, by language. */
import { english } from "./en/messages";
import type { Language } from "./languages";
import type { Messages } from "./messages";
import { chinese } from "./zh/messages";

export const messagesIn: Readonly<Record<Language, Messages>> = { en: english, zh: chinese };
