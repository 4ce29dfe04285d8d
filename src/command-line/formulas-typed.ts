/**
 * The formulas among the words of a command: each that was put in quotes is one of its own, and what a shell has taken
 * apart, 1 + 2, is put together again.
 */
export function formulasIn(words: readonly string[]): string[] {
  const formulas: string[] = [];
  for (const word of words) {
    const before = formulas.at(-1);
    if (before !== undefined && !(isWhole(before) && begins.test(word))) {
      formulas[formulas.length - 1] = `${before} ${word}`;
    } else {
      formulas.push(word);
    }
  }
  return formulas.map((formula) => formula.trim()).filter((formula) => formula !== "");
}

/** An equals sign with something behind it, or the call of a function. */
const begins = /^\s*(?:[=＝]\s*[^\s=＝]|[\p{L}_][\p{L}\w.]*[(（])/u;

/** Whether nothing has to follow: brackets and quotation marks are closed, and no sign stands at the end. */
function isWhole(formula: string): boolean {
  const outside = formula.replace(/"(?:[^"]|"")*"/g, "0");
  const opened = (outside.match(/[({（]/g) ?? []).length;
  const closed = (outside.match(/[)}）]/g) ?? []).length;
  return opened === closed && !outside.includes('"') && !/[-+*/^&=<>,;(，；＝]\s*$/.test(outside);
}
