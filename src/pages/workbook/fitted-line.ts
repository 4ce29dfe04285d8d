/** A line of a fixed height, so that the sheet below it stays where it is, which shows whole sentences only. */

export interface Sentence {
  /** From the longest to the shortest way to say it. */
  readonly ways: readonly (readonly (string | Node)[])[];
}

/** Fills the line with the sentences that it has room for, the first before the others; gives back those left out. */
export function fillLine<Said extends Sentence>(line: HTMLElement, sentences: readonly Said[]): Said[] {
  const levels = Math.max(1, ...sentences.map(({ ways }) => ways.length));
  for (let level = 0; level < levels; level += 1) {
    line.replaceChildren(...sentences.map(({ ways }) => element(ways[Math.min(level, ways.length - 1)])));
    if (fits(line)) return [];
  }
  line.replaceChildren();
  return sentences.filter(({ ways }) => !ways.some((way) => addIfFits(line, element(way))));
}

function addIfFits(line: HTMLElement, sentence: HTMLElement): boolean {
  line.append(sentence);
  if (fits(line)) return true;
  sentence.remove();
  return false;
}

function element(way: Sentence["ways"][number] = []): HTMLElement {
  const made = document.createElement("div");
  made.append(...way);
  return made;
}

/** Letters may hang a little over the last row. */
const fits = (line: HTMLElement): boolean => line.scrollHeight <= line.clientHeight + 2;
