/**
 * What documents written by hand count of the things that the code knows. Most sentences do without: those that do not
 * have a line here, and the number is put where the sign # stands.
 */
import { catalogue } from "../core/catalogue";
import { mostFunctionsBytes } from "./size-limit";

interface Count {
  readonly file: string;
  /** The words around the number, as they stand on one line of the file. */
  readonly words: string;
  readonly count: number;
}

export const countsInDocuments = (leastNode: number): readonly Count[] => [
  { file: "README.md", words: "[Node.js](https://nodejs.org) # or newer", count: leastNode },
  { file: "README.md", words: "explains all # of them", count: catalogue.length },
  { file: "README.md", words: "one script of under # kB", count: mostFunctionsBytes / 1000 },
];

/** The text of a document with every number put right. A sentence that is no longer there has a line here too many. */
export const withCounts = (text: string, counts: readonly Pick<Count, "words" | "count">[]): string =>
  counts.reduce((written, { words, count }) => {
    const [before, after] = words.split("#") as [string, string];
    const [start, rest, ...again] = written.split(before);
    const number = /^\d+/.exec(rest ?? "")?.[0];
    if (number === undefined || again.length > 0 || !rest?.slice(number.length).startsWith(after)) {
      throw new Error(`"${words}" must stand once in its document, with a number for #`);
    }
    return `${start}${before}${count}${rest.slice(number.length)}`;
  }, text);
