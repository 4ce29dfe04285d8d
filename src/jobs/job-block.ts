import { type FunctionSpec, headers } from "../core/define";
import { namespace } from "../core/namespace";
import { isInHundredths, isWeight, type Quantity, text } from "../core/quantities";
import { shownWidth } from "../core/shown";
import { chartedColumn, ownRows } from "../core/tables";
import type { Block, CellArea, CellContent, CellPlace, Chart, WrittenCell } from "../host/workbook-host";
import { addressOf } from "../workbook/addresses";
import { referenceTo } from "../workbook/references";
import { type AnswerColumn, columnsOf } from "./answer-columns";
import { type Entries, exampleLabels, type Wording } from "./entries";
import { cautionsOf, type Field, fieldsOf, inputsOf, type Job, listsOf, moreOf } from "./job";
import type { FieldReading, JobAnswer } from "./job-answer";
import { decimalsOf, formatOf, unitOf } from "./shown-number";

/** All that a block is made of. */
export interface Filled {
  readonly job: Job;
  readonly entries: Entries;
  readonly readings: ReadonlyMap<string, FieldReading>;
  readonly answers: readonly JobAnswer[];
  readonly wording: Wording;
}

export interface BlockOfJob extends Block {
  /** What a chart beside it would show, where the job has one. */
  readonly chart?: Chart;
  readonly places: PlacesInBlock;
}

interface PlaceInBlock {
  readonly row: number;
  readonly column: number;
}

/** Where in a block what stands, from its first cell on. */
interface PlacesInBlock {
  /** The cell of each field that is no list. */
  readonly inputs: ReadonlyMap<string, PlaceInBlock>;
  /** The first cell of each answer. */
  readonly answers: ReadonlyMap<FunctionSpec, PlaceInBlock>;
  /** Where the verdict on a table is shown above it as well. */
  readonly verdicts: ReadonlyMap<FunctionSpec, PlaceInBlock>;
}

/**
 * The job as labelled inputs and live formulas on them, for the place where it goes: formulas name their cells. The
 * answers come last, so that they can grow downwards.
 */
export function blockAt(filled: Filled, at: CellPlace): BlockOfJob {
  return new JobBlock(filled, at).block();
}

class JobBlock {
  readonly #filled: Filled;
  readonly #at: CellPlace;
  readonly #cells: WrittenCell[] = [];
  /** What stands for each field in a formula. */
  readonly #references = new Map<string, string>();
  readonly #inputs = new Map<string, PlaceInBlock>();
  readonly #answers = new Map<FunctionSpec, PlaceInBlock>();
  readonly #verdicts = new Map<FunctionSpec, PlaceInBlock>();
  #chart: Chart | undefined;
  #row = 0;

  constructor(filled: Filled, at: CellPlace) {
    this.#filled = filled;
    this.#at = at;
  }

  block(): BlockOfJob {
    const { job, answers } = this.#filled;
    this.#heading();
    for (const field of [...inputsOf(job), ...moreOf(job)]) this.#input(field);
    for (const list of listsOf(job)) this.#list(list);
    let before: FunctionSpec | undefined;
    for (const answer of answers) {
      const isBelowAnother = before?.result.shape === "cell" && answer.spec.result.shape === "cell";
      if (!isBelowAnother) this.#row += 1;
      this.#answer(answer);
      before = answer.spec;
    }
    const ends = this.#cells.map(({ row, column, spill }) => ({
      row: row + (spill?.rows ?? 1),
      column: column + (spill?.columns ?? 1),
    }));
    return {
      rows: Math.max(...ends.map(({ row }) => row)),
      columns: Math.max(...ends.map(({ column }) => column)),
      widths: this.#widths(),
      cells: this.#cells,
      places: { inputs: this.#inputs, answers: this.#answers, verdicts: this.#verdicts },
      ...(this.#chart && { chart: this.#chart }),
    };
  }

  /** Text runs on over blank cells; beside a filled one its column has to hold it. */
  #widths(): number[] {
    const widths: number[] = [];
    for (const { row, column, content, look } of this.#cells) {
      if (typeof content !== "string" || content.startsWith("=") || look === "heading") continue;
      const isBesideAnother = this.#cells.some((other) => other.row === row && other.column === column + 1);
      if (isBesideAnother) widths[column] = Math.max(widths[column] ?? 0, Math.min(shownWidth(content), widest));
    }
    return Array.from(widths, (width) => width ?? 0);
  }

  #put(column: number, content: CellContent, rest: Partial<WrittenCell> = {}): void {
    this.#cells.push({ row: this.#row, column, content, ...rest });
  }

  #heading(): void {
    const { job, entries, wording } = this.#filled;
    const { messages } = wording;
    this.#put(0, messages.jobs[job.id]?.title ?? "", { look: "heading" });
    this.#put(1, "", { look: "heading" });
    this.#put(2, "", { look: "heading" });
    const titles = cautionsOf(job).map(({ id, title }) => messages.cautions[id]?.title ?? title);
    const examples = exampleLabels(fieldsOf(job), entries, wording);
    const notes = [
      ...(examples.length > 0 ? [messages.sheet.examples(examples)] : []),
      ...(titles.length > 0 ? [messages.sheet.cautions(messages.joined.parts(titles))] : []),
    ];
    for (const note of notes) {
      this.#row += 1;
      this.#put(0, note, { look: "caution" });
    }
    this.#row += 1;
  }

  #input(field: Field): void {
    const { entries, wording, readings } = this.#filled;
    const { messages } = wording;
    const { quantity, optional } = field.parameter;
    const content = this.#content(readings.get(field.name), 0, quantity);
    const format = this.#inputFormat(content, quantity);
    const unitWord = this.#unit(quantity);
    const behind = [unitWord, ...(optional ? [messages.unitWords.mayBeBlank] : [])].filter((word) => word !== "");
    this.#put(0, messages.inputs[field.name]?.label ?? field.name, { look: "label" });
    this.#put(2, messages.joined.list(behind), { look: "label" });
    const picked = entries[field.name]?.picked;
    this.#inputs.set(field.name, { row: this.#row, column: 1 });
    if (picked) {
      const reference = this.#reference(picked);
      this.#references.set(field.name, reference);
      // Shown here for reading; the formulas take it from where it is.
      this.#put(1, `=IF(${reference}="","",${reference})`, { format, look: "label" });
    } else {
      this.#references.set(field.name, this.#address(1));
      this.#put(1, content, { format, look: "input", isConstant: true });
    }
    this.#row += 1;
  }

  #list(fields: readonly Field[]): void {
    const { entries, wording, readings } = this.#filled;
    const { messages } = wording;
    for (const { name } of fields) {
      const picked = entries[name]?.picked;
      if (picked) this.#references.set(name, this.#reference(picked));
    }
    const countOf = ({ name }: Field) => {
      const reading = readings.get(name);
      return reading && "typed" in reading ? reading.typed.length : 0;
    };
    const typed = fields.filter((field) => countOf(field) > 0);
    if (typed.length === 0) return;
    const rows = Math.max(...typed.map(countOf));
    this.#row += 1;
    typed.forEach((field, column) => {
      this.#put(column, this.#headed(messages.inputs[field.name]?.label ?? field.name, field.parameter.quantity), {
        look: "label",
      });
    });
    this.#row += 1;
    typed.forEach(({ name }, column) => {
      const last = addressOf(this.#at.row + this.#row + rows - 1, this.#at.column + column);
      const first = this.#address(column);
      this.#references.set(name, first === last ? first : `${first}:${last}`);
    });
    for (let row = 0; row < rows; row += 1) {
      typed.forEach(({ name, parameter }, column) => {
        const content = this.#content(readings.get(name), row, parameter.quantity);
        const format = this.#inputFormat(content, parameter.quantity);
        this.#put(column, content, { format, look: "input", isConstant: true });
      });
      this.#row += 1;
    }
  }

  #answer({ spec, grid }: Pick<JobAnswer, "spec" | "grid">): void {
    const { job, wording } = this.#filled;
    const { messages } = wording;
    const { result } = spec;
    this.#put(0, messages.answers[spec.id] ?? spec.id, { look: "label" });
    if (result.shape === "cell") {
      const format = this.#answerFormat(result.quantity);
      for (const [name, feeding] of Object.entries(job.feeds ?? {})) {
        if (feeding === spec) this.#references.set(name, this.#address(1));
      }
      this.#answers.set(spec, { row: this.#row, column: 1 });
      this.#put(1, this.#formula(spec), { look: "answer", ...(format !== "General" && { format }) });
      this.#put(2, this.#unit(result.quantity), { look: "label" });
      this.#row += 1;
      return;
    }
    const columns =
      result.shape === "column"
        ? [{ name: "", quantity: result.quantity }]
        : columnsOf(spec, Math.max(grid[0]?.length ?? 0, result.columns.length));
    const rows = grid.length + (spec === job.functions.at(-1) ? (job.spareRows ?? 0) : 0);
    const verdict = result.shape === "table" && result.lastRow?.is === "verdict" ? result.lastRow : undefined;
    if (verdict) {
      // A verdict is longer than a column is wide.
      this.#put(0, messages.verdict, { look: "label" });
      this.#verdicts.set(spec, { row: this.#row, column: 1 });
      this.#put(1, `=${addressOf(this.#at.row + this.#row + 2 + grid.length - 1, this.#at.column)}`, {
        look: "answer",
      });
      this.#row += 1;
    } else {
      this.#row += 1;
    }
    if (result.shape !== "column") {
      columns.forEach(({ name, quantity, repeat }, column) => {
        const words = messages.columns[name] ?? name;
        this.#put(column, this.#headed(repeat === undefined ? words : `${words} ${repeat}`, quantity), {
          look: "label",
        });
      });
      this.#row += 1;
    }
    columns.forEach(({ quantity }, column) => {
      this.#put(column, "", { format: this.#answerFormat(quantity), look: "label", spill: { rows, columns: 1 } });
    });
    if (verdict) {
      columns.forEach((_, column) => {
        const { quantity = text } = verdict.columns[column] ?? {};
        const cell = { row: this.#row + grid.length - 1, column, format: this.#answerFormat(quantity) };
        this.#cells.push({ ...cell, content: "", look: "label" });
      });
    }
    this.#answers.set(spec, { row: this.#row, column: 0 });
    this.#put(0, this.#formula(spec), { spill: { rows, columns: columns.length } });
    this.#chart ??= this.#chartOf({ spec, grid }, columns);
    this.#row += rows;
  }

  /** Of the rows that the table has now, without its last one. */
  #chartOf({ spec, grid }: Pick<JobAnswer, "spec" | "grid">, columns: readonly AnswerColumn[]): Chart | undefined {
    const { wording } = this.#filled;
    const { result } = spec;
    const shown = chartedColumn(spec);
    if (result.shape !== "table" || shown === undefined) return undefined;
    const column = columns.findIndex(({ name }) => name === shown);
    const rows = ownRows(result, grid).length;
    if (rows === 0) return undefined;
    const table = { sheet: this.#at.sheet, row: this.#at.row + this.#row, column: this.#at.column, rows, columns: 1 };
    const { answers, columns: words, joined } = wording.messages;
    return {
      title: joined.told(`${answers[spec.id]}`, `${words[shown]}`),
      names: table,
      values: { ...table, column: table.column + column },
      beside: { ...table, columns: columns.length },
    };
  }

  #formula(spec: FunctionSpec): string {
    const given = spec.parameters.map((parameter) =>
      parameter === headers ? "FALSE" : (this.#references.get(parameter.name) ?? ""),
    );
    while (given.at(-1) === "") given.pop();
    return `=${namespace}.${spec.id}(${given.join(",")})`;
  }

  #content(reading: FieldReading | undefined, row: number, { choices }: Quantity): CellContent {
    const typed = reading && "typed" in reading ? reading.typed[row] : undefined;
    if (typed?.is !== "value") return "";
    const inWords = choices && this.#filled.wording.messages.sheet.choices[String(typed.value)];
    return inWords ?? typed.value;
  }

  /** What was typed is shown as it was typed. */
  #inputFormat(content: CellContent, quantity: Quantity): string {
    return formatOf(
      quantity,
      this.#filled.wording.unit,
      typeof content === "number" ? decimalsOf(content, quantity) : 0,
    );
  }

  /** A weight has the decimals of the scale at least. */
  #answerFormat(quantity: Quantity): string {
    const { unit, decimals } = this.#filled.wording;
    return formatOf(quantity, unit, isWeight(quantity) ? decimals : 0);
  }

  /** A heading with the unit of what is below it. */
  #headed(words: string, quantity: Quantity): string {
    const behind = this.#unit(quantity);
    return behind === "" ? words : this.#filled.wording.messages.joined.withUnit(words, behind);
  }

  /** The unit, where the number format does not show it. */
  #unit(quantity: Quantity): string {
    const { messages, unit } = this.#filled.wording;
    return isInHundredths(quantity) ? "" : unitOf(quantity, unit, messages);
  }

  #address(column: number): string {
    return addressOf(this.#at.row + this.#row, this.#at.column + column);
  }

  #reference(area: CellArea): string {
    const full = referenceTo(area);
    return area.sheet === this.#at.sheet ? full.slice(full.lastIndexOf("!") + 1) : full;
  }
}

/** In characters. */
const widest = 34;
