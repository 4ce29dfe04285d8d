/** Where an axis begins and ends, so that one wild value does not flatten all others. */

export interface Limits {
  readonly from: number;
  readonly to: number;
}

/** Fewer values say nothing of what is usual. */
const fewest = 5;
/** Tukey's outer fences: so many times the distance between the quartiles, beyond them. */
const fence = 3;
/** Free at both ends, as a share of what is shown. */
const margin = 0.06;

/**
 * Around the values but for the wild ones, with a little room. An end that is given stands; `base`, where columns
 * begin, is always within.
 */
export function axisLimits(
  values: readonly number[],
  given: { readonly least?: number; readonly most?: number } = {},
  base?: number,
): Limits {
  const usual = withoutWild(values);
  if (base !== undefined) usual.push(base);
  const lowest = usual.reduce((least, value) => Math.min(least, value), Number.POSITIVE_INFINITY);
  const highest = usual.reduce((most, value) => Math.max(most, value), Number.NEGATIVE_INFINITY);
  if (usual.length === 0) return ordered(given.least ?? 0, given.most ?? (given.least ?? 0) + 1);
  const room = (highest - lowest) * margin || Math.abs(highest) * margin || 1;
  return ordered(
    given.least ?? (lowest === base ? lowest : lowest - room),
    given.most ?? (highest === base ? highest : highest + room),
  );
}

/** A given end may lie beyond everything there is: the axis still has a length. */
const ordered = (from: number, to: number): Limits => ({ from, to: to > from ? to : from + (Math.abs(from) || 1) });

function withoutWild(values: readonly number[]): number[] {
  const sorted = values.filter(Number.isFinite).sort((one, other) => one - other);
  if (sorted.length < fewest) return sorted;
  const [low, middle, high] = [quantile(sorted, 0.25), quantile(sorted, 0.5), quantile(sorted, 0.75)];
  // Where half of the values are one and the same, the middle itself measures what is far.
  const reach = fence * (high - low || Math.abs(middle) / 2 || Number.POSITIVE_INFINITY);
  return sorted.filter((value) => value >= low - reach && value <= high + reach);
}

/** Between its neighbours in proportion, as QUARTILE.INC of a spreadsheet. */
function quantile(sorted: readonly number[], share: number): number {
  const place = (sorted.length - 1) * share;
  const below = sorted[Math.floor(place)] as number;
  const above = sorted[Math.ceil(place)] as number;
  return below + (above - below) * (place - Math.floor(place));
}
