import { spawn } from "node:child_process";
import { resolve } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";

interface Ended {
  readonly status: number | null;
  readonly out: string;
  readonly problems: string;
}

/** Runs the real command in a process of its own. */
function calc(given: readonly string[], typed = ""): Promise<Ended> {
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
    // 350 × (1 − 0.76) / (1 − 0.6) = 84 / 0.4 = 210
    expect(await calc(["=TEA.TARGETWEIGHT(350; 0,76; 0,6)"])).toEqual({ status: 0, out: "210\n", problems: "" });
  });

  it("says what is wrong on the standard error, with exit status 1", async () => {
    const message = "moisture must be from 0 up to, not including, 1 (76% or 0.76); got 76";
    expect(await calc(["=TEA.TARGETWEIGHT(350, 76, 0.6)"])).toEqual({
      status: 1,
      out: "",
      problems: `#VALUE! ${message}\n`,
    });
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

  it("refuses an option that it does not have", async () => {
    const { status, problems } = await calc(["--verbose"]);
    expect(status).toBe(2);
    expect(problems).toBe("options must be --json or --help; got --verbose\n");
  });

  it("explains itself", async () => {
    const { status, out } = await calc(["--help"]);
    expect(status).toBe(0);
    expect(out).toContain('npm run calc -- "=TEA.TARGETWEIGHT(350, 0.76, 0.6)"');
  });
});

describe("a talk with the command line", () => {
  let ended: Ended;
  let answers: string[];

  beforeAll(async () => {
    const typed = [
      "=TEA.DRYMATTER(100,0.5)",
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
    ended = await calc([], `${typed.join("\n")}\n`);
    answers = ended.out.split("\n");
  });

  it("answers line by line and ends at quit", () => {
    expect(answers[0]).toBe("50");
    expect(answers.at(-1)).toBe("");
    expect(answers).not.toContain("2.5");
    expect(ended.status).toBe(0);
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
