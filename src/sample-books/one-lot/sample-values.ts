/** How the book knows, in any spreadsheet, which of its numbers are still those that the sample came with. */
import { textInFormula } from "../../words/in-formula";
import { firstRoundRow, given, rounds } from "./places";

export const sampleSheet = "Sample values";

/** The numbers of the sheet Lot that the sample fills, by their rows. The fresh moisture is left blank. */
export const sampleCells: readonly string[] = [
  ...["B5", "B6", ...Object.values(given).filter((address) => address !== given.freshMoisture)],
  ...Array.from({ length: rounds }, (_, round) => `B${firstRoundRow + round}`),
].sort((one, other) => Number(one.slice(1)) - Number(other.slice(1)));

/** What the card rests on. */
export const cardCells: readonly string[] = sampleCells.filter((address) => {
  const row = Number(address.slice(1));
  return (row >= Number(given.fresh.slice(1)) && row <= Number(given.forPan.slice(1))) || (row >= 18 && row <= 27);
});

/** On the sheet with the sample's values: its sums and sentences, then a row for each number. */
export const told = {
  stillSample: "B4",
  pastLots: "B5",
  cells: "B6",
  countOnCard: "B7",
  onCard: "C7",
} as const;
export const firstValueRow = 10;

export const onSampleSheet = (address: string): string =>
  `'${sampleSheet}'!${address.replace(/([A-Z]+)(\d+)/, "$$$1$$$2")}`;

/** 1 while the cell of the sheet Lot holds what the sample came with, and nobody has said that it is theirs. */
const isStill = (address: string): string => {
  const place = sampleCells.indexOf(address);
  if (place < 0) throw new Error(`the sample has no value for ${address}`);
  return `${onSampleSheet(`F${firstValueRow + place}`)}=1`;
};

/** A word for a formula, while the number of a cell is still the sample's. */
export const sampleMark = (address: string, mark: string): string =>
  `IF(${isStill(address)},${textInFormula(mark)},"")`;
