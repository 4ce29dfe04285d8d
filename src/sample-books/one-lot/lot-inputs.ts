import { textInFormula } from "../../words/in-formula";
import type { OneLotWords, SampleWords } from "../../words/samples";
import type { Style } from "../../workbook/workbook";
import * as look from "../look";
import type { SheetBuilder } from "../sheet-builder";
import { firstRoundRow, found, given, lastTurnRow, wrapRow } from "./places";
import { sampleMark } from "./sample-values";

const { grams, percent } = look;

/** A cell to type in, what the invented farm has in it, and what stands around it. */
interface LotInput {
  readonly address: string;
  readonly label: string;
  readonly value: number | null;
  readonly style: Style;
  readonly unit: string;
  /** Said instead of the unit while the cell is blank. */
  readonly whileBlank?: string;
  /** What cannot be, as a condition, and what is said then instead of the unit. */
  readonly cannotBe?: readonly [condition: string, said: string];
  readonly note?: string;
}

const typed = (
  address: string,
  label: string,
  value: number | null,
  format: string,
  unit: string,
  rest: Pick<LotInput, "whileBlank" | "cannotBe" | "note"> = {},
): LotInput => ({ address, label, value, style: look.input(format), unit, ...rest });

/** Whether one weight exceeds another by more than a step of the scale. */
const isMore = (one: string, other: string): string =>
  `IF(AND(ISNUMBER(${one}),ISNUMBER(${other}),ISNUMBER(${given.fresh})),${one}>${other}+N(${given.readability}),FALSE)`;

/** Of the rounds, what the invented farm has for targets, and in what they are counted. */
const rounds = [
  ["first", 0.31, "water"],
  ["second", 0.47, "moisture"],
  ["third", 0.33, "moisture"],
  ["last", 0.055, "moisture"],
] as const;

type Block = "lot" | "weighed" | "pan" | "losses" | "errors" | "wrap";

/** What is typed, block by block. The rounds have a table of their own. */
function inputsOf({ lot: said }: OneLotWords): Readonly<Record<Block, readonly LotInput[]>> {
  const { grams: g, ofDryMatter, gramsError, onePoint, threeTenths, time } = said.units;
  const blanks = ({ whileBlank, note }: { readonly whileBlank: string; readonly note: string }) => ({
    whileBlank,
    note,
  });
  return {
    lot: [
      { address: "B5", label: said.lot, value: 14, style: { ...look.input("0"), align: "left" }, unit: "" },
      { address: "B6", label: said.picked, value: 45760, style: { ...look.input(look.date), align: "left" }, unit: "" },
    ],
    weighed: [
      typed(given.fresh, said.fresh.label, 1240, grams, g, { note: said.fresh.note }),
      typed(given.aired, said.aired.label, 1136.2, grams, g, {
        ...blanks(said.aired),
        cannotBe: [isMore(given.aired, given.fresh), said.aired.tooMuch],
      }),
      typed(given.siftOuts, said.siftOuts.label, 28.9, grams, g, blanks(said.siftOuts)),
      typed(given.forPan, said.forPan.label, 1106.6, grams, g, {
        ...blanks(said.forPan),
        cannotBe: [isMore(given.forPan, found.aired), said.forPan.tooMuch],
      }),
      typed(given.finished, said.finished.label, 279.6, grams, g, blanks(said.finished)),
      typed(given.finishedMoisture, said.finishedMoisture.label, 0.052, percent, "", blanks(said.finishedMoisture)),
      typed(given.freshMoisture, said.freshMoisture.label, null, percent, "", blanks(said.freshMoisture)),
    ],
    pan: [
      typed(given.panLoad, said.panLoad.label, 280, grams, g, { note: said.panLoad.note }),
      typed(given.largestLoad, said.largestLoad.label, 300, grams, g, blanks(said.largestLoad)),
      typed(given.readability, said.readability.label, 0.1, grams, g, { note: said.readability.note }),
    ],
    losses: [
      typed(given.usualLoss, said.usualLoss.label, 0.03, percent, ofDryMatter, { note: said.usualLoss.note }),
      typed(given.leastLoss, said.leastLoss, 0.01, percent, ofDryMatter),
      typed(given.mostLoss, said.mostLoss.label, 0.06, percent, ofDryMatter, { note: said.mostLoss.note }),
    ],
    errors: [
      typed(given.weightError, said.weightError.label, 0.2, "0.00", gramsError, { note: said.weightError.note }),
      typed(given.freshMoistureError, said.freshMoistureError.label, 0.01, percent, onePoint, {
        note: said.freshMoistureError.note,
      }),
      typed(given.finishedMoistureError, said.finishedMoistureError, 0.003, percent, threeTenths),
    ],
    wrap: [
      typed(given.wrapStart, said.wrapStart, 14.25 / 24, look.clock, time),
      typed(given.wrapLasts, said.wrapLasts.label, 3.5 / 24, look.span, time, { note: said.wrapLasts.note }),
      typed(given.turnEvery, said.turnEvery, 35 / 1440, look.span, time),
    ],
  };
}

/** Every number of the sheet Lot that the sample comes with. */
export function sampleInputs(words: OneLotWords): readonly (LotInput & { readonly value: number })[] {
  const { rounds: names, targetOf } = words.lot;
  const targets = rounds.map(([round, value], index) =>
    typed(`B${firstRoundRow + index}`, targetOf(names[round]), value, percent, ""),
  );
  return [...Object.values(inputsOf(words)).flat(), ...targets].filter(
    (input): input is LotInput & { value: number } => input.value !== null,
  );
}

/** What is typed, in the first columns. */
export function lotInputs(builder: SheetBuilder, words: SampleWords): void {
  const { put } = builder;
  const { lot: said, sample } = words.oneLot;
  const heading = (row: number, text: string) => {
    put(`A${row}`, text, look.section);
    for (const column of "BCD") put(`${column}${row}`, null, look.section);
  };
  const inputs = inputsOf(words.oneLot);
  const block = (row: number, name: Block) => {
    heading(row, said.headings[name]);
    for (const input of inputs[name]) line(builder, input, `  ${sample.mark}`);
  };
  block(4, "lot");
  block(8, "weighed");
  block(17, "pan");
  heading(22, said.headings.targets);
  put("A23", said.round, look.columnHeadLeft);
  put("B23", said.target, look.columnHead);
  put("C23", said.targetKind.heading, look.columnHeadLeft, said.targetKind.note);
  for (const [index, [round, target, kind]] of rounds.entries()) {
    const row = firstRoundRow + index;
    put(`A${row}`, said.rounds[round], look.input());
    put(`B${row}`, target, look.input(percent));
    put(`C${row}`, words.choices[kind] ?? kind, { ...look.input(), align: "center" });
    put(`D${row}`, `=${sampleMark(`B${row}`, sample.mark)}`, look.mark);
  }
  block(29, "losses");
  block(34, "errors");
  block(wrapRow, "wrap");
  turns(builder, said);
}

/** Label, cell and unit; the unit says too whether the number is still the sample's. */
function line(
  { put }: SheetBuilder,
  { address, label, value, style, unit, whileBlank, cannotBe, note }: LotInput,
  mark: string,
): void {
  const row = address.slice(1);
  const spaced = (text: string) => textInFormula(` ${text}`);
  put(`A${row}`, label, look.label);
  put(address, value, style, note);
  const filled = value === null ? spaced(unit) : `${spaced(unit)}&${sampleMark(address, mark)}`;
  const known = cannotBe === undefined ? filled : `IF(${cannotBe[0]},${spaced(cannotBe[1])},${filled})`;
  const shown = whileBlank === undefined ? known : `IF(ISBLANK(${address}),${spaced(whileBlank)},${known})`;
  put(`C${row}`, `=${shown}`, look.unit);
}

function turns({ put, styleRest }: SheetBuilder, said: OneLotWords["lot"]): void {
  const { wrapStart, wrapLasts, turnEvery } = given;
  const needed = [wrapStart, wrapLasts].map((cell) => `ISBLANK(${cell}),ISTEXT(${cell})`).join(",");
  put("A46", said.unwrap, look.label);
  put(found.unwrap, `=IF(OR(${needed}),"",${wrapStart}+${wrapLasts})`, look.result(look.clock));
  put("A47", said.turns.label, look.label, said.turns.note);
  put(found.firstTurn, `=TEA.TURNTIMES(${wrapStart},${wrapLasts},${turnEvery})`, look.result(look.clock));
  styleRest(`B48:B${lastTurnRow}`, look.result(look.clock));
}
