/** What the sample workbooks say. Written by npm run generate. */
import { englishSamples } from "../en/samples/samples";
import type { Language } from "../languages";
import type { SampleWords } from "../samples";
import { chineseSamples } from "../zh/samples/samples";

export const sampleWordsIn: Readonly<Record<Language, SampleWords>> = {
  en: englishSamples,
  zh: chineseSamples,
};
