/** What the phone page says. The first language stands in for others, whose words are fetched when they are spoken. Written by npm run generate. */
import { english } from "../en/messages";
import { englishPhone } from "../en/phone";
import type { Language } from "../languages";
import { type PhoneSpeech, phoneSpeech } from "../phone-speech";

/** What is there from the beginning. */
export const firstPhone: PhoneSpeech = { messages: english, phone: englishPhone };

export const phoneIn: Readonly<Record<Language, () => Promise<PhoneSpeech>>> = {
  en: async () => firstPhone,
  zh: () =>
    phoneSpeech(
      import("../zh/pane-words").then(({ chinesePaneWords }) => chinesePaneWords),
      import("../zh/phone").then(({ chinesePhone }) => chinesePhone),
    ),
};
