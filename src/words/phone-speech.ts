import type { Messages, PaneWords } from "./messages";
import type { PhoneWords } from "./phone";

export interface PhoneSpeech {
  readonly messages: Messages;
  readonly phone: PhoneWords;
}

/** The phone page shows no pages of functions, so that what these say is left out. */
export async function phoneSpeech(pane: Promise<PaneWords>, phone: Promise<PhoneWords>): Promise<PhoneSpeech> {
  const [paneWords, phoneWords] = await Promise.all([pane, phone]);
  return { messages: { ...paneWords, says: (english) => english }, phone: phoneWords };
}
