import { createContext, useContext } from "react";
import type { Lot } from "../../lots/lot";
import type { Language } from "../../words/languages";
import type { PhoneSpeech } from "../../words/phone-speech";
import type { Settings } from "./settings";
import type { Lots } from "./use-lots";

/** What every part of the page has to do with. */
export interface PhoneState {
  readonly speech: PhoneSpeech;
  readonly language: Language;
  /** As dates and times are written. */
  readonly tag: string;
  readonly settings: Settings;
  readonly choose: (changed: Partial<Settings>) => void;
  /** Speaks another language, once its words are there. */
  readonly speak: (language: Language) => void;
  readonly lots: Lots;
  /** The one that is worked on; undefined until something is typed. */
  readonly lot: Lot | undefined;
  /** Changes the lot that is worked on, which it begins where there is none. */
  readonly changeLot: (change: (lot: Lot, now: number) => Lot) => void;
}

export const PhoneContext = createContext<PhoneState | undefined>(undefined);

export function usePhone(): PhoneState {
  const phone = useContext(PhoneContext);
  if (phone === undefined) throw new Error("this is a part of the phone page alone");
  return phone;
}
