/** The names that a mistyped one may have meant: those that hold it or are held by it, then those a few letters off. */
export function nearestNames(name: string, known: readonly string[], most = 3): string[] {
  const allowed = Math.max(2, Math.floor(name.length / 3));
  return known
    .map((candidate) => ({ candidate, distance: distance(name, candidate) }))
    .filter(({ distance }) => distance <= allowed)
    .sort((one, other) => one.distance - other.distance)
    .slice(0, most)
    .map(({ candidate }) => candidate);
}

function distance(name: string, candidate: string): number {
  return name.length > 2 && (candidate.includes(name) || name.includes(candidate)) ? 1 : letterChanges(name, candidate);
}

/** How many letters have to be put in, taken out or exchanged (Levenshtein distance). */
function letterChanges(from: string, to: string): number {
  let previous = Array.from({ length: to.length + 1 }, (_, index) => index);
  for (let row = 1; row <= from.length; row += 1) {
    const current = [row];
    for (let column = 1; column <= to.length; column += 1) {
      const exchanged = (previous[column - 1] as number) + (from[row - 1] === to[column - 1] ? 0 : 1);
      current.push(Math.min(exchanged, (previous[column] as number) + 1, (current[column - 1] as number) + 1));
    }
    previous = current;
  }
  return previous[to.length] as number;
}
