import type { PageWords } from "../../words/page";
import { words } from "./words";

/** A filled workbook that the page offers. Each one's work is kept by itself. */
export interface SampleWorkbook {
  /** In the page's address, and the name that its work is kept under: for ever once shipped. */
  readonly key: keyof PageWords["samples"];
  readonly title: string;
  /** Where the page finds the workbook: the build puts it there as ready data (build/bundle-pages.ts). */
  readonly file: URL;
}

/** The first one opens when the address names none. */
export const sampleWorkbooks: readonly [SampleWorkbook, ...SampleWorkbook[]] = [
  {
    key: "one-lot",
    title: "One lot",
    file: new URL("../../../sample-workbooks/one-lot.xlsx", import.meta.url),
  },
  {
    key: "season",
    title: "Season",
    file: new URL("../../../sample-workbooks/season.xlsx", import.meta.url),
  },
];

/** What its link is called. */
export const titleOf = ({ key }: SampleWorkbook): string => words().samples[key];
