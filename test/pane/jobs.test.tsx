import { renderToStaticMarkup } from "react-dom/server";
import { afterEach, beforeAll, describe, expect, test } from "vitest";
import { CellError } from "../../src/cells/values";
import { mustBe } from "../../src/core/errors";
import { Phrase } from "../../src/core/phrases";
import { moisture, weight } from "../../src/core/quantities";
import { openInNode } from "../../src/engine/node-workbook";
import { holdsFormula } from "../../src/host/block-cells";
import type { Block, CellArea, CellPlace, WrittenCell } from "../../src/host/workbook-host";
import {
  type Entries,
  isExample,
  isExampleAt,
  rowsOf,
  startOf,
  textsOf,
  type Wording,
  withAllOf,
  withoutField,
  withPicked,
  withRows,
} from "../../src/jobs/entries";
import { cautionsOf, type Field, fieldsOf, inputsOf, type Job, listsOf, moreOf } from "../../src/jobs/job";
import { answersOf, brokenFields, type JobAnswer, type PickedValues, readingsOf } from "../../src/jobs/job-answer";
import { blockAt } from "../../src/jobs/job-block";
import { jobs } from "../../src/jobs/jobs";
import { kindOf } from "../../src/jobs/read-text";
import { refusalInWords, refusedFields } from "../../src/jobs/refusals";
import { decimalsOf, shownNumber } from "../../src/jobs/shown-number";
import { JobForm } from "../../src/pane/jobs/job-form";
import { liesOver } from "../../src/pane/jobs/write-block";
import { fetchParts } from "../../src/pane/parts";
import { MessagesContext } from "../../src/pane/use-messages";
import { english } from "../../src/words/en/messages";
import type { Messages } from "../../src/words/messages";
import { chinese } from "../../src/words/zh/messages";
import { addressOf } from "../../src/workbook/addresses";
import type { Cell } from "../../src/workbook/workbook";
import { FakeWorkbookHost } from "../host/fake-workbook-host";

// What is fetched when it is wanted is there.
beforeAll(fetchParts);

const inEnglish = { messages: english, unit: "g" } as const;
const inChinese = { messages: chinese, unit: "kg" } as const;
const at: CellPlace = { sheet: "Book", row: 2, column: 1 };
const named = jobs.map((job) => ({ id: job.id, job }));
const jobNamed = (id: string) => jobs.find((job) => job.id === id) as Job;

let close: (() => void) | undefined;
afterEach(() => {
  close?.();
  close = undefined;
});

function written(job: Job, entries: Entries = {}, wording: Wording = inEnglish) {
  const readings = readingsOf(job, entries, wording);
  const answers = answersOf(job, readings, {}) as readonly JobAnswer[];
  return { answers, block: blockAt({ job, entries, readings, answers, wording }, at) };
}

/** The block in a workbook that calculates, as a host would write it. */
function opened(block: Block, others: Readonly<Record<string, readonly Cell[]>> = {}) {
  const cells: Cell[] = block.cells
    .filter(({ content }) => content !== "")
    .map(({ row, column, content, spill }) => ({
      row: at.row + row,
      column: at.column + column,
      ...(typeof content === "string" && content.startsWith("=") ? { formula: content } : { value: content }),
      ...(spill && { spill }),
    }));
  const sheet = (name: string, cells: readonly Cell[]) => ({
    name,
    cells,
    columnWidths: {},
    rowHeights: {},
    merges: [],
  });
  const sheets = Object.entries(others).map(([name, cells]) => sheet(name, cells));
  const workbook = openInNode({ name: "test", sheets: [sheet(at.sheet, cells), ...sheets] });
  close = workbook.close;
  return workbook;
}

/** Where the formulas of the job's functions stand. */
const formulasOf = (block: Block, answers: readonly JobAnswer[]) =>
  answers.map(({ spec }) => {
    const cell = block.cells.find(({ content }) => String(content).startsWith(`=TEA.${spec.id}(`));
    if (cell === undefined) throw new Error(`no formula of ${spec.id}`);
    return { row: at.row + cell.row, column: at.column + cell.column };
  });

function expectAnswers(workbook: ReturnType<typeof opened>, block: Block, answers: readonly JobAnswer[]) {
  formulasOf(block, answers).forEach(({ row, column }, index) => {
    const { grid, spec } = answers[index] as JobAnswer;
    grid.forEach((values, down) => {
      values.forEach((value, right) => {
        const found = workbook.value(at.sheet, addressOf(row + down, column + right)) ?? "";
        const where = `${spec.id}, row ${down + 1}, column ${right + 1}`;
        if (typeof value === "number") expect(found, where).toBeCloseTo(value, 9);
        else if (value instanceof CellError) expect(found, where).toMatchObject({ code: value.code });
        else expect(found, where).toBe(String(value));
      });
    });
  });
}

describe.each(named)("the job $id", ({ job }) => {
  test("starts with an answer, and its block gives the same numbers", async () => {
    const { answers, block } = written(job);
    for (const { refusal } of answers) expect(refusal).toBeUndefined();
    // Tins are weighed when they are filled.
    const waiting = answers.filter(({ waits }) => waits).map(({ spec }) => spec.id);
    expect(waiting).toEqual(job.id === "tins" ? ["PACKCHECK"] : []);
    const workbook = opened(block);
    await workbook.calculate();
    expectAnswers(workbook, block, answers);
  });

  test("follows an input that is changed in the sheet", async () => {
    const before = written(job);
    const field = [...inputsOf(job), ...moreOf(job), ...listsOf(job).flat()].find(({ parameter }) =>
      ["number", "time"].includes(kindOf(parameter.quantity)),
    ) as Field;
    const [first = "", ...rest] = startOf(field, inEnglish);
    const changed = field.name === "start" ? "14:55" : String(Number(first) * 1.25);
    const after = written(job, withRows({}, field, [changed, ...rest]));
    const input = before.block.cells.find(({ look, content }) => look === "input" && typeof content === "number");
    const now = after.block.cells.find(({ row, column }) => row === input?.row && column === input.column);
    expect(now?.content).not.toBe(input?.content);

    const workbook = opened(before.block);
    await workbook.calculate();
    const address = addressOf(at.row + (input?.row ?? 0), at.column + (input?.column ?? 0));
    workbook.set(at.sheet, address, now?.content ?? null);
    await workbook.calculate();
    expectAnswers(workbook, before.block, after.answers);
    expect(after.answers.map(({ grid }) => grid)).not.toEqual(before.answers.map(({ grid }) => grid));
  });

  test("answers in Chinese and in kilograms as well", async () => {
    const { answers, block } = written(job, {}, inChinese);
    for (const { refusal } of answers) expect(refusal).toBeUndefined();
    const workbook = opened(block);
    await workbook.calculate();
    expectAnswers(workbook, block, answers);
  });

  test("writes numbers into tinted inputs only, each with a label and a number format", () => {
    const { block } = written(job);
    for (const cell of block.cells.filter(({ content }) => typeof content === "number")) {
      expect(cell.look).toBe("input");
      expect(cell.format).toMatch(/0|mm/);
    }
    const formulas = block.cells.filter(({ content }) => String(content).startsWith("="));
    expect(formulas.length).toBeGreaterThan(0);
    for (const { content } of formulas) expect(content).not.toMatch(/[(,]\d/);
  });

  test("starts with nothing in what is folded away", () => {
    for (const field of moreOf(job)) {
      expect(textsOf(field, {}, inEnglish)).toEqual([""]);
      expect(isExample(field, {}, inEnglish)).toBe(false);
      expect(field.parameter.optional).toBe(true);
    }
  });

  test("asks for every required argument of its functions, and for none that they do not have", () => {
    const asked = [...fieldsOf(job).map(({ name }) => name), ...Object.keys(job.feeds ?? {})];
    for (const { id, parameters } of job.functions) {
      for (const { name, optional } of parameters) if (!optional) expect(asked, id).toContain(name);
    }
    expect(new Set(asked).size).toBe(asked.length);
  });

  test("keeps to the bounds of the catalogue", () => {
    for (const field of fieldsOf(job)) {
      const { quantity } = field.parameter;
      const { above, atLeast, below, atMost } = quantity.bounds;
      const kind = kindOf(quantity);
      if (kind !== "number" && kind !== "percent" && kind !== "points") continue;
      const typed = (value: number) => (kind === "number" ? `${value}` : `${value * 100} %`);
      const isRefused = (value: number) =>
        brokenFields(readingsOf(job, withRows({}, field, [typed(value)]), inEnglish)).includes(field.name);
      if (above !== undefined) expect([isRefused(above), isRefused(above + 1e-3)]).toEqual([true, false]);
      if (atLeast !== undefined) expect([isRefused(atLeast - 1e-3), isRefused(atLeast)]).toEqual([true, false]);
      if (below !== undefined) expect([isRefused(below), isRefused(below - 1e-3)]).toEqual([true, false]);
      if (atMost !== undefined) expect([isRefused(atMost + 1e-3), isRefused(atMost)]).toEqual([true, false]);
    }
  });

  test.each([inEnglish, inChinese])(
    "is reached with the keyboard in the order of reading, every field with its label",
    (wording) => {
      const markup = formMarkup(job, wording);
      expect(markup).not.toMatch(/tabindex="[1-9]/i);
      const ids = [...markup.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id as string);
      expect(new Set(ids).size).toBe(ids.length);
      const controls = [...markup.matchAll(/<(?:input|select)\b[^>]*>/g)].map(([tag]) => tag);
      for (const tag of controls) {
        const id = / id="([^"]+)"/.exec(tag)?.[1];
        expect(markup.includes(`for="${id}"`) || /aria-label="[^"]+"/.test(tag), tag).toBe(true);
        for (const described of (/aria-describedby="([^"]+)"/.exec(tag)?.[1] ?? "").split(" ")) {
          expect(ids).toContain(described);
        }
      }
      // Back, then the fields in the order of the form, then the button that writes.
      const single = [...inputsOf(job), ...moreOf(job)].map(({ name }) => `${job.id}-${name}`);
      expect(ids.filter((id) => single.includes(id))).toEqual(single);
      const buttons = [...markup.matchAll(/<button[^>]*>([^<]*)/g)].map(([, words]) => words);
      expect(buttons[0]).toContain(wording.messages.form.allJobs);
      expect(markup.indexOf(wording.messages.write.button)).toBeGreaterThan(markup.lastIndexOf("<input"));
    },
  );

  test("shows its cautions beside the form, and names them in the sheet", () => {
    const cautions = cautionsOf(job);
    const { block } = written(job);
    for (const { title, text } of cautions) {
      expect(formMarkup(job, inEnglish)).toContain(text.replaceAll("'", "&#x27;"));
      expect(block.cells.some(({ look, content }) => look === "caution" && String(content).includes(title))).toBe(true);
    }
  });
});

/** Why an answer is none, as the form says it. */
const said = (answer: JobAnswer | undefined, { messages }: Wording) =>
  answer?.refusal && refusalInWords(answer.refusal)(messages);

/** A job with these texts in its fields, each in the first row. */
const typedInto = (job: Job, texts: Readonly<Record<string, string>>): Entries =>
  Object.entries(texts).reduce(
    (entries: Entries, [name, text]) =>
      withRows(entries, fieldsOf(job).find((each) => each.name === name) as Field, [text]),
    {},
  );

const formMarkup = (job: Job, wording: Wording, entries: Entries = {}) =>
  renderToStaticMarkup(
    <MessagesContext.Provider value={wording.messages}>
      <JobForm
        job={job}
        host={new FakeWorkbookHost()}
        unit={wording.unit}
        entries={entries}
        change={() => {}}
        leave={() => {}}
      />
    </MessagesContext.Provider>,
  );

test("jobs with pans, wraps, dust, charcoal or paid weights have the caution that is due", () => {
  const ids = (job: string) => cautionsOf(jobNamed(job)).map(({ id }) => id);
  expect(ids("charges")).toEqual(["hot-pan", "carbon-monoxide"]);
  expect(ids("scale")).toEqual(["hot-pan", "carbon-monoxide"]);
  expect(ids("route")).toEqual(["hot-pan", "carbon-monoxide", "warm-leaf", "dust"]);
  expect(ids("turns")).toEqual(["warm-leaf"]);
  expect(ids("finished")).toEqual(["paid-weight"]);
  expect(ids("season")).toEqual(["paid-weight"]);
  expect(ids("balance")).toEqual(["dust"]);
});

describe("cells that are picked from the sheet", () => {
  const lot: CellArea = { sheet: "Day book", row: 3, column: 1, rows: 1, columns: 1 };

  test("become references in the formula, which follows them", async () => {
    const job = jobNamed("charges");
    const [weight] = inputsOf(job) as [Field];
    const entries = withPicked({}, weight, lot);
    const readings = readingsOf(job, entries, inEnglish);
    const picked: PickedValues = { weight: [[1010]] };
    const answers = answersOf(job, readings, picked) as readonly JobAnswer[];
    const block = blockAt({ job, entries, readings, answers, wording: inEnglish }, at);
    const plan = block.cells.find(({ content }) => String(content).startsWith("=TEA.CHARGEPLAN("));
    expect(plan?.content).toMatch(/^=TEA\.CHARGEPLAN\('Day book'!B4,/);

    const workbook = opened(block, { "Day book": [{ row: 3, column: 1, value: 1010 }] });
    await workbook.calculate();
    expectAnswers(workbook, block, answers);
    workbook.set("Day book", "B4", 1200);
    await workbook.calculate();
    expectAnswers(workbook, block, answersOf(job, readings, { weight: [[1200]] }) as readonly JobAnswer[]);
  });

  test("stand for a whole list, without the sheet's name on their own sheet", async () => {
    const job = jobNamed("route");
    const [names, targets, kinds] = listsOf(job)[0] as [Field, Field, Field];
    const area = { sheet: at.sheet, row: 40, column: 0, rows: 2, columns: 1 };
    let entries = withPicked({}, targets, area);
    for (const field of [names, kinds]) entries = withRows(entries, field, []);
    const readings = readingsOf(job, entries, inEnglish);
    const answers = answersOf(job, readings, { targets: [[0.5], [0.06]] }) as readonly JobAnswer[];
    expect(answers[0]?.refusal).toBeUndefined();
    const block = blockAt({ job, entries, readings, answers, wording: inEnglish }, at);
    expect(block.cells.find(({ content }) => String(content).includes("DRYINGSTEPS"))?.content).toMatch(
      /^=TEA\.DRYINGSTEPS\(C\d+,C\d+,A41:A42,,,FALSE\)$/,
    );
  });

  test("may not lie under the block that reads them", () => {
    const { block } = written(jobNamed("moisture"));
    expect(liesOver(block, at, [{ ...lot, sheet: at.sheet }])).toBe(true);
    expect(liesOver(block, at, [lot])).toBe(false);
    expect(liesOver(block, at, [{ ...lot, sheet: at.sheet, row: 90 }])).toBe(false);
  });

  test("leave what was typed for the way back", () => {
    const [weight] = inputsOf(jobNamed("charges")) as [Field];
    const typed = withRows({}, weight, ["1111"]);
    const back = withPicked(withPicked(typed, weight, lot), weight, undefined);
    expect(textsOf(weight, back, inEnglish)).toEqual(["1111"]);
  });

  test("leave what was typed in a list that was picked around", () => {
    const job = jobNamed("balance");
    const [list] = listsOf(job) as [Field[]];
    const removed = list.find(({ name }) => name === "removed") as Field;
    const typed = withRows({}, removed, ["", "22.5", "7", ""]);
    const without = withoutField(typed, removed);
    expect(textsOf(removed, without, inEnglish)).toEqual([]);
    expect(isExample(removed, without, inEnglish)).toBe(false);
    expect(textsOf(removed, withAllOf(without, list), inEnglish)).toEqual(["", "22.5", "7", ""]);
  });

  test("that cannot be read any more keep the job from its answer", () => {
    const job = jobNamed("moisture");
    const [weight] = inputsOf(job) as [Field];
    const readings = readingsOf(job, withPicked({}, weight, lot), inEnglish);
    const unread = { startWeight: "the sheet was renamed" };
    expect(brokenFields(readings, unread)).toEqual(["startWeight"]);
    expect(answersOf(job, readings, {}, unread)).toBeUndefined();
    // One that is typed again is not broken by the cells that stood there.
    expect(brokenFields(readingsOf(job, {}, inEnglish), unread)).toEqual([]);
  });

  test("hold their place while they are blank, and bring the errors of their cells along", () => {
    const job = jobNamed("moisture");
    const [weight] = inputsOf(job) as [Field];
    const readings = readingsOf(job, withPicked({}, weight, lot), inEnglish);
    expect(answersOf(job, readings, { startWeight: [[""]] })?.[0]).toMatchObject({ waits: true });
    const [answer] = answersOf(job, readings, { startWeight: [["#DIV/0!"]] }) ?? [];
    expect(said(answer, inEnglish)).toBe("a picked cell shows #DIV/0!");
  });
});

describe("what is written", () => {
  const contentIn = ({ block }: { block: Block }, content: unknown) =>
    block.cells.find((cell) => cell.content === content);

  test("is a constant where a name begins as a formula does", () => {
    const job = jobNamed("season");
    const [[groups]] = listsOf(job) as [[Field]];
    const named = contentIn(written(job, withRows({}, groups, ["=1+1", "b", "=1+1", "b"])), "=1+1");
    expect(named?.isConstant).toBe(true);
    expect(holdsFormula(named as WrittenCell)).toBe(false);
    expect(holdsFormula({ content: "=1+1" })).toBe(true);
  });

  test("shows every decimal that was typed, and weights as finely as the scale does", () => {
    const job = jobNamed("charges");
    const typed = typedInto(job, { weight: "936.38", moisture: "74.55 %", readability: "0.01" });
    const inHundredths = { ...inEnglish, decimals: 2 };
    const cells = written(job, typed, inHundredths);
    expect(contentIn(cells, 936.38)?.format).toBe("0.00");
    expect(contentIn(cells, 0.7455)?.format).toBe("0.00%");
    expect(contentIn(cells, 0.01)?.format).toBe("0.00");
    const loads = cells.block.cells.filter(({ spill, format }) => spill && format?.startsWith("0.0"));
    expect(loads.length).toBeGreaterThan(1);
    expect(new Set(loads.map(({ format }) => format))).toEqual(new Set(["0.00"]));
    expect(shownNumber(234.09, weight, "g", english, 2)).toBe("234.09 g");
    expect(contentIn(written(job), 936)?.format).toBe("0.0");
  });

  test.each([
    [0.058, moisture, 1],
    [0.0005, weight, 4],
    [320, weight, 0],
    [1e-7, weight, 7],
    [1 / 3, weight, 9],
  ])("needs so many decimals: %d", (value, quantity, decimals) => {
    expect(decimalsOf(value, quantity)).toBe(decimals);
  });
});

const catty =
  "a catty is 500 g on the mainland of China, 600 g in Taiwan and others elsewhere: type 市斤 for 500 g, 公斤 for 1 kg, or the one you mean in g";

describe("a form", () => {
  const job = jobNamed("finished");
  const answered = (name: string, text: string) => {
    const field = fieldsOf(job).find((each) => each.name === name) as Field;
    const reading = readingsOf(job, withRows({}, field, [text]), inEnglish).get(name);
    const [understood] = reading && "typed" in reading ? reading.typed : [];
    return understood?.is === "value" ? understood.value : understood?.is === "problem" ? understood.says(english) : "";
  };

  test.each([
    ["76", 0.76],
    ["76%", 0.76],
    ["76 %", 0.76],
    ["0.76", 0.76],
    ["0,76", 0.76],
    ["７６％", 0.76],
    ["1", 0.01],
    ["5,5", 0.055],
    ["5.8", 0.058],
    ["0.5 %", 0.005],
    [".5", 0.5],
  ])("takes %s for a moisture of %d", (text, value) => {
    expect(answered("freshMoisture", text)).toBe(value);
  });

  test.each([
    ["640,5", 640.5],
    ["640.5", 640.5],
    ["0,125", 0.125],
    ["1 040", 1040],
    ["1,234.5", 1234.5],
    ["1.234,5", 1234.5],
    ["350 g", 350],
    ["0.35 kg", 350],
    ["0,35kg", 350],
    ["３５０ｇ", 350],
    ["1 lb", 453.59237],
    ["2 斤", 1000],
    ["1.5 公斤", 1500],
  ])("takes %s for a weight of %d", (text, value) => {
    expect(answered("freshWeight", text)).toBe(value);
  });

  test.each([
    ["freshWeight", "1,234", english.problems.whichOne("1,234")],
    ["freshWeight", "1,23,4", english.problems.notNumber("1,23,4")],
    ["freshWeight", "3 catties", english.problems.unitInDoubt("catties", catty)],
    ["freshWeight", "3 pans", english.problems.notNumber("3 pans")],
    ["freshWeight", "76 %", english.problems.notNumber("76 %")],
    ["freshWeight", "abc", english.problems.notNumber("abc")],
    ["freshWeight", "-3", "Must be above 0.0 g."],
    ["freshMoisture", "100", "Must be 0.0 % or more and below 100.0 %."],
    ["freshMoisture", "1e-3", english.problems.notNumber("1e-3")],
  ])("refuses for %s the text %s", (name, text, message) => {
    expect(answered(name, text)).toBe(message);
  });

  test("takes errors of moistures in points, and times in hours and minutes", () => {
    expect(answered("freshMoistureError", "0.5")).toBe(0.005);
    const turns = jobNamed("turns");
    const readings = (text: string) => {
      const [, duration] = inputsOf(turns) as [Field, Field];
      return brokenFields(readingsOf(turns, withRows({}, duration, [text]), inEnglish));
    };
    expect(readings("3:05")).toEqual([]);
    expect(readings("3：05")).toEqual([]);
    expect(readings("5")).toEqual(["duration"]);
    expect(readings("3:75")).toEqual(["duration"]);
  });

  const turns = jobNamed("turns");
  const timeIn = (name: string, text: string, messages: Messages = english) => {
    const reading = readingsOf(turns, typedInto(turns, { [name]: text }), inEnglish).get(name);
    const [read] = reading && "typed" in reading ? reading.typed : [];
    if (read?.is === "value") return Math.round(Number(read.value) * 86_400) / 60;
    return read?.is === "problem" ? (read.readings ?? []).map(({ becomes, says }) => [becomes, says(messages)]) : "";
  };

  test.each([
    ["duration", "3 h", 180],
    ["duration", "3h20", 200],
    ["duration", "3 h 20 min", 200],
    ["duration", "1,5 hours", 90],
    ["duration", "20 min", 20],
    ["duration", "3小时20分", 200],
    ["duration", "45 分钟", 45],
    ["start", "2:30 pm", 870],
    ["start", "12 a.m.", 0],
    ["start", "13:40:30", 820.5],
  ])("takes for %s the text %s as %d minutes", (name, text, minutes) => {
    expect(timeIn(name, text)).toBe(minutes);
  });

  test("asks in words what a bare number is as a time", () => {
    expect(timeIn("duration", "3")).toEqual([
      ["3:00", "3 hours"],
      ["0:03", "3 minutes"],
    ]);
    expect(timeIn("duration", "3", chinese)).toEqual([
      ["3:00", "3 小时"],
      ["0:03", "3 分钟"],
    ]);
    expect(timeIn("duration", "9.30")).toEqual([
      ["9:18", "9 hours 18 minutes"],
      ["9:30", "9 hours 30 minutes"],
    ]);
    expect(timeIn("duration", "1,5")).toEqual([["1:30", "1 hour 30 minutes"]]);
    expect(timeIn("interval", "90")).toEqual([["1:30", "1 hour 30 minutes"]]);
    expect(timeIn("start", "9.30")).toEqual([["9:30", "9:30"]]);
    expect(timeIn("start", "1430")).toEqual([["14:30", "14:30"]]);
    for (const text of ["9999", "abc", "3 pm", "0", "-3"]) expect(timeIn("duration", text)).toEqual([]);
  });

  test("converts a weight that comes with a unit into the unit of the form, and shows it", () => {
    const [weight] = inputsOf(job) as [Field];
    const reading = readingsOf(job, withRows({}, weight, ["350 g"]), inChinese).get(weight.name);
    const [read] = reading && "typed" in reading ? reading.typed : [];
    expect(read).toEqual({ is: "value", value: 0.35 });
    expect(formMarkup(job, inChinese, withRows({}, weight, ["350 g"]))).toContain("读作 0.35 公斤。");
  });

  test("asks which number it is where a comma may mark thousands", () => {
    const [weight] = inputsOf(job) as [Field];
    const markup = formMarkup(job, inEnglish, withRows({}, weight, ["1,234 g"]));
    expect(markup).toMatch(/What is “1,234 g” here\?<span class="readings"><button[^>]*>1234 g<.*?>1.234 g</);
  });

  test("waits for a measured input, and asks for a setting", () => {
    const charges = jobNamed("charges");
    const [weight, , panLoad] = inputsOf(charges) as [Field, Field, Field];
    const blank = (field: Field) => readingsOf(charges, withRows({}, field, [""]), inEnglish);
    expect(answersOf(charges, blank(weight), {})?.every(({ waits }) => waits)).toBe(true);
    expect(brokenFields(blank(panLoad))).toEqual(["panLoad"]);
  });

  test("says what the cell would say where one input bounds another", () => {
    const now = jobNamed("moisture");
    const field = fieldsOf(now).find(({ name }) => name === "weightNow") as Field;
    const [answer] = answersOf(now, readingsOf(now, withRows({}, field, ["80"]), inEnglish), {}) ?? [];
    expect(said(answer, inEnglish)).toBe("“Weight now” must be at least 166.4, the dry matter; got 80");
  });

  test("calls every argument of a refusal by its label, in the language of the pane", () => {
    const charges = jobNamed("charges");
    const typed = typedInto(charges, { weight: "800", moisture: "76 %", panLoad: "350", maxLoad: "250" });
    const refused = (wording: Wording) =>
      said(answersOf(charges, readingsOf(charges, typed, wording), {})?.[1], wording);
    expect(refused(inEnglish)).toBe(
      "“Most that a pan may hold” must be at least 350, the “Weight wanted in one pan”; got 250",
    );
    expect(refused({ ...inChinese, unit: "g" })).toBe("“一锅最多能放”必须不小于 350（“每锅想要的重量”）；得到的是 250");
    const lists = typedInto(jobNamed("balance"), { weights: "900" });
    const [unequal] = answersOf(jobNamed("balance"), readingsOf(jobNamed("balance"), lists, inEnglish), {}) ?? [];
    expect(said(unequal, inChinese)).toBe("“重量”必须与“阶段”的行数相同；得到 1 和 4");
  });

  test("marks the row of a list that a function refuses", () => {
    const route = jobNamed("route");
    const [[, targets]] = listsOf(route) as [[Field, Field]];
    const typed = withRows({}, targets, ["28 %", "80 %", "34 %", "6 %"]);
    const answers = answersOf(route, readingsOf(route, typed, inEnglish), {});
    expect(refusedFields(answers).get("targets")?.item).toBe(2);
    const markup = formMarkup(route, inEnglish, typed);
    expect([...markup.matchAll(/<input id="(route-\S+)"[^>]*aria-invalid/g)].map(([, id]) => id)).toEqual([
      "route-targets-2",
    ]);
    expect(markup).toContain("“Target” must not rise; step 2 goes from ");
  });

  test("says in the answer which examples it rests on, and nothing once all is typed", () => {
    const scale = jobNamed("scale");
    expect(formMarkup(scale, inEnglish)).toContain(english.answer.restsAltogether);
    const some = typedInto(scale, { weight: "312", loss: "30 %" });
    expect(formMarkup(scale, inEnglish, some)).toContain(
      english.answer.rests(["Moisture of the leaf", "Loss of what"]),
    );
    const all = typedInto(scale, { weight: "312", moisture: "74 %", loss: "30 %", lossOf: "water" });
    expect(formMarkup(scale, inEnglish, all)).not.toMatch(/rests on our example/);
    expect(formMarkup(scale, { ...inChinese, unit: "g" }, some)).toContain(
      "这里还用着我们的示例：茶叶含水率；什么的损失。",
    );
  });

  test("marks every row of a list as an example until it is typed", () => {
    const balance = jobNamed("balance");
    const [[, weights]] = listsOf(balance) as [[Field, Field]];
    const rows = rowsOf(weights, {}, inEnglish);
    const typed = withRows({}, weights, ["1000", ...rows.slice(1)]);
    expect(rows.map((_, row) => isExampleAt(row, weights, typed, inEnglish))).toEqual([false, true, true, true]);
    expect(textsOf(weights, typed, inEnglish)).toEqual(["1000", ...startOf(weights, inEnglish).slice(1)]);
    // In another unit the rows of the example are in that unit, and what was typed stays.
    expect(textsOf(weights, typed, inChinese)).toEqual(["1000", ...startOf(weights, inChinese).slice(1)]);
    // A row that is removed takes its own mark along.
    const shorter = withRows(typed, weights, rowsOf(weights, typed, inEnglish).slice(1));
    expect(isExampleAt(0, weights, shorter, inEnglish)).toBe(true);
    const labels = ["Stage", "Weight", "Moisture", "Leaf taken out"];
    expect(written(balance, typed).block.cells[3]?.content).toBe(english.sheet.examples(labels));
  });

  test("marks an example until something is typed", () => {
    const [field] = inputsOf(job) as [Field];
    expect(isExample(field, {}, inEnglish)).toBe(true);
    expect(isExample(field, withRows({}, field, ["1180"]), inEnglish)).toBe(false);
  });
});

describe("the jobs of the clock and the tin", () => {
  const shown = (id: string, entries: Entries = {}) => written(jobNamed(id), entries).answers.map(({ grid }) => grid);
  const clockOf = (value: unknown): string => {
    const minutes = Math.round((value as number) * 1440);
    return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
  };

  test("plan a day that ends at 16:06, with four wraps that the break makes overrun, by 1:01", () => {
    const [charges, plan] = shown("day");
    expect(charges).toEqual([[6]]);
    const total = plan?.at(-1) ?? [];
    expect([String(total[0]), total[1], clockOf(total[5]), clockOf(total[6])]).toEqual(["total", 18, "16:06", "1:01"]);
    expect(plan?.slice(0, -1).filter((row) => String(row[7]) === "overruns").length).toBe(4);
  });

  test("hand one function's answer to the next: in the form, and as the address of its cell in the sheet", async () => {
    const weight = inputsOf(jobNamed("day"))[0] as Field;
    const [charges, plan] = shown("day", withRows({}, weight, ["840"]));
    expect(charges).toEqual([[3]]);
    expect(plan?.length).toBe(3 * 3 + 1);
    const { block } = written(jobNamed("day"));
    const count = block.cells.find(({ content }) => String(content).startsWith("=TEA.CHARGECOUNT"));
    const address = addressOf(at.row + (count?.row ?? 0), at.column + (count?.column ?? 0));
    const formula = block.cells.find(({ content }) => String(content).startsWith("=TEA.DAYPLAN"))?.content;
    expect(formula).toContain(`,${address},`);
  });

  test("wait together, and refuse by the field that is wrong", () => {
    const [weight, , firstStart] = inputsOf(jobNamed("day")) as [Field, Field, Field];
    const { answers } = written(jobNamed("day"), withRows({}, weight, [""]));
    expect(answers.map(({ waits }) => waits)).toEqual([true, true]);
    expect(written(jobNamed("day"), withRows({}, firstStart, [""])).answers.map(({ waits }) => waits)).toEqual([
      false,
      true,
    ]);
  });

  test("expect the tea between 11:09 and 13:05, likely at 12:31, and leave room for later readings", () => {
    const [target, moments] = shown("ready");
    expect(Number(target?.[0]?.[0])).toBeCloseTo(265.2632, 4);
    expect(moments?.[0]?.slice(0, 3).map(clockOf)).toEqual(["11:09", "12:31", "13:05"]);
  });

  test("fill thirty and sixteen tins, and check them once they are weighed", () => {
    const [plan, check] = shown("tins");
    expect(plan?.map((row) => row[1])).toEqual([50.3, 20.3, "", ""]);
    expect(plan?.map((row) => row[2])).toEqual([30, 16, "", 46]);
    expect(check).toEqual([["", "", "", "", "", ""]]);
    const netWeights = listsOf(jobNamed("tins"))[1]?.[0] as Field;
    const weighed = shown("tins", withRows({}, netWeights, ["50.1", "49.9", "50.3"]))[1];
    expect(weighed?.[0]?.map((value) => String(value)).slice(0, 1)).toEqual(["agrees"]);
    expect(cautionsOf(jobNamed("tins")).map(({ id }) => id)).toContain("sale-limit");
  });
});

describe("the messages", () => {
  test("have the same keys in both languages", () => {
    expect(keysOf(chinese)).toEqual(keysOf(english));
  });

  test("have a word for everything that jobs show", () => {
    for (const messages of [english, chinese]) {
      for (const job of jobs) {
        expect(messages.jobs[job.id]).toBeDefined();
        for (const { name, parameter } of fieldsOf(job)) {
          expect(messages.inputs[name], name).toBeDefined();
          for (const word of Object.keys(parameter.quantity.choices ?? {}))
            expect(messages.choices[word]).toBeDefined();
        }
        for (const [first] of listsOf(job)) expect(messages.lists[first?.name ?? ""]).toBeDefined();
        for (const { id, result } of job.functions) {
          expect(messages.answers[id], id).toBeDefined();
          if (result.shape === "row" || result.shape === "table") {
            for (const { name } of result.columns) expect(messages.columns[name], name).toBeDefined();
          }
        }
        for (const { id } of cautionsOf(job)) expect(messages.cautions[id]).toBeDefined();
      }
    }
  });

  test("leave no English in Chinese", () => {
    // Names of programs, keys and functions; placeholders.
    const allowed = /Ctrl\+Enter|Excel|Microsoft|_?TEA(?:[._][A-Z]*)?|°C|\bz\b|TEST|%/g;
    for (const text of textsIn(chinese)) {
      expect(text.replaceAll(allowed, ""), text).not.toMatch(/[A-Za-z]/);
    }
  });

  test("read what functions answer in Chinese too", () => {
    const answers = jobs.flatMap((job) => written(job).answers).flatMap(({ grid }) => grid.flat());
    const own: readonly unknown[] = Object.values(english.examples).flat();
    const phrases = answers.filter((value) => value instanceof Phrase);
    expect(phrases.length).toBeGreaterThan(5);
    for (const { saying } of phrases) expect(chinese.phrase(saying), english.phrase(saying)).not.toMatch(/[a-z]/);
    // What is no phrase is the maker's own, or a flag of no words.
    expect(answers.filter((value) => typeof value === "string" && value !== "" && !own.includes(value))).toEqual([]);
  });

  test("start forms with as many words as the rows have numbers", () => {
    for (const messages of [english, chinese]) {
      for (const list of jobs.flatMap(listsOf)) {
        const lengths = list.map((field) => startOf(field, { messages, unit: "g" }).length);
        expect(new Set(lengths).size).toBe(1);
      }
    }
  });
});

/** Every path to a message. */
const keysOf = (node: unknown, path = ""): string[] =>
  typeof node === "object" && node !== null
    ? Object.entries(node)
        .flatMap(([key, value]) => keysOf(value, `${path}.${key}`))
        .sort()
    : [path];

/** Fills any place in a message, and any detail that it asks for. */
const filling = new Proxy(
  {},
  { get: (_, key) => (key === Symbol.toPrimitive || key === "toString" ? () => "TEST" : "TEST") },
);

/** Every text, with those that need something filled in. */
function textsIn(node: unknown): string[] {
  if (typeof node === "string") return [node];
  if (typeof node === "function") {
    // What these say is looked at in messages.test.ts.
    const { limits, gives } = chinese.reference;
    if ([chinese.phrase, limits, gives].some((other) => node === other)) return [];
    if (node === chinese.problems.host) {
      const troubles = ["merged cells", "filtered rows", "pivot table", "sheet protected"] as const;
      const inWords = troubles.map((trouble) => chinese.problems.host({ trouble }));
      expect(new Set(inWords).size).toBe(troubles.length);
      return [
        ...inWords,
        chinese.problems.host({ trouble: { kind: "name left", name: "TEST", after: "Excel is busy" } }),
      ];
    }
    const { problems, answer, sheet, joined, withoutAddIn } = chinese;
    const { noneHas, changedNames, without, taken, blocked } = withoutAddIn;
    const ofNames = [noneHas, changedNames, without, taken, blocked];
    const ofJoined = [joined.list, joined.parts, joined.sentences];
    const ofTexts = [problems.must, answer.rests, sheet.examples, ...ofNames, ...ofJoined];
    for (const says of ofTexts) if (node === says) return [says(["TEST"])];
    if (node === problems.unitInDoubt) return [problems.unitInDoubt("TEST", "for twenty minutes type 0:20")];
    if (node === chinese.reason) {
      const be = { kind: "at least", least: 350, argument: "panLoad" } as const;
      return [chinese.reason(mustBe("maxLoad", be, 250).refusal, () => "TEST")];
    }
    return [String(node(filling, filling, filling))];
  }
  return Object.values(node as object).flatMap(textsIn);
}
