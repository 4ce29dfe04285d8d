import { textInFormula } from "../../words/in-formula";
import type { OneLotWords } from "../../words/samples";
import type { Sheet, Style } from "../../workbook/workbook";
import { grams } from "../look";
import { type SheetBuilder, sheetBuilder } from "../sheet-builder";
import { cardCharges, firstRoundRow, found, given, lastPlanRow, onLot, planRow, roundColumns, rounds } from "./places";
import { cardCells, onSampleSheet, told } from "./sample-values";

/** As many charges as fit on an A5 page in type that is read at arm's length. */
const chargesOnCard = cardCharges / 2;

const ink = "#000000";
const roundName: Style = { color: ink, size: 13 };
const chargeHead: Style = { color: ink, size: 14, bold: true, fill: "#e6ebe6" };
const target: Style = { color: ink, size: 15, bold: true, format: `${grams}"  "`, align: "right" };
const box: Style = { size: 14, border: "thin" };
const head: Style = { color: "#444444", size: 10, align: "right" };
const small: Style = { color: "#222222", size: 8, wrap: true };

const sampleLine: Style = { color: "#8a2c00", size: 8.5, bold: true, wrap: true };

/** The card for the first charges, and its continuation: to print on A5 and fill in at the pan. */
export const cardSheets = (words: OneLotWords): Sheet[] => [
  cardSheet("Firing card", 1, words),
  cardSheet("Firing card, continued", chargesOnCard + 1, words),
];

function cardSheet(name: keyof OneLotWords["card"]["titles"], firstCharge: number, words: OneLotWords): Sheet {
  const { card: said, footers } = words;
  const builder = sheetBuilder(name);
  const { put, merge, widths, height, styleRest } = builder;
  const lot = onLot("B5");
  put("A1", `=${said.titles[name](`IF(${lot}="","",${lot})`)}`, { color: ink, size: 17, bold: true });
  height(1, 26);
  put("A2", notice(firstCharge, said), { color: "#444444", size: 9.5 });
  height(2, 13);
  put("A3", whatIsSample(said), sampleLine);
  styleRest("B3:D3", sampleLine);
  merge("A3:D3");
  height(3, 21);
  put("B4", said.shouldRead, head);
  put("C4", said.reads, { ...head, align: "center" });
  put("D4", said.time, { ...head, align: "center" });
  height(4, 13);
  const firstRow = 5;
  for (let index = 0; index < chargesOnCard; index += 1) {
    charge(builder, firstRow + index * (rounds + 2), firstCharge + index, said);
  }

  const cautionRow = firstRow + chargesOnCard * (rounds + 2);
  for (const [index, text] of said.cautions.entries()) {
    const row = cautionRow + index;
    put(`A${row}`, text, small);
    styleRest(`B${row}:D${row}`, small);
    merge(`A${row}:D${row}`);
    height(row, 21);
  }
  widths(23, 19, 17, 14);
  return builder.sheet({
    page: {
      paper: "A5",
      landscape: false,
      fitToOnePageWide: true,
      footer: footers.card,
      printArea: { row: 0, column: 0, rows: cautionRow + said.cautions.length - 1, columns: 4 },
    },
  });
}

/** The head of a charge and a line for each round; all stay blank where the plan has no such charge. */
function charge(
  { put, styleRest, height }: SheetBuilder,
  row: number,
  number: number,
  said: OneLotWords["card"],
): void {
  const count = onLot(found.charges);
  const planned = (expression: string) => `=IF(ISNUMBER(${count}),IF(${count}<${number},"",${expression}),"")`;
  const ofPlan = (column: string) => `INDEX(${onLot(`${column}${planRow}:${column}${lastPlanRow}`)},${number})`;
  put(`A${row}`, planned(textInFormula(said.charge(number))), chargeHead);
  put(`B${row}`, planned(ofPlan("F")), { ...chargeHead, format: said.load(grams), align: "right" });
  styleRest(`C${row}:D${row}`, chargeHead);
  height(row, 19.5);
  for (const [index, column] of roundColumns.entries()) {
    const line = row + 1 + index;
    put(`A${line}`, planned(onLot(`A${firstRoundRow + index}`)), roundName);
    put(`B${line}`, planned(ofPlan(column)), target);
    styleRest(`C${line}:D${line}`, box);
    height(line, 19.5);
  }
  height(row + rounds + 1, 5);
}

/** A card at the pan must not pass invented weights for the maker's. */
function whatIsSample(said: OneLotWords["card"]): string {
  const labels = onSampleSheet(told.onCard);
  const every = `${onSampleSheet(told.countOnCard)}=${cardCells.length}`;
  const past = `IF(ISBLANK(${onLot(given.freshMoisture)}),${onSampleSheet(told.pastLots)},0)`;
  const between = `IF(${labels}="","",${textInFormula(said.between)})`;
  const andPast = `IF(${past}>0,${between}&${textInFormula(said.pastLots)},"")`;
  const list = said.sampleOnes(`${labels}&${andPast}`);
  const counted = said.sampleCount(onSampleSheet(told.countOnCard), cardCells.length);
  const count = `${counted}&IF(${past}>0,${textInFormula(said.soArePastLots)},"")`;
  const some = `IF(LEN(${list})>${said.longest},${count},${list})`;
  return `=IF(${every},${textInFormula(said.everySample)},IF(OR(${labels}<>"",${past}>0),${some},""))`;
}

/** Says which charges the plan has, and where the rest stand. */
function notice(firstCharge: number, said: OneLotWords["card"]): string {
  const count = onLot(found.charges);
  const last = firstCharge + chargesOnCard - 1;
  const tooMany = said.tooMany(count, cardCharges);
  const more = said.onNext(last + 1, count);
  const usual = said.usual(count);
  const here =
    firstCharge === 1
      ? `IF(${count}>${last},${more},${usual})`
      : `IF(${count}<${firstCharge},${textInFormula(said.notNeeded)},${usual})`;
  const waiting = textInFormula(said.waits);
  const assumed = onLot(found.assumed);
  return `=IF(ISNUMBER(${count}),IF(${count}>${cardCharges},${tooMany},${here})&IF(${assumed}="","",${said.assumed(assumed)}),${waiting})`;
}
