import { leftFormulas } from "../engine/left-formulas";
import { openInNode } from "../engine/node-workbook";
import { callsByName } from "../named-formulas/calls";
import { sampleWordsIn } from "../words/in-every-language/samples";
import { languageIds } from "../words/languages";
import type { SampleWords } from "../words/samples";
import type { Workbook } from "../workbook/workbook";
import { withCalledNames, withNamedFunctions } from "../xlsx/named-functions";
import { writeWorkbook } from "../xlsx/write-workbook";
import { dayAndPacking } from "./day-and-packing";
import { excelCheck } from "./excel-check";
import { moistureBench } from "./moisture-bench";
import { oneLot } from "./one-lot";
import { seasonBook } from "./season";

/** By their names in the folder of a language. */
export const inEveryLanguage: Readonly<Record<string, (words: SampleWords) => Workbook>> = {
  "one-lot.xlsx": oneLot,
  "season.xlsx": seasonBook,
  "day-and-packing.xlsx": dayAndPacking,
  "moisture-bench.xlsx": moistureBench,
};

/** A book for whoever tests in Excel speaks English, as its functions do. */
const inEnglish: Readonly<Record<string, () => Workbook>> = {
  "excel-check.xlsx": excelCheck,
};

/** Those of the first language stand in the folder itself, those of every other in a folder of its own. */
const inFolders = languageIds.flatMap((language, index) =>
  Object.entries(inEveryLanguage).map(([name, build]): [string, () => Workbook] => [
    index === 0 ? name : `${language}/${name}`,
    () => build(sampleWordsIn[language]),
  ]),
);

/** Every file of sample-workbooks/, with what builds it. */
export const sampleBooks: Readonly<Record<string, () => Workbook>> = {
  ...Object.fromEntries(inFolders),
  ...inEnglish,
};

/** The book with the results that the engine gives its formulas. Calls of named formulas keep what they have. */
export async function calculated(book: Workbook): Promise<Workbook> {
  const left = [...leftFormulas(book, { keepsChanging: false })];
  const named = new Map(left.filter(([{ formula = "" }]) => callsByName(formula)));
  const open = openInNode(book, named);
  try {
    await open.calculate();
    return open.toWorkbook();
  } finally {
    open.close();
  }
}

/** The bytes of a sample file. */
export const sampleFile = async (build: () => Workbook): Promise<Uint8Array> => fileOf(await calculated(build()));

/** The same of a book that is calculated. */
export const fileOf = async (calculated: Workbook): Promise<Uint8Array> =>
  withCalledNames(await writeWorkbook(calculated));

/** The folder, beside the samples, of those that need no add-in. */
export const withoutAddIn = "without-the-add-in";

/** The same file without need of an add-in; undefined where it calls a function that has no named formula. */
export function withoutNeedOfAddIn(bytes: Uint8Array): Uint8Array | undefined {
  const { bytes: named, left } = withNamedFunctions(bytes);
  return left.length === 0 ? named : undefined;
}
