/** The sheet check without a screen: over workbooks and folders, with the results that their files hold. */
import { readFileSync } from "node:fs";
import type { CommandWords } from "../words/commands";
import { commandWordsIn } from "../words/in-every-language/commands";
import { messagesIn } from "../words/in-every-language/messages";
import { type Language, languageIds, languages } from "../words/languages";
import { sheetInFormula } from "../workbook/references";
import { readWorkbook } from "../xlsx/read-workbook";
import { Refusal } from "../xlsx/refusal";
import { type CheckedWorkbook, standingOut } from "./check/standing-out";
import { booksAt } from "./files-in";

const [first, ...others] = languageIds;

const usage = `Looks through every sheet of workbooks for what deserves another look. Changes nothing, and works nothing out:
it goes by the results that the files hold (npm run recalc brings those up to date).

  npm run check -- book.xlsx …        workbooks
  npm run check -- FOLDER             every .xlsx and .xlsm in it, folders inside included
  npm run check -- FOLDER --json      for another program
${others.map((id) => `  npm run check -- FOLDER --${id}        in ${languages[id].inEnglish}`).join("\n")}

What stands out may well be true: nothing is said of what is right, or of tea that is safe or fit for sale.
The exit status is 1 when something stands out, or a file could not be read.`;

interface CheckedFile {
  readonly file: string;
  readonly found?: CheckedWorkbook;
  /** Why it was not looked through. */
  readonly refused?: string;
}

async function checked(file: string, language: Language): Promise<CheckedFile> {
  try {
    return { file, found: await standingOut(readWorkbook(readFileSync(file)), await messagesIn[language]()) };
  } catch (problem) {
    if (problem instanceof Refusal) return { file, refused: commandWordsIn[language].refused(problem.why) };
    throw problem;
  }
}

/** A line for each thing, under the name of its file; files with nothing to say of have one line. */
function textOf({ file, found, refused }: CheckedFile, words: CommandWords["check"]): string {
  if (!found) return words.notLookedThrough(file, refused ?? "");
  const lines = found.standingOut.map(
    ({ sheet, cell, title, words: what }) => `  ${words.thing(`${sheetInFormula(sheet)}!${cell}`, title, what)}`,
  );
  const over = found.passedOver.map((sheet) => `  ${words.passedOver(sheet)}`);
  return [words.found(file, found.cells, found.standingOut.length), ...lines, ...over].join("\n");
}

async function main(given: readonly string[]): Promise<number> {
  const tags = languageIds.map((id) => `--${id}`);
  const options = given.filter((word) => word.startsWith("-"));
  const paths = given.filter((word) => !word.startsWith("-"));
  const unknown = options.find((option) => ![...tags, "--json", "--help", "-h"].includes(option));
  if (unknown !== undefined) {
    console.error(`options must be --json, ${tags.join(", ")} or --help; got ${unknown}`);
    return 2;
  }
  const isHelp = options.includes("--help") || options.includes("-h");
  if (isHelp || paths.length === 0) {
    if (isHelp) console.log(usage);
    else console.error(usage);
    return isHelp ? 0 : 2;
  }
  const files = booksAt(paths);
  if (typeof files === "string") {
    console.error(files);
    return 2;
  }
  const language = languageIds.find((id) => options.includes(`--${id}`)) ?? first;
  const words = commandWordsIn[language].check;
  const isJson = options.includes("--json");
  const all: CheckedFile[] = [];
  for (const file of files) {
    const one = await checked(file, language);
    all.push(one);
    if (!isJson) console.log(textOf(one, words));
  }
  const count = all.reduce((sum, { found }) => sum + (found?.standingOut.length ?? 0), 0);
  if (isJson) console.log(JSON.stringify(all, null, 1));
  else if (files.length > 1) console.log(words.inAll(files.length, count));
  return count > 0 || all.some(({ refused }) => refused !== undefined) ? 1 : 0;
}

main(process.argv.slice(2)).then((status) => {
  process.exitCode = status;
});
