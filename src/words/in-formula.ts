/**
 * A sentence as a formula of a worksheet puts it together: its words in quotes, what the formula works out as it is.
 * Numbers belong to the words. So a language may have its words in an order of its own.
 */
export function inFormula(words: TemplateStringsArray, ...parts: readonly (string | number)[]): string {
  const pieces: { readonly isWords: boolean; text: string }[] = [];
  const say = (text: string) => {
    const last = pieces.at(-1);
    if (last?.isWords) last.text += text;
    else if (text !== "") pieces.push({ isWords: true, text });
  };
  for (const [index, text] of words.entries()) {
    say(text);
    const part = parts[index];
    if (typeof part === "number") say(String(part));
    else if (part !== undefined) pieces.push({ isWords: false, text: part });
  }
  return pieces.map(({ isWords, text }) => (isWords ? textInFormula(text) : text)).join("&");
}

/** Words as a formula quotes them. */
export const textInFormula = (text: string): string => `"${text.replaceAll('"', '""')}"`;
