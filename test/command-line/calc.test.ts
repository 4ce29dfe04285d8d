import { spawn } from "node:child_process";
import { resolve } from "node:path";
import { Readable } from "node:stream";
import { beforeAll, describe, expect, it } from "vitest";
import * as command from "../../src/command-line/calc/command";

interface Ended {
  readonly status: number | null;
  readonly out: string;
  readonly problems: string;
}

/** What the command says, in this process: one of its own takes seconds to start. */
async function calc(given: readonly string[], typed = ""): Promise<Ended> {
  let [out, problems] = ["", ""];
  const status = await command.calc(given, {
    input: Readable.from([typed]),
    terminal: undefined,
    say: (line) => {
      out += `${line}\n`;
    },
    complain: (line) => {
      problems += `${line}\n`;
    },
  });
  return { status, out, problems };
}

/** Runs the real command in a process of its own. */
function inItsOwnProcess(given: readonly string[], typed = ""): Promise<Ended> {
  const runner = resolve("node_modules/tsx/dist/cli.mjs");
  const child = spawn(process.execPath, [runner, "src/command-line/calc.ts", ...given]);
  let out = "";
  let problems = "";
  child.stdout.on("data", (text) => {
    out += text;
  });
  child.stderr.on("data", (text) => {
    problems += text;
  });
  child.stdin.end(typed);
  return new Promise((done) => {
    child.on("close", (status) => done({ status, out, problems }));
  });
}

describe("the command line", () => {
  it("prints a value and nothing else", async () => {
    // 320 × (1 − 0.75) / (1 − 0.6) = 80 / 0.4 = 200
    expect(await calc(["=TEA.TARGETWEIGHT(320; 0,75; 0,6)"])).toEqual({ status: 0, out: "200\n", problems: "" });
  });

  it("says what is wrong on the standard error, with exit status 1", async () => {
    const message = "moisture must be from 0 up to, not including, 1 (76% or 0.76); got 76";
    const ended = { status: 1, out: "", problems: `#VALUE! ${message}\n` };
    expect(await calc(["=TEA.TARGETWEIGHT(320, 76, 0.6)"])).toEqual(ended);
    expect(await inItsOwnProcess(["=TEA.TARGETWEIGHT(320, 76, 0.6)"])).toEqual(ended);
  });

  it("answers another program in JSON", async () => {
    const { status, out } = await calc(["--json", "tea.drymatter({100;200},{0.5;2})"]);
    expect(status).toBe(1);
    expect(JSON.parse(out)).toEqual({
      formula: "tea.drymatter({100;200},{0.5;2})",
      rows: [
        [50],
        [{ error: "#VALUE!", message: "moisture must be from 0 up to, not including, 1 (76% or 0.76); got 2" }],
      ],
    });
  });

  it("answers several formulas in quotes, one after the other, and says which one is wrong", async () => {
    // 0.75 / (1 − 0.75) = 3; 12 × 3 = 36.
    expect(await calc(["=TEA.DRYBASIS(0.75)", "=TEA.DRYBASIS(75)", "=12*3"])).toEqual({
      status: 1,
      out: "3\n36\n",
      problems: "=TEA.DRYBASIS(75): #VALUE! moisture must be from 0 up to, not including, 1 (76% or 0.76); got 75\n",
    });
    const { out } = await calc(["--json", "=1+1", "=2+2"]);
    expect(
      out
        .trim()
        .split("\n")
        .map((line) => JSON.parse(line)),
    ).toEqual([
      { formula: "=1+1", value: 2 },
      { formula: "=2+2", value: 4 },
    ]);
  });

  it("says in a line each what it refuses: a cell, too many arguments, an answer too large", async () => {
    const refused = ["=TEA.DRYBASIS(B4)", "=TEA.TARGETWEIGHT(320, 0,75, 0,6)", "=ROW(A1:A1500)"] as const;
    const { status, out, problems } = await calc(refused);
    expect([status, out]).toEqual([1, ""]);
    const [cell, tooMany, tooLarge] = problems.trim().split("\n");
    expect(cell).toBe(`${refused[0]}: #VALUE! a value must stand in the place of a cell, no workbook is open; got B4`);
    expect(tooMany).toContain("TEA.TARGETWEIGHT must have at most 3 arguments; got 5");
    // Decimal commas make too many arguments.
    expect(tooMany).toContain("put semicolons between arguments: (320; 0,75; 0,6)");
    expect(tooLarge).toBe(`${refused[2]}: #SPILL! an answer too large for the sheet`);
  });

  it("takes an equals sign alone for a mistake", async () => {
    const { status, problems } = await calc(["="]);
    expect(status).toBe(1);
    expect(problems).toBe("#VALUE! a formula must be given; got nothing behind the equals sign\n");
  });

  it("helps another program in JSON too, with an error where there is no such function", async () => {
    const helped = await calc(["--json", "help", "WATER"]);
    expect(helped.status).toBe(0);
    expect(JSON.parse(helped.out).value).toContain("TEA.WATER(");
    const refused = await calc(["--json", "help", "FOO"]);
    expect(refused.status).toBe(1);
    expect(JSON.parse(refused.out)).toMatchObject({
      error: "#NAME?",
      message: expect.stringMatching(/^there is no function TEA.FOO; /),
    });
    const plain = await calc(["help", "FOO"]);
    expect(plain).toMatchObject({
      status: 1,
      out: "",
      problems: expect.stringMatching(/^there is no function TEA.FOO;/),
    });
  });

  it("has the exit status 0 for piped lines that are all answered", async () => {
    expect(await calc([], "=TEA.DRYMATTER(100,0.5)\nhelp WATER\n")).toMatchObject({ status: 0, problems: "" });
  });

  it("refuses an option that it does not have", async () => {
    const { status, problems } = await calc(["--verbose"]);
    expect(status).toBe(2);
    expect(problems).toBe("options must be --json or --help; got --verbose\n");
  });

  it("explains itself", async () => {
    const { status, out } = await calc(["--help"]);
    expect(status).toBe(0);
    expect(out).toContain('npm run calc -- "=TEA.TARGETWEIGHT(320, 0.75, 0.6)"');
  });
});

describe("a talk with the command line", () => {
  let ended: Ended;
  let answers: string[];

  beforeAll(async () => {
    const typed = [
      "=TEA.DRYMATTER(100,0.5)",
      "",
      "TEA.DRYMATTR(100,0.5)",
      "=SUM(1",
      "=1+",
      "=SUM(TEA.DRYMATTER({100;200};0,5))/4",
      "=TEA.DRYMATTER({1;2},0.5)*2",
      "=DRYMATTER(1,0.5)",
      "help nothing",
      "quit",
      "=1+1",
    ];
    ended = await inItsOwnProcess([], `${typed.join("\n")}\n`);
    answers = ended.out.split("\n");
  });

  it("answers line by line, passes over an empty one and ends at quit", () => {
    expect(answers[0]).toBe("50");
    expect(answers.at(-1)).toBe("");
    expect(answers).not.toContain("2.5");
  });

  it("has the exit status 1 when a line had no answer", () => {
    expect(ended.status).toBe(1);
  });

  it("goes on after lines that it cannot answer", () => {
    expect(answers[1]).toBe("#NAME? there is no function TEA.DRYMATTR; did you mean TEA.DRYMATTER?");
    expect(answers[2]).toBe("#VALUE! brackets must be closed; got 1 that open and 0 that close");
    expect(answers[3]).toMatch(/^#/);
  });

  it("does ordinary arithmetic around the functions, a spill as rows", () => {
    expect(answers.slice(4, 7)).toEqual(["37.5", "1", "2"]);
  });

  it("names the function that was meant without its namespace", () => {
    expect(answers[7]).toBe("#NAME? a name in the formula is not known; did you mean TEA.DRYMATTER?");
  });

  it("lists and explains functions, and is told of none that does not exist", () => {
    expect(answers[8]).toBe("there is no function TEA.NOTHING; help alone lists them all");
  });

  it("has nothing to log", () => {
    expect(ended.problems).toBe("");
    expect(answers).toHaveLength(10);
  });
});
