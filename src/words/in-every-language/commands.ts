/** What the commands say. Written by npm run generate. */
import type { CommandWords } from "../commands";
import { englishCommands } from "../en/commands";
import type { Language } from "../languages";
import { chineseCommands } from "../zh/commands";

export const commandWordsIn: Readonly<Record<Language, CommandWords>> = {
  en: englishCommands,
  zh: chineseCommands,
};
