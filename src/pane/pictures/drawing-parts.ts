/** What the drawings share: sizes, names that fit, and numbers as they are shown. */
import { clock } from "../../core/quantities";
import { shownTime } from "../../core/shown";

const rowHeight = 30;
const letterWidth = 6.2;
const longestName = 20;

/** Room for the names at the left, and the height of so many bars. */
export function frame(names: readonly string[], width: number) {
  const letters = Math.max(
    1,
    ...names.map((name) => [...shortName(name)].reduce((sum, letter) => sum + (letter > "⺀" ? 2 : 1), 0)),
  );
  return {
    marginLeft: Math.min(Math.round(width * 0.4), letters * letterWidth + 12),
    // Half of the last number below, which may have four digits.
    marginRight: 16,
    marginTop: 8,
    marginBottom: 36,
    height: names.length * rowHeight + 44,
  };
}

/** Bars are known by their place, since two of them may have one name. */
export const placesScale = (names: readonly string[]) => ({
  domain: names.map((_, place) => place),
  tickFormat: (place: number) => shortName(names[place] ?? ""),
  label: null,
  tickSize: 0,
});

const shortName = (name: string): string =>
  [...name].length > longestName ? `${[...name].slice(0, longestName - 1).join("")}…` : name;

/** Without a mark for thousands, as everywhere in the pane. */
export const shownTick = (value: number): string => String(Number(value.toPrecision(6)));

/** A weight to about four digits, with its unit. */
export function shownWeight(value: number, unit: string): string {
  const number = String(Number(value.toPrecision(value >= 1000 ? 5 : 4)));
  return unit === "" ? number : `${number} ${unit}`;
}

export const shownShare = (share: number): string => `${String(Number((share * 100).toFixed(1)))} %`;

export const shownClock = (days: number): string => shownTime(days, clock);
