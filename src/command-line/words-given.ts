/** The words behind the name of a command, in their kinds. */
interface WordsGiven<Flag extends string, Valued extends string> {
  readonly help: boolean;
  readonly paths: readonly string[];
  readonly flags: ReadonlySet<Flag>;
  /** What followed each option, as often as it stood there. */
  readonly values: Readonly<Partial<Record<Valued, readonly string[]>>>;
}

interface Takes<Flag extends string, Valued extends string> {
  readonly flags: readonly Flag[];
  /** The options that a value follows, each with words for it. */
  readonly valued: Readonly<Record<Valued, string>>;
}

/** What the words say, or what is wrong with them. Help can be asked for everywhere. */
export function wordsGiven<Flag extends string, Valued extends string>(
  given: readonly string[],
  { flags, valued }: Takes<Flag, Valued>,
): WordsGiven<Flag, Valued> | string {
  const paths: string[] = [];
  const there = new Set<Flag>();
  const values: Partial<Record<Valued, string[]>> = {};
  let help = false;
  for (let at = 0; at < given.length; at += 1) {
    const word = given[at] as string;
    if (Object.hasOwn(valued, word)) {
      const option = word as Valued;
      at += 1;
      const value = given[at];
      if (value === undefined || value.startsWith("--")) return `${word} must be followed by ${valued[option]}`;
      values[option] = [...(values[option] ?? []), value];
    } else if (word === "--help" || word === "-h") help = true;
    else if (flags.includes(word as Flag)) there.add(word as Flag);
    else if (word.startsWith("-")) {
      const all = [...Object.keys(valued), ...flags];
      return `options must be ${all.slice(0, -1).join(", ")} or ${all.at(-1)}; got ${word}`;
    } else paths.push(word);
  }
  return { help, paths, flags: there, values };
}
