/** What a cell of a spreadsheet holds at most, in the units that texts count. */
const longestInCell = 32_767;
/** A note has some of that room for its author. */
export const longestNote = 32_000;
const mark = " … (shortened: it was too long for a cell)";

/** The text, shortened with a mark where a cell could not hold it: one long text must not stop a whole file. */
export function fittingText(text: string, longest = longestInCell): string {
  if (text.length <= longest) return text;
  // Not through the middle of a character that takes two units.
  return text.slice(0, longest - mark.length).replace(/[\uD800-\uDBFF]$/, "") + mark;
}
