/** The filled workbooks that the page offers. Each one's work is kept by itself, in whatever language it was begun. */
import type { SampleKey } from "../../words/page";
import { sampleFiles } from "./sample-files";
import { language, words } from "./words";

/** In the language that is spoken. */
export const fileOf = (sample: SampleKey): URL => sampleFiles[sample][language()];

/** What its link is called. */
export const titleOf = (sample: SampleKey): string => words().samples[sample];
