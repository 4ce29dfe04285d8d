/** What the pane says. The first language stands in for others, whose words are fetched when they are spoken. Written by npm run generate. */
import { english } from "../en/messages";
import type { Language } from "../languages";
import type { Messages } from "../messages";

/** What is there from the beginning. */
export const firstMessages: Messages = english;

export const messagesIn: Readonly<Record<Language, () => Promise<Messages>>> = {
  en: async () => firstMessages,
  zh: () => import("../zh/messages").then(({ chinese }) => chinese),
};
