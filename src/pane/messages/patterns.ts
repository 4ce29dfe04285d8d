/** Sentences with numbers and names inside, and how they read in another language. The first that matches wins. */
export type Patterns = readonly (readonly [RegExp, string])[];

/** The same sentence in the other language; undefined where no pattern knows it. */
export function rewritten(text: string, patterns: Patterns): string | undefined {
  const found = patterns.find(([pattern]) => pattern.test(text));
  return found === undefined ? undefined : text.replace(found[0], found[1]);
}
