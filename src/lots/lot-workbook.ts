/** A lot as a workbook: each of its jobs with live formulas, the card with what was noted, and every weighing. */
import type { PhraseGrid } from "../cells/bind";
import { CellError } from "../cells/values";
import { chargePlan } from "../core/charges/charge-plan";
import { namespace } from "../core/namespace";
import { Phrase } from "../core/phrases";
import { moisture, weight } from "../core/quantities";
import { looks } from "../host/looks";
import { freeSheetName } from "../host/sheet-name";
import { cautionsOf, type Job } from "../jobs/job";
import { answersOf, type JobAnswer, readingsOf } from "../jobs/job-answer";
import type { BlockOfJob } from "../jobs/job-block";
import { blockAt } from "../jobs/job-block";
import { jobs } from "../jobs/jobs";
import { formatOf } from "../jobs/shown-number";
import type { Messages } from "../words/messages";
import type { PhoneWords } from "../words/phone";
import { addressOf, columnName } from "../workbook/addresses";
import { sheetInFormula } from "../workbook/references";
import type { Cell, Sheet, Style, Workbook } from "../workbook/workbook";
import { fewestTimed, readingSays, readingsOfCharge, readWeight, readyWhen, weightRead } from "./charge-readings";
import { type FiringPlan, firingPlan, planningJob } from "./firing-plan";
import { entriesIn, type Lot } from "./lot";
import { spreadsheetTime } from "./spreadsheet-time";

interface LotWords {
  readonly messages: Messages;
  readonly phone: PhoneWords;
}

export function lotWorkbook(lot: Lot, words: LotWords): Workbook {
  const typed = jobs.filter(({ id }) => Object.keys(entriesIn(lot, id)).length > 0);
  const nameSheet = namer();
  const sheetsOfJobs = typed.map((job) =>
    sheetOfJob(lot, job, words, nameSheet(words.messages.jobs[job.id]?.title ?? job.id)),
  );
  const plan = firingPlan(lot, wordingOf(lot, words));
  const planSheet = sheetsOfJobs.find(({ job }) => job === planningJob);
  const cardName = plan && planSheet && nameSheet(words.phone.sheet.card);
  const weighings = weighingsSheet(lot, words, nameSheet(words.phone.sheet.weighings));
  const card = cardName && cardSheet({ name: cardName, lot, words, plan, planSheet, weighings });
  const sheets = [
    ...sheetsOfJobs.map(({ sheet }) => sheet),
    ...(card ? [card] : []),
    ...(lot.weighings.length > 0 ? [weighings.sheet] : []),
  ];
  return { name: lot.name, sheets };
}

const wordingOf = ({ unit }: Lot, { messages }: LotWords) => ({ messages, unit });

/** Names the sheets of one workbook. */
function namer(): (wish: string) => string {
  const taken: string[] = [];
  return (wish) => {
    const name = freeSheetName(wish, taken);
    taken.push(name);
    return name;
  };
}

interface SheetOfJob {
  readonly job: Job;
  readonly sheet: Sheet;
  readonly block: BlockOfJob;
}

function sheetOfJob(lot: Lot, job: Job, words: LotWords, name: string): SheetOfJob {
  const wording = wordingOf(lot, words);
  const entries = entriesIn(lot, job.id);
  const readings = readingsOf(job, entries, wording);
  const answers = answersOf(job, readings, {}) ?? [];
  const block = blockAt({ job, entries, readings, answers, wording }, { sheet: name, row: 0, column: 0 });
  return { job, block, sheet: sheetOf(name, cellsOf(block, answers), block.widths) };
}

/** The cells of a block with the results that their formulas have now. */
function cellsOf({ cells: written, places }: BlockOfJob, answers: readonly JobAnswer[]): Cell[] {
  const cells = new Map<string, Cell>();
  const put = (cell: Cell) => {
    const key = addressOf(cell.row, cell.column);
    const before = cells.get(key);
    cells.set(key, {
      ...before,
      ...cell,
      ...((before?.style ?? cell.style) && { style: { ...before?.style, ...cell.style } }),
    });
  };
  for (const { row, column, look, format, spill, content } of written) {
    const style: Style = { ...(look && looks[look]), ...(format !== undefined && { format }) };
    const rows = content === "" ? (spill?.rows ?? 1) : 1;
    for (let down = 0; down < rows; down += 1) put({ row: row + down, column, style });
  }
  const results = new Map<string, PhraseGrid>();
  for (const { spec, grid } of answers) {
    const [answer, verdict] = [places.answers.get(spec), places.verdicts.get(spec)];
    if (answer) results.set(addressOf(answer.row, answer.column), grid);
    if (verdict) results.set(addressOf(verdict.row, verdict.column), [[grid.at(-1)?.[0] ?? ""]]);
  }
  for (const { row, column, content } of written) {
    if (content === "") continue;
    const result = results.get(addressOf(row, column));
    if (result === undefined) put({ row, column, value: content });
    else for (const cell of answered(row, column, String(content), result)) put(cell);
  }
  return [...cells.values()];
}

/** A formula with its answer, also where that spills. Cells speak English. */
function answered(row: number, column: number, formula: string, grid: PhraseGrid): Cell[] {
  const columns = grid[0]?.length ?? 1;
  const spills = grid.length * columns > 1;
  return grid.flatMap((values, down) =>
    values.map((value, right): Cell => {
      const isFirst = down === 0 && right === 0;
      return {
        row: row + down,
        column: column + right,
        value: value instanceof CellError ? value.code : value instanceof Phrase ? value.toString() : value,
        ...(isFirst && { formula }),
        ...(isFirst && spills && { spill: { rows: grid.length, columns } }),
      };
    }),
  );
}

interface WeighingsSheet {
  readonly sheet: Sheet;
  /** The rows of the readings of one round of a charge, which stand together. */
  readonly rowsOf: ReadonlyMap<string, { readonly first: number; readonly last: number }>;
}

const roundKey = (charge: number, round: number): string => `${charge}/${round}`;
const clockFormat = "hh:mm";
const momentFormat = "yyyy-mm-dd hh:mm";

/**
 * Every weighing in the order of the charges, as it can be charted and sorted elsewhere. What cannot be read stands
 * behind the readings of its round, where no formula reads it.
 */
function weighingsSheet(lot: Lot, { messages, phone }: LotWords, name: string): WeighingsSheet {
  const { sheet: words } = phone;
  const { joined } = messages;
  const unit = messages.units[lot.unit];
  const sheet = sheetFiller(name);
  sheet.put(0, 0, joined.told(words.weighings, lot.name), looks.heading);
  const headings = [words.charge, words.target, words.time, joined.withUnit(words.reads, unit)];
  for (const [column, heading] of headings.entries()) sheet.put(2, column, heading, looks.label);
  const rowsOf = new Map<string, { first: number; last: number }>();
  const all = lot.weighings
    .map((weighing) => ({ ...weighing, read: weightRead(weighing, lot) }))
    .sort(
      (one, other) =>
        one.charge - other.charge ||
        one.round - other.round ||
        Number(one.read === undefined) - Number(other.read === undefined) ||
        one.at - other.at,
    );
  for (const [index, { charge, round, text, read, at }] of all.entries()) {
    const row = 3 + index;
    sheet.put(row, 0, charge, looks.input);
    sheet.put(row, 1, round, looks.input);
    sheet.put(row, 2, spreadsheetTime(at), { ...looks.input, format: momentFormat });
    sheet.put(row, 3, read ?? text, { ...looks.input, format: formatOf(weight, lot.unit) });
    if (read === undefined) continue;
    const key = roundKey(charge, round);
    rowsOf.set(key, { first: rowsOf.get(key)?.first ?? row, last: row });
  }
  return { sheet: sheet.sheet([10, 10, 18, 14]), rowsOf };
}

interface CardOf {
  readonly name: string;
  readonly lot: Lot;
  readonly words: LotWords;
  readonly plan: FiringPlan;
  readonly planSheet: SheetOfJob;
  readonly weighings: WeighingsSheet;
}

/** The firing card: a row for each charge and target, with what the scale read and when. */
function cardSheet({ name, lot, words, plan, planSheet, weighings }: CardOf): Sheet {
  const { messages, phone } = words;
  const { sheet: said } = phone;
  const unit = messages.units[lot.unit];
  const from = sheetInFormula(planSheet.sheet.name);
  const { joined } = messages;
  const { answers, inputs } = planSheet.block.places;
  const table = answers.get(chargePlan);
  const moistureAt = inputs.get("moisture");
  if (table === undefined || moistureAt === undefined) throw new Error("the plan's sheet has no plan");
  const ofPlan = (charge: number, column: number): string =>
    `${from}!${addressOf(table.row + charge, table.column + column)}`;
  const moistureCell = `${from}!$${columnName(moistureAt.column)}$${moistureAt.row + 1}`;
  const grams = formatOf(weight, lot.unit);
  const sheet = sheetFiller(name);
  sheet.put(0, 0, joined.told(said.card, lot.name), looks.heading);
  const titles = cautionsOf(planningJob).map(({ id, title }) => messages.cautions[id]?.title ?? title);
  sheet.put(1, 0, messages.sheet.cautions(joined.parts(titles)), looks.caution);
  sheet.put(2, 0, said.noClaim, looks.caution);
  const inUnit = (heading: string) => joined.withUnit(heading, unit);
  const headings = [
    said.charge,
    said.target,
    inUnit(said.load),
    inUnit(said.shouldRead),
    inUnit(said.reads),
    said.time,
    inUnit(said.left),
    said.moisture,
    said.ready,
  ];
  for (const [column, heading] of headings.entries()) sheet.put(4, column, heading, looks.label);
  let row = 4;
  for (const charge of plan.charges) {
    const readings = readingsOfCharge(lot, charge.number);
    for (const [index, target] of charge.targets.entries()) {
      row += 1;
      const round = index + 1;
      const inRound = readings.filter((reading) => reading.round === round);
      const last = inRound.at(-1);
      const cell = (column: number) => addressOf(row, column);
      sheet.put(row, 0, charge.number, looks.label);
      sheet.put(row, 1, plan.rounds[index] ?? round, looks.label);
      sheet.answer(row, 2, `=${ofPlan(charge.number - 1, 1)}`, charge.load, grams);
      sheet.answer(row, 3, `=${ofPlan(charge.number - 1, 1 + round)}`, target, grams);
      sheet.put(row, 4, last?.weight, { ...looks.input, format: grams });
      sheet.put(row, 5, last && spreadsheetTime(last.at), { ...looks.input, format: clockFormat });
      const says = last && readingSays(last.weight, charge, round, plan);
      const moist = says && (says.moisture instanceof CellError ? says.moisture.code : says.moisture);
      sheet.answer(row, 6, `=IF(ISNUMBER(${cell(4)}),${cell(4)}-${cell(3)},"")`, says?.left ?? "", grams);
      sheet.answer(
        row,
        7,
        `=IF(ISNUMBER(${cell(4)}),${namespace}.MOISTURENOW(${cell(2)},${moistureCell},${cell(4)}),"")`,
        moist ?? "",
        formatOf(moisture, lot.unit),
      );
      const rows = weighings.rowsOf.get(roundKey(charge.number, round));
      if (rows && inRound.length >= fewestTimed)
        sheet.forecast(row, 8, {
          lot,
          charge: charge.number,
          rows,
          weighings,
          target,
          inRound,
          targetCell: cell(3),
          grams,
        });
    }
  }
  return sheet.sheet([10, 12, 12, 14, 12, 10, 14, 12, 12, 12, 12, 12]);
}

interface Forecast {
  readonly lot: Lot;
  readonly charge: number;
  readonly rows: { readonly first: number; readonly last: number };
  readonly weighings: WeighingsSheet;
  readonly target: number;
  readonly inRound: ReturnType<typeof readingsOfCharge>;
  readonly targetCell: string;
  readonly grams: string;
}

/** Fills a sheet cell by cell. */
function sheetFiller(name: string) {
  const cells: Cell[] = [];
  const put = (row: number, column: number, value: Cell["value"], style: Style): void => {
    cells.push({ row, column, style, ...(value !== undefined && { value }) });
  };
  const answer = (row: number, column: number, formula: string, value: number | string, format: string): void => {
    cells.push({ row, column, formula, value, style: { ...looks.answer, format } });
  };
  return {
    put,
    answer,
    forecast(
      row: number,
      column: number,
      { lot, charge, rows, weighings, target, inRound, targetCell, grams }: Forecast,
    ) {
      const typed = lot.endWeights[String(charge)];
      const read = typed && readWeight(typed.text, typed.unit, lot.unit);
      const endWeight = read && read.is === "value" ? Number(read.value) : undefined;
      const sheet = sheetInFormula(weighings.sheet.name);
      const list = (at: string) => `${sheet}!$${at}$${rows.first + 1}:$${at}$${rows.last + 1}`;
      const end = endWeight === undefined ? "" : `,${endWeight}`;
      const formula = `=${namespace}.DRYINGTIME(${list("C")},${list("D")},${targetCell}${end})`;
      for (const cell of answered(row, column, formula, readyWhen(inRound, target, endWeight)?.cells ?? [])) {
        const format = cell.column === column + 3 ? grams : clockFormat;
        cells.push({ ...cell, style: { ...looks.answer, format } });
      }
    },
    sheet: (widths: readonly number[]): Sheet => sheetOf(name, cells, widths),
  };
}

const sheetOf = (name: string, cells: readonly Cell[], widths: readonly number[] = []): Sheet => ({
  name,
  cells: [...cells],
  columnWidths: Object.fromEntries(widths.flatMap((width, column) => (width > 9 ? [[column, width + 1]] : []))),
  rowHeights: {},
  merges: [],
});
