/** The workbook page around its grid; what the pane says is larger, and fetched with the pane. Written by npm run generate. */
import { englishPage } from "../en/page";
import type { Language } from "../languages";
import type { PageWords } from "../page";
import { chinesePage } from "../zh/page";

export const pageWordsIn: Readonly<Record<Language, PageWords>> = {
  en: englishPage,
  zh: chinesePage,
};
