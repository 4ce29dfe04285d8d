import { isUnitAlone, unitIn, type WeightUnit } from "../../sheet-check/units";
import { type Language, languageIds, languages } from "../../words/languages";
import { wordsGiven } from "../words-given";
import { columnsIn, type NamedColumns } from "./columns";
import type { Wanted } from "./season";

const [first, ...others] = languageIds;

export const usage = `One season over many books: every lot with the file, the sheet and the row it came from, in one unit of weight.
Changes none of the books. Lots are found by the headings over them, or by the words beside them in a form.

  npm run season -- FOLDER                              shows the season; every .xlsx and .xlsm in the folder
  npm run season -- one.xlsx two.xlsx                   of these books
  npm run season -- FOLDER --out season.xlsx            writes a workbook with live formulas
  npm run season -- FOLDER --csv season.csv             writes the lots for another program
  npm run season -- FOLDER --columns "fresh=Leaf in kg, finished=Tea|Made tea, plot=Terrace"
                                                        what these headings hold, where the usual words miss it:
                                                        lot, date, plot, fresh, finished
  npm run season -- FOLDER --unit kg                    the unit of the season; else the one of most weights
  npm run season -- FOLDER --unnamed g                  the unit of weights whose heading names none
  npm run season -- FOLDER --json                       everything, for another program
${others.map((id) => `  npm run season -- FOLDER --${id}                         in ${languages[id].inEnglish}, the workbook too`).join("\n")}

Weights are taken as the files hold them (npm run recalc brings results up to date). What cannot be counted is left
out and listed with the reason. The exit status is 1 when a book or a lot was left out.`;

export interface Options extends Wanted {
  readonly help: boolean;
  readonly paths: readonly string[];
  readonly out: string | undefined;
  readonly csv: string | undefined;
  readonly json: boolean;
  readonly language: Language;
}

const withValue = {
  "--columns": '"fresh=Leaf kg, finished=Tea g"',
  "--out": "the name of a workbook, such as season.xlsx",
  "--csv": "the name of a file, such as season.csv",
  "--unit": "a unit of weight, such as kg",
  "--unnamed": "a unit of weight, such as g",
} as const;

/** What is wrong with the words that were given, or what they say. */
export function optionsIn(given: readonly string[]): Options | string {
  const words = wordsGiven(given, { flags: ["--json", ...languageIds.map(flagOf)], valued: withValue });
  if (typeof words === "string") return words;
  const { help, paths, flags, values } = words;
  if (paths.length === 0 && !help) return usage;
  let columns: NamedColumns = {};
  for (const value of values["--columns"] ?? []) {
    const named = columnsIn(value);
    if (typeof named === "string") return named;
    columns = { ...columns, ...named };
  }
  const [out, csv, unitText, unnamedText] = (["--out", "--csv", "--unit", "--unnamed"] as const).map((option) =>
    values[option]?.at(-1),
  );
  if (out !== undefined && !/\.xlsx$/i.test(out)) {
    return `--out must be the name of a workbook that ends with .xlsx; got ${out}${/\.csv$/i.test(out) ? " (--csv writes that)" : ""}`;
  }
  const unit = unitNamed(unitText);
  const unnamed = unitNamed(unnamedText);
  const unknown = [unit, unnamed].find((each) => each !== undefined && each.is === "unknown");
  if (unknown)
    return `a unit of weight must be mg, g, kg, oz, lb, jin or liang, or 台斤 and the like; got ${unknown.text}`;
  return {
    help,
    paths,
    columns,
    out,
    csv,
    unit: unit?.unit,
    unnamed: unnamed?.unit,
    json: flags.has("--json"),
    language: languageIds.find((id) => flags.has(flagOf(id))) ?? first,
  };
}

const flagOf = (id: Language) => `--${id}` as const;

type Named = { is: "unit"; unit: WeightUnit; text: string } | { is: "unknown"; unit: undefined; text: string };

function unitNamed(text: string | undefined): Named | undefined {
  if (text === undefined) return undefined;
  const unit = isUnitAlone(text) ? unitIn(text) : undefined;
  return unit === undefined ? { is: "unknown", unit, text } : { is: "unit", unit, text };
}
