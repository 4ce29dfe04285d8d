import type { Sheet, Style } from "../../workbook/workbook";
import { grams } from "../look";
import { type SheetBuilder, sheetBuilder } from "../sheet-builder";
import { cardCharges, firstRoundRow, found, given, lastPlanRow, onLot, planRow, roundColumns, rounds } from "./places";
import { cardCells, onSampleSheet, sampleSheet, told } from "./sample-values";

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

/** What the page says about safety, in as few words as a card has room for. */
const cautionLines: readonly string[] = [
  "Hot pan and steam burn at a touch: gloves, no loose sleeves, a firm stand, water and a burn kit within reach, no children in the room.",
  "Charcoal and wood give off carbon monoxide: never without an open flue and a working alarm. Dry dust can catch fire: no flame where tea is sifted, and never leave a lit pan alone.",
  "Warm, moist leaf: clean wraps, turn on the clock, keep to the end time, discard what smells musty. Weights cannot tell whether a lot is safe. Local codes and licensed practice come first.",
];

/** The card for the first charges, and its continuation: to print on A5 and fill in at the pan. */
export const cardSheets = (): Sheet[] => [
  cardSheet("Firing card", 1),
  cardSheet("Firing card, continued", chargesOnCard + 1),
];

function cardSheet(name: string, firstCharge: number): Sheet {
  const builder = sheetBuilder(name);
  const { put, merge, widths, height, styleRest } = builder;
  const lot = onLot("B5");
  put("A1", `="${name}, lot "&IF(${lot}="","",${lot})`, { color: ink, size: 17, bold: true });
  height(1, 26);
  put("A2", notice(firstCharge), { color: "#444444", size: 9.5 });
  height(2, 13);
  put("A3", whatIsSample(), sampleLine);
  styleRest("B3:D3", sampleLine);
  merge("A3:D3");
  height(3, 21);
  put("B4", "scale should read  ", head);
  put("C4", "it reads", { ...head, align: "center" });
  put("D4", "time", { ...head, align: "center" });
  height(4, 13);
  const firstRow = 5;
  for (let index = 0; index < chargesOnCard; index += 1) {
    charge(builder, firstRow + index * (rounds + 2), firstCharge + index);
  }

  const cautionRow = firstRow + chargesOnCard * (rounds + 2);
  for (const [index, text] of cautionLines.entries()) {
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
      footer: "&L&8Wren Terrace, an invented farm&R&8&A",
      printArea: { row: 0, column: 0, rows: cautionRow + cautionLines.length - 1, columns: 4 },
    },
  });
}

/** The head of a charge and a line for each round; all stay blank where the plan has no such charge. */
function charge({ put, styleRest, height }: SheetBuilder, row: number, number: number): void {
  const count = onLot(found.charges);
  const planned = (expression: string) => `=IF(ISNUMBER(${count}),IF(${count}<${number},"",${expression}),"")`;
  const ofPlan = (column: string) => `INDEX(${onLot(`${column}${planRow}:${column}${lastPlanRow}`)},${number})`;
  put(`A${row}`, planned(`"Charge ${number}"`), chargeHead);
  put(`B${row}`, planned(ofPlan("F")), { ...chargeHead, format: `"load "${grams}"  "`, align: "right" });
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

/** So many letters have room in two rows of the card. */
const longest = 140;

/** A card at the pan must not pass invented weights for the maker's. */
function whatIsSample(): string {
  const labels = onSampleSheet(told.onCard);
  const every = `${onSampleSheet(told.countOnCard)}=${cardCells.length}`;
  const past = `IF(ISBLANK(${onLot(given.freshMoisture)}),${onSampleSheet(told.pastLots)},0)`;
  const list = `"Still the sample's, not yours: "&${labels}&IF(${past}>0,IF(${labels}="","",", ")&"the past lots behind the moisture","")&"."`;
  const count = `${onSampleSheet(told.countOnCard)}&" of the ${cardCells.length} numbers behind this card are still the sample's, not yours: the sheet ${sampleSheet} has them."&IF(${past}>0," So are the past lots.","")`;
  const some = `IF(LEN(${list})>${longest},${count},${list})`;
  return `=IF(${every},"Every number on this card is the sample's, and invented.",IF(OR(${labels}<>"",${past}>0),${some},""))`;
}

/** Says which charges the plan has, and where the rest stand. */
function notice(firstCharge: number): string {
  const count = onLot(found.charges);
  const last = firstCharge + chargesOnCard - 1;
  const tooMany = `"This plan has "&${count}&" charges, the cards hold ${cardCharges}: the rest stand on the sheet Lot."`;
  const more = `"Charges ${last + 1} to "&${count}&" stand on the next card."`;
  const usual = `"Weights in g. The plan has "&${count}&IF(${count}=1," charge."," charges.")`;
  const here =
    firstCharge === 1
      ? `IF(${count}>${last},${more},${usual})`
      : `IF(${count}<${firstCharge},"Not needed: all charges stand on the first card.",${usual})`;
  const waiting = `"Waits for the sheet Lot: is the weight for the pan in, and is the plan there?"`;
  const assumed = onLot(found.assumed);
  return `=IF(ISNUMBER(${count}),IF(${count}>${cardCharges},${tooMany},${here})&IF(${assumed}="","","  "&${assumed}&"."),${waiting})`;
}
