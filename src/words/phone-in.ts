/** What the phone page says, by language, each fetched when it is spoken. */
import type { Language } from "./languages";
import type { Messages, PaneWords } from "./messages";
import type { PhoneWords } from "./phone";

/** The phone page shows no pages of functions, so that what these say is left out. */
const withoutPages = (words: PaneWords): Messages => ({ ...words, says: (english) => english });

export interface PhoneSpeech {
  readonly messages: Messages;
  readonly phone: PhoneWords;
}

export const phoneIn: Readonly<Record<Language, () => Promise<PhoneSpeech>>> = {
  en: async () => {
    const [{ english }, { englishPhone }] = await Promise.all([import("./en/messages"), import("./en/phone")]);
    return { messages: english, phone: englishPhone };
  },
  zh: async () => {
    const [{ chinesePaneWords }, { chinesePhone }] = await Promise.all([
      import("./zh/pane-words"),
      import("./zh/phone"),
    ]);
    return { messages: withoutPages(chinesePaneWords), phone: chinesePhone };
  },
};
