/** The command line: one formula and its answer, or a talk line by line. */
import { createInterface } from "node:readline";
import { Calculator } from "./calculator";
import { functionHelp, functionList } from "./function-help";
import { holdsError, jsonAnswer, writtenAnswer } from "./written-answer";

const usage = `Answers a formula of the tea functions, or of ordinary worksheet arithmetic.

  npm run calc -- "=TEA.TARGETWEIGHT(350, 0.76, 0.6)"    one answer
  npm run calc -- --json "=TEA.TARGETWEIGHT(350, 0.76, 0.6)"    for another program
  npm run calc -- help                                   the functions
  npm run calc -- help TARGETWEIGHT                      one function
  npm run calc                                           asks, and answers line by line

Commas or semicolons stand between arguments. With semicolons, decimals may have commas: (350; 0,76; 0,6).
Lists are typed as {1;2;3}, where a comma separates too: their decimals have points.
The equals sign may be left out. The exit status is 1 when the answer holds an error.`;

const welcome = "Type a formula, help, or quit.";

async function main(given: readonly string[]): Promise<number> {
  const options = given.filter((word) => word.startsWith("--") || word === "-h");
  const typed = given
    .filter((word) => !options.includes(word))
    .join(" ")
    .trim();
  const unknown = options.find((option) => !["--json", "--help", "-h"].includes(option));
  if (unknown !== undefined) {
    console.error(`options must be --json or --help; got ${unknown}`);
    return 2;
  }
  if (options.includes("--help") || options.includes("-h")) {
    console.log(usage);
    return 0;
  }
  const calculator = new Calculator();
  try {
    const json = options.includes("--json");
    return typed === "" ? await talk(calculator, json) : await answerOnce(calculator, typed, json);
  } finally {
    calculator.close();
  }
}

async function answerOnce(calculator: Calculator, typed: string, json: boolean): Promise<number> {
  const help = helpOn(typed);
  if (help !== undefined) {
    console.log(help);
    return 0;
  }
  const grid = await calculator.answer(typed);
  if (json) console.log(jsonAnswer(typed, grid));
  else {
    const { text, problems } = writtenAnswer(grid);
    if (text !== "") console.log(text);
    if (problems !== "") console.error(problems);
  }
  return holdsError(grid) ? 1 : 0;
}

/** Until `quit`, an empty line or the end of the input. A line that cannot be answered says so and ends nothing. */
async function talk(calculator: Calculator, json: boolean): Promise<number> {
  const asks = process.stdin.isTTY === true;
  const lines = createInterface({ input: process.stdin, output: asks ? process.stdout : undefined, prompt: "> " });
  if (asks) console.log(welcome);
  if (asks) lines.prompt();
  for await (const line of lines) {
    const typed = line.trim();
    if (typed === "" || /^quit$/i.test(typed)) break;
    console.log(helpOn(typed) ?? (await answerLine(calculator, typed, json)));
    if (asks) lines.prompt();
  }
  lines.close();
  return 0;
}

async function answerLine(calculator: Calculator, typed: string, json: boolean): Promise<string> {
  const grid = await calculator.answer(typed);
  if (json) return jsonAnswer(typed, grid);
  const { text, problems } = writtenAnswer(grid);
  return [text, problems].filter((part) => part !== "").join("\n");
}

function helpOn(typed: string): string | undefined {
  const [, name] = /^help(?:\s+(\S+))?$/i.exec(typed) ?? [undefined, null];
  if (name === null) return undefined;
  return name === undefined ? functionList() : functionHelp(name);
}

main(process.argv.slice(2)).then((status) => {
  process.exitCode = status;
});
