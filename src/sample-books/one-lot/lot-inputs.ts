import type { Style } from "../../workbook/workbook";
import * as look from "../look";
import type { SheetBuilder } from "../sheet-builder";
import { firstRoundRow, found, given, lastTurnRow, wrapRow } from "./places";
import { sampleMark, sampleMarkAlone } from "./sample-values";

const { grams, percent } = look;

/** A cell to type in, what the invented farm has in it, and what stands around it. */
export interface LotInput {
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

const ofLot: readonly LotInput[] = [
  { address: "B5", label: "Lot", value: 14, style: { ...look.input("0"), align: "left" }, unit: "" },
  { address: "B6", label: "Picked", value: 45760, style: { ...look.input(look.date), align: "left" }, unit: "" },
];

const weighed: readonly LotInput[] = [
  typed(given.fresh, "Fresh weight", 1240, grams, "g", {
    note: "Straight from the baskets, before anything has dried or been picked over.",
  }),
  typed(given.aired, "After airing overnight", 1136.2, grams, "g", {
    whileBlank: "assumed: not aired",
    cannotBe: [isMore(given.aired, given.fresh), "g: more than the fresh leaf?"],
    note: "Airing takes water only: the dry matter is the same as before, in less weight. The fresh leaf's moisture no longer holds for this weight. Leave it blank where nothing was aired: the fresh weight stands in for it, marked as assumed.",
  }),
  typed(given.siftOuts, "Sift-outs", 28.9, grams, "g", {
    whileBlank: "assumed: see E14",
    note: "Leaf taken out before the pan, weighed after airing. It takes its dry matter along. Left blank, it is what the leaf for the pan leaves over, or nothing where that is blank as well.",
  }),
  typed(given.forPan, "For the pan (sifted)", 1106.6, grams, "g", {
    whileBlank: "assumed: all the rest",
    cannotBe: [isMore(given.forPan, found.aired), "g: more than there was?"],
    note: "In whole steps of the scale, since the charges are. Left blank, it is the leaf after airing less the sift-outs.",
  }),
  typed(given.finished, "Finished weight written down", 279.6, grams, "g", {
    whileBlank: "g, blank until weighed",
    note: "Leave it blank while the lot is in the making: the answers that need it stay empty and nothing breaks.",
  }),
  typed(given.finishedMoisture, "Finished moisture, measured", 0.052, percent, "", {
    whileBlank: "blank: the last target",
    note: "From an oven test. While it is blank, the target of the last round stands in for it.",
  }),
  typed(given.freshMoisture, "Fresh moisture, measured", null, percent, "", {
    whileBlank: "blank: from past lots",
    note: "An oven test of this morning's leaf beats any assumption. While it is blank, the median of your past lots is used and marked as assumed.",
  }),
];

const panAndScale: readonly LotInput[] = [
  typed(given.panLoad, "Pan load wanted", 280, grams, "g", {
    note: "The lot is split into equal charges that come as near to this as they can.",
  }),
  typed(given.largestLoad, "Largest pan load", 300, grams, "g", {
    whileBlank: "g, may be blank",
    note: "No charge is made heavier than this.",
  }),
  typed(given.readability, "Scale reads in steps of", 0.1, grams, "g", {
    note: "Charges are given in whole steps of the scale and add up exactly.",
  }),
];

const rounds: readonly (readonly [name: string, target: number, kind: string])[] = [
  ["First firing", 0.31, "water"],
  ["Second firing", 0.47, "moisture"],
  ["Third firing", 0.33, "moisture"],
  ["Final drying", 0.055, "moisture"],
];

const losses: readonly LotInput[] = [
  typed(given.usualLoss, "Usually", 0.03, percent, "of dry matter", {
    note: "Dust, crumbs and what the leaf breathes away between the pan and the tin. An assumption of this invented farm: put in your own.",
  }),
  typed(given.leastLoss, "At the least", 0.01, percent, "of dry matter"),
  typed(given.mostLoss, "At the most", 0.06, percent, "of dry matter", {
    note: "Take it from your own good lots. A finished weight that would need a greater loss is reported.",
  }),
];

const errors: readonly LotInput[] = [
  typed(given.weightError, "Weights, ±", 0.2, "0.00", "g, standard error", {
    note: "Of the large weighings, one standard error. Two standard errors either side are allowed for.",
  }),
  typed(given.freshMoistureError, "Fresh moisture, ±", 0.01, percent, "1.0% is one point", {
    note: "One standard error. One point is an assumption: the spread of your past lots says how good it is.",
  }),
  typed(given.finishedMoistureError, "Finished moisture, ±", 0.003, percent, "0.3% is 0.3 points"),
];

const wrap: readonly LotInput[] = [
  typed(given.wrapStart, "Wrapped at", 14.25 / 24, look.clock, "hours and minutes"),
  typed(given.wrapLasts, "Stays wrapped for", 3.5 / 24, look.span, "hours and minutes", {
    note: "Warm, moist leaf stays in the range that food-safety rules watch: set an end time and keep to it.",
  }),
  typed(given.turnEvery, "Turned every", 35 / 1440, look.span, "hours and minutes"),
];

const targets: readonly LotInput[] = rounds.map(([name, value], index) =>
  typed(`B${firstRoundRow + index}`, `Target: ${name}`, value, percent, ""),
);

/** Every number of the sheet Lot that the sample comes with, in the order of their rows. */
export const sampleInputs: readonly (LotInput & { readonly value: number })[] = [
  ...[...ofLot, ...weighed, ...panAndScale, ...targets, ...losses, ...errors, ...wrap],
].filter((input): input is LotInput & { value: number } => input.value !== null);

/** What is typed, in the first columns. */
export function lotInputs(builder: SheetBuilder): void {
  const { put } = builder;
  const heading = (row: number, text: string) => {
    put(`A${row}`, text, look.section);
    for (const column of "BCD") put(`${column}${row}`, null, look.section);
  };
  const block = (row: number, text: string, inputs: readonly LotInput[]) => {
    heading(row, text);
    for (const input of inputs) line(builder, input);
  };
  block(4, "The lot", ofLot);
  block(8, "Weighed", weighed);
  block(17, "The pan and the scale", panAndScale);
  heading(22, "Targets, round by round");
  put("A23", "Round", look.columnHeadLeft);
  put("B23", "Target", look.columnHead);
  put(
    "C23",
    " What the target means",
    look.columnHeadLeft,
    "moisture: the moisture to come down to.\nwater: this share of the water must go.\nweight: this share of the weight must go.\npoints: the moisture must fall by this much.",
  );
  for (const [index, [name, target, kind]] of rounds.entries()) {
    const row = firstRoundRow + index;
    put(`A${row}`, name, look.input());
    put(`B${row}`, target, look.input(percent));
    put(`C${row}`, kind, { ...look.input(), align: "center" });
    put(`D${row}`, `=${sampleMarkAlone(`B${row}`)}`, look.mark);
  }
  block(29, "Dry matter lost in making", losses);
  block(34, "How sure the readings are", errors);
  block(wrapRow, "The wrap", wrap);
  turns(builder);
}

/** Label, cell and unit; the unit says too whether the number is still the sample's. */
function line(
  { put }: SheetBuilder,
  { address, label, value, style, unit, whileBlank, cannotBe, note }: LotInput,
): void {
  const row = address.slice(1);
  put(`A${row}`, label, look.label);
  put(address, value, style, note);
  const filled = value === null ? `" ${unit}"` : `" ${unit}"&${sampleMark(address)}`;
  const known = cannotBe === undefined ? filled : `IF(${cannotBe[0]}," ${cannotBe[1]}",${filled})`;
  const shown = whileBlank === undefined ? known : `IF(ISBLANK(${address})," ${whileBlank}",${known})`;
  put(`C${row}`, `=${shown}`, look.unit);
}

function turns({ put, styleRest }: SheetBuilder): void {
  const { wrapStart, wrapLasts, turnEvery } = given;
  const needed = [wrapStart, wrapLasts].map((cell) => `ISBLANK(${cell}),ISTEXT(${cell})`).join(",");
  put("A46", "Unwrap at", look.label);
  put(found.unwrap, `=IF(OR(${needed}),"",${wrapStart}+${wrapLasts})`, look.result(look.clock));
  put("A47", "Turn at", look.label, "One formula that spills. No turn falls on the unwrapping itself.");
  put(found.firstTurn, `=TEA.TURNTIMES(${wrapStart},${wrapLasts},${turnEvery})`, look.result(look.clock));
  styleRest(`B48:B${lastTurnRow}`, look.result(look.clock));
}
