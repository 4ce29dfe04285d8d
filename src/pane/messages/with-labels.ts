/** What is said of an argument, where it names others: their labels stand in the place of their names. */
export const withLabels = (demand: string, mentions: readonly string[] = [], label: (name: string) => string): string =>
  mentions.reduce((text, name) => text.replace(name, () => `“${label(name)}”`), demand);
