import { outsideTexts } from "../cells/formula-text";

/** These only look at where cells are, not at what they hold. */
const ofPlaces = /\b(?:ROWS?|COLUMNS?)\(\s*[^()]*\)/gi;

const address =
  /(?:(?:'[^']+'|[\p{L}_][\p{L}\w.]*)!)?(?<![\p{L}\w.$!])\$?(?:[A-Z]{1,3}\$?[1-9]\d{0,6}(?::\$?[A-Z]{1,3}\$?[1-9]\d{0,6})?|[A-Z]{1,3}:\$?[A-Z]{1,3}|\d+:\$?\d+)(?![\p{L}\w.(])/iu;
const onSheet = /(?:'[^']+'|[\p{L}_][\p{L}\w.]*)!\$?[\p{L}\w.$:]+/u;

/** The first cell or range whose content a formula asks for; undefined where there is none. */
export function cellIn(formula: string): string | undefined {
  const looked = outsideTexts(formula).replace(ofPlaces, "0");
  return (onSheet.exec(looked) ?? address.exec(looked))?.[0];
}
