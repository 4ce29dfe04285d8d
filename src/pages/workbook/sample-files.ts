/** Where the workbook page finds its samples. Written by npm run generate. */
import type { Language } from "../../words/languages";
import type { SampleKey } from "../../words/page";

export const sampleFiles: Readonly<Record<SampleKey, Readonly<Record<Language, URL>>>> = {
  "one-lot": {
    en: new URL("../../../sample-workbooks/one-lot.xlsx", import.meta.url),
    zh: new URL("../../../sample-workbooks/zh/one-lot.xlsx", import.meta.url),
  },
  season: {
    en: new URL("../../../sample-workbooks/season.xlsx", import.meta.url),
    zh: new URL("../../../sample-workbooks/zh/season.xlsx", import.meta.url),
  },
};
