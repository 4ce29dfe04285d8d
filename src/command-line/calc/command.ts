import { createInterface } from "node:readline";
import { CellError } from "../../cells/values";
import { Calculator } from "../calculator";
import { formulasIn } from "../formulas-typed";
import { functionHelp, functionList } from "../function-help";
import { holdsError, jsonAnswer, writtenAnswer } from "../written-answer";

const usage = `Answers a formula of the tea functions, or of ordinary worksheet arithmetic.

  npm run calc -- "=TEA.TARGETWEIGHT(320, 0.75, 0.6)"    one answer
  npm run calc -- "=TEA.DRYBASIS(0.75)" "=1/3"           several, each in quotes
  npm run calc -- --json "=TEA.TARGETWEIGHT(320, 0.75, 0.6)"    for another program
  npm run calc -- help                                   the functions
  npm run calc -- help TARGETWEIGHT                      one function
  npm run calc                                           asks, and answers line by line

Commas or semicolons stand between arguments. With semicolons, decimals may have commas: (320; 0,75; 0,6).
Lists are typed as {1;2;3}, where a comma separates too: their decimals have points.
The equals sign may be left out. The exit status is 1 when the answer, or any of them, holds an error.`;

const welcome = "Type a formula, help, or quit.";

/** Where the questions that are asked line by line come from, and where answers and problems go. */
export interface Surroundings {
  readonly input: NodeJS.ReadableStream;
  /** Where somebody sits who is asked for each line; undefined where a program pipes them in. */
  readonly terminal: NodeJS.WritableStream | undefined;
  say(line: string): void;
  complain(line: string): void;
}

/** One formula and its answer, or a talk line by line; gives the exit status. */
export async function calc(given: readonly string[], around: Surroundings): Promise<number> {
  const options = given.filter((word) => word.startsWith("--") || word === "-h");
  const words = given.filter((word) => !options.includes(word));
  const unknown = options.find((option) => !["--json", "--help", "-h"].includes(option));
  if (unknown !== undefined) {
    around.complain(`options must be --json or --help; got ${unknown}`);
    return 2;
  }
  if (options.includes("--help") || options.includes("-h")) {
    around.say(usage);
    return 0;
  }
  const calculator = new Calculator();
  try {
    const json = options.includes("--json");
    const typed = /^help$/i.test(words[0]?.trim() ?? "") ? [words.join(" ")] : formulasIn(words);
    return typed.length === 0 ? await talk(calculator, json, around) : await answerAll(calculator, typed, json, around);
  } finally {
    calculator.close();
  }
}

/** What is printed where, and whether it holds an error. */
interface Reply {
  readonly text: string;
  readonly problems: string;
  readonly isError: boolean;
}

async function reply(calculator: Calculator, typed: string, json: boolean): Promise<Reply> {
  const help = helpOn(typed);
  const grid = help === undefined ? await calculator.answer(typed) : [[help]];
  const isError = holdsError(grid);
  if (json) return { text: jsonAnswer(typed, grid), problems: "", isError };
  if (help instanceof CellError) return { text: "", problems: help.message, isError };
  return { ...writtenAnswer(grid), isError };
}

/** An answer to each, in their order. */
async function answerAll(
  calculator: Calculator,
  formulas: readonly string[],
  json: boolean,
  { say, complain }: Surroundings,
): Promise<number> {
  let holdsErrors = false;
  for (const formula of formulas) {
    const { text, problems, isError } = await reply(calculator, formula, json);
    if (text !== "") say(text);
    // Of several, which one it is about.
    if (problems !== "") complain(formulas.length > 1 ? `${formula}: ${problems}` : problems);
    holdsErrors ||= isError;
  }
  return holdsErrors ? 1 : 0;
}

/**
 * Until `quit` or the end of the input; in a terminal an empty line ends it too. A line that cannot be answered says
 * so and ends nothing.
 */
async function talk(calculator: Calculator, json: boolean, { input, terminal, say }: Surroundings): Promise<number> {
  const asks = terminal !== undefined;
  const lines = createInterface({ input, output: terminal, prompt: "> " });
  let holdsErrors = false;
  if (asks) say(welcome);
  if (asks) lines.prompt();
  for await (const line of lines) {
    const typed = line.trim();
    if (/^quit$/i.test(typed) || (typed === "" && asks)) break;
    if (typed === "") continue;
    const { text, problems, isError } = await reply(calculator, typed, json);
    say([text, problems].filter((part) => part !== "").join("\n"));
    holdsErrors ||= isError;
    if (asks) lines.prompt();
  }
  lines.close();
  // Whoever types sees the errors; a program that pipes its questions in looks at the status.
  return holdsErrors && !asks ? 1 : 0;
}

/** undefined for what asks for no help; an error for a function that does not exist. */
function helpOn(typed: string): string | CellError | undefined {
  const [, name] = /^help(?:\s+(\S+))?$/i.exec(typed) ?? [undefined, null];
  if (name === null) return undefined;
  return name === undefined ? functionList() : functionHelp(name);
}
