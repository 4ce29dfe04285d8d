import type { Language } from "../../words/languages";
import type { PageWords } from "../../words/page";
import { language, words } from "./words";

/** A filled workbook that the page offers. Each one's work is kept by itself, in whatever language it was begun. */
export interface SampleWorkbook {
  /** In the page's address, and the name that its work is kept under: for ever once shipped. */
  readonly key: keyof PageWords["samples"];
  /** Where the page finds the workbook: the build puts it there as ready data (build/bundle-pages.ts). */
  readonly files: Readonly<Record<Language, URL>>;
}

/** The first one opens when the address names none. */
export const sampleWorkbooks: readonly [SampleWorkbook, ...SampleWorkbook[]] = [
  {
    key: "one-lot",
    files: {
      en: new URL("../../../sample-workbooks/one-lot.xlsx", import.meta.url),
      zh: new URL("../../../sample-workbooks/zh/one-lot.xlsx", import.meta.url),
    },
  },
  {
    key: "season",
    files: {
      en: new URL("../../../sample-workbooks/season.xlsx", import.meta.url),
      zh: new URL("../../../sample-workbooks/zh/season.xlsx", import.meta.url),
    },
  },
];

/** In the language that is spoken. */
export const fileOf = ({ files }: SampleWorkbook): URL => files[language()];

/** What its link is called. */
export const titleOf = ({ key }: SampleWorkbook): string => words().samples[key];
