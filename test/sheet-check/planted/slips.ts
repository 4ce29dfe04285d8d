/** Slips of the pen, planted one at a time, and which questions of the check would be an answer to each. */
import type { SeededNumbers } from "../../../src/sample-books/season/seeded-numbers";
import type { Rule } from "../../../src/sheet-check/finding";
import { addressOf, placeOf } from "../../../src/workbook/addresses";
import { type Content, type FarmSheet, type Holds, keyOf, oneOf, type Place } from "./farm-sheet";

export interface Slip {
  readonly name: string;
  /** The questions that point at it. */
  readonly rules: readonly Rule[];
  /** What it does to a sheet; undefined where the sheet has no place for it. */
  readonly plant: (sheet: FarmSheet, random: SeededNumbers) => Planted | undefined;
}

export interface Planted {
  readonly sheet: FarmSheet;
  /** The cells that were changed; a swapped pair has two. */
  readonly changed: readonly Place[];
}

const numberAt = ({ cells }: FarmSheet, { row, column }: Place): number =>
  Number(cells.get(keyOf(row, column))?.content);

/** The sheet with other contents in some cells, which keep their formats; undefined empties a cell. */
function changedBy(
  sheet: FarmSheet,
  changes: readonly (readonly [place: Place, content: Content["content"] | undefined, format?: string | undefined])[],
): Planted {
  const cells = new Map(sheet.cells);
  for (const [{ row, column }, content, format] of changes) {
    const key = keyOf(row, column);
    const before = cells.get(key);
    if (content === undefined) cells.delete(key);
    else cells.set(key, { ...before, content, ...(format === undefined ? {} : { format }) });
  }
  return { sheet: { ...sheet, cells }, changed: changes.map(([place]) => place) };
}

/** Of a wrong weight and of a wrong moisture: questions that send the maker to the lot. */
const aboutWeights: readonly Rule[] = [
  "finished above fresh",
  "heavier after than before",
  "kilograms among grams",
  "more dry matter out than in",
  "most of the dry matter gone",
  "not a step of the scale",
  "outturn far from the others",
];
const aboutMoistures: readonly Rule[] = [
  "a moisture ten times off",
  "moisture typed as a number of percent",
  "more dry matter out than in",
  "most of the dry matter gone",
  "wet and dry basis mixed",
];

type Change = (value: number, place: Place, sheet: FarmSheet, random: SeededNumbers) => Content["content"] | undefined;

/** One cell of these kinds, changed. A change that gives nothing has no place there. */
const inOne =
  (holds: readonly Holds[], change: Change, format?: string): Slip["plant"] =>
  (sheet, random) => {
    const place = oneOf(
      random,
      sheet.places.filter((each) => holds.includes(each.holds)),
    );
    if (place === undefined) return undefined;
    const content = change(numberAt(sheet, place), place, sheet, random);
    return content === undefined ? undefined : changedBy(sheet, [[place, content, format]]);
  };

/** Two cells of one lot, each with what the other one held. */
const swapped =
  (one: Holds, other: Holds): Slip["plant"] =>
  (sheet, random) => {
    const lots = sheet.places.filter(({ holds }) => holds === one);
    const first = oneOf(random, lots);
    const second = sheet.places.find(({ holds, lot }) => holds === other && lot === first?.lot);
    if (first === undefined || second === undefined) return undefined;
    return changedBy(sheet, [
      [first, numberAt(sheet, second)],
      [second, numberAt(sheet, first)],
    ]);
  };

const clean = (value: number): number => Number(value.toPrecision(10));
const weights = ["fresh", "aired", "finished", "stage weight"] as const;
const moistures = ["fresh moisture", "finished moisture", "stage moisture"] as const;

const sibling = (sheet: FarmSheet, place: Place, holds: Holds): number | undefined => {
  const found = sheet.places.find((each) => each.holds === holds && each.lot === place.lot);
  return found && numberAt(sheet, found);
};

/** In a column of formulas that read their own rows, one that reads the row above; in a row, the column at the left. */
const readsElsewhere: Change = (_, place, { cells }) => {
  const formula = String(cells.get(keyOf(place.row, place.column))?.content);
  const moved = (down: number, right: number) =>
    formula.replace(/(?<![$\w])[A-Z]{1,2}\d+(?![\d(])/g, (reference) => {
      const { row, column } = placeOf(reference);
      const isOwn = down === 0 ? column === place.column : row === place.row;
      return isOwn ? addressOf(row - down, column - right) : reference;
    });
  const above = moved(1, 0);
  return above === formula ? moved(0, 1) : above;
};

/** What the formula shows, typed over it: as a person would, to four digits. */
const overwritten: Slip["plant"] = (sheet, random) => {
  const place = oneOf(
    random,
    sheet.places.filter(({ holds }) => holds === "formula"),
  );
  return place && changedBy(sheet, [[place, clean(0.2 + Math.round(1000 * random.next()) / 10_000)]]);
};

export const slips: readonly Slip[] = [
  {
    name: "a finished moisture ten times too high (5.2% as 52%)",
    rules: aboutMoistures,
    plant: inOne(["finished moisture"], (value) => clean(value * 10)),
  },
  {
    name: "a finished moisture ten times too low (5.2% as 0.52%)",
    rules: aboutMoistures,
    plant: inOne(["finished moisture"], (value) => clean(value / 10)),
  },
  {
    name: "a fresh moisture ten times too low (76% as 7.6%)",
    rules: aboutMoistures,
    plant: inOne(["fresh moisture"], (value) => clean(value / 10)),
  },
  {
    name: "a target ten times off",
    rules: ["a moisture ten times off"],
    plant: inOne(["target"], (value) => clean(value < 0.08 ? value * 10 : value / 10)),
  },
  {
    name: "a moisture typed as 76 where 76% was meant",
    rules: aboutMoistures,
    plant: inOne(moistures, (value) => clean(value * 100)),
  },
  {
    name: "a decimal comma taken for thousands (0,755 as 755)",
    rules: aboutMoistures,
    plant: inOne(moistures, (value) => Math.round(value * 1000)),
  },
  {
    name: "a decimal comma in a moisture that stays text (5,2%)",
    rules: ["text that looks like a number"],
    plant: inOne(moistures, (value) => `${clean(value * 100)}%`.replace(".", ",")),
  },
  {
    name: "a decimal comma in a weight that stays text",
    rules: ["text that looks like a number"],
    plant: inOne(weights, (value) => (value + 0.5).toFixed(1).replace(".", ",")),
  },
  {
    name: "a weight with its unit (840 g), which is text",
    rules: ["text that looks like a number"],
    plant: inOne(weights, (value) => `${value} g`),
  },
  {
    name: "a number stored as text",
    rules: ["text that looks like a number"],
    plant: inOne([...weights, ...moistures], (value) => String(value)),
  },
  {
    name: "a weight in kilograms among grams, or the other way",
    rules: aboutWeights,
    plant: inOne(weights, (value, _, sheet) => clean(sheet.layout.includes("kilo") ? value * 1000 : value / 1000)),
  },
  {
    name: "fresh and finished swapped",
    rules: aboutWeights,
    plant: swapped("fresh", "finished"),
  },
  {
    name: "fresh and aired swapped",
    rules: aboutWeights,
    plant: swapped("fresh", "aired"),
  },
  {
    name: "fresh and finished moisture swapped",
    rules: aboutMoistures,
    plant: swapped("fresh moisture", "finished moisture"),
  },
  {
    name: "finished heavier than fresh (a digit too many)",
    rules: aboutWeights,
    plant: inOne(["finished"], (value) => clean(value * 10)),
  },
  {
    name: "aired heavier than fresh",
    rules: aboutWeights,
    plant: inOne(["aired"], (_, place, sheet, random) => {
      const fresh = sibling(sheet, place, "fresh");
      return fresh && clean(Number((fresh * (1.02 + 0.3 * random.next())).toFixed(0)) || fresh + 1);
    }),
  },
  {
    name: "a stage heavier than the one before it (a digit too many)",
    rules: aboutWeights,
    plant: inOne(["stage weight"], (value) => value * 10),
  },
  {
    name: "a digit too many in a fresh weight",
    rules: aboutWeights,
    plant: inOne(["fresh"], (value) => clean(value * 10)),
  },
  {
    name: "a digit lost from a finished weight",
    rules: aboutWeights,
    plant: inOne(["finished"], (value) => clean(Math.floor(value) >= 10 ? Math.floor(value / 10) : value / 10)),
  },
  {
    name: "a number typed over a formula",
    rules: ["a number among formulas"],
    plant: overwritten,
  },
  {
    name: "a formula that reads the row above",
    rules: ["a formula that reads another row"],
    plant: inOne(["formula"], readsElsewhere),
  },
  {
    name: "a wrap of 9.30 for nine and a half hours",
    rules: ["a time typed as a number"],
    plant: inOne(["span"], (value) => clean(Math.floor(value * 24) + 0.3), "General"),
  },
  {
    name: "a usual loss above the largest",
    rules: ["usual loss outside its limits"],
    plant: inOne(["usual loss"], () => 0.3),
  },
  {
    name: "a dry basis among wet ones (317% for 76%)",
    rules: aboutMoistures,
    plant: inOne(["fresh moisture", "stage moisture"], (value) =>
      value > 0.55 ? clean(value / (1 - value)) : undefined,
    ),
  },
  {
    name: "a dry basis as a number of percent (317)",
    rules: ["a dry basis above 500 %"],
    plant: inOne(["dry basis"], (value) => Math.round(value * 100)),
  },
  {
    name: "a weight between the steps of the scale",
    rules: ["not a step of the scale"],
    plant: inOne(["fresh", "finished"], (value) => clean(value + 0.037)),
  },
  {
    name: "a finished weight left out",
    rules: ["waits for a weight"],
    plant: (sheet, random) => {
      const place = oneOf(
        random,
        sheet.places.filter(({ holds }) => holds === "finished"),
      );
      return place && changedBy(sheet, [[place, undefined]]);
    },
  },
  {
    name: "two digits exchanged in a finished weight (258 as 285)",
    rules: aboutWeights,
    plant: inOne(["finished"], (value) => {
      const digits = String(value);
      const at = [...digits].findIndex(
        (digit, index) => /\d\d/.test(digits.slice(index, index + 2)) && digit !== digits[index + 1],
      );
      if (at < 0) return undefined;
      return Number(digits.slice(0, at) + digits[at + 1] + digits[at] + digits.slice(at + 2));
    }),
  },
];
