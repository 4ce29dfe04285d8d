/** What the phone page says, by language. English stands in for others; their words are fetched when they are spoken. */
import { english } from "./en/messages";
import { englishPhone } from "./en/phone";
import type { Language } from "./languages";
import type { Messages, PaneWords } from "./messages";
import type { PhoneWords } from "./phone";

/** The phone page shows no pages of functions, so that what these say is left out. */
const withoutPages = (words: PaneWords): Messages => ({ ...words, says: (english) => english });

export interface PhoneSpeech {
  readonly messages: Messages;
  readonly phone: PhoneWords;
}

/** What is there from the beginning. */
export const firstPhone: PhoneSpeech = { messages: english, phone: englishPhone };

export const phoneIn: Readonly<Record<Language, () => Promise<PhoneSpeech>>> = {
  en: async () => firstPhone,
  zh: async () => {
    const [{ chinesePaneWords }, { chinesePhone }] = await Promise.all([
      import("./zh/pane-words"),
      import("./zh/phone"),
    ]);
    return { messages: withoutPages(chinesePaneWords), phone: chinesePhone };
  },
};
