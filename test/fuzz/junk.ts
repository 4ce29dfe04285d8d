import fc from "fast-check";
import { CellError } from "../../src/cells/values";
import type { Parameter } from "../../src/core/define";
import type { Entry } from "../../src/core/entry";
import type { Quantity } from "../../src/core/quantities";

/** The arguments of one call, as a host would hand them over. */
export type Arguments = readonly unknown[];

const numbers = fc.oneof(
  fc.double(),
  fc.double({ min: -1e4, max: 1e4, noNaN: true }),
  fc.double({ min: 0, max: 1, noNaN: true }),
  fc.integer({ min: -3, max: 100 }),
  // Dates and times of day, as serials.
  fc.integer({ min: 36_526, max: 73_050 }).map((day) => day + 0.25),
  fc.constantFrom(0, -0, 5e-324, 2.2e-308, 1e-12, 1 - 2 ** -53, 1e12, 2 ** 53, 1.7976931348623157e308),
  fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY),
);

const texts = fc.oneof(
  fc.string({ maxLength: 8 }),
  fc.string({ unit: "grapheme", maxLength: 8 }),
  fc.string({ unit: "binary", maxLength: 8 }),
  // Any code units: halves of a pair stand alone.
  fc.array(fc.integer({ min: 0, max: 0xffff }), { maxLength: 6 }).map((units) => String.fromCharCode(...units)),
  fc.constantFrom("12", "-4", "1,5", "1.234,5", "76%", "1e3", "0x10", "Infinity", "NaN", "١٢", "१२", "１２", "½", "−4"),
  fc.constantFrom(" ", "\u00a0", "\u200b", "\t\n", "茶", "六百克", "ชา", "чай", "\u202eتاي", "🍵", "e\u0301", "\ud83c"),
  fc.constantFrom("__proto__", "constructor", "toString", "TRUE", "=1+1", "#N/A", "<b>", "tea.outturn", "UNCERTAINTY"),
  fc.constantFrom("leaf".repeat(8_000), "🍃".repeat(30), `${"x".repeat(39)}🍃`),
);

const errors = fc
  .constantFrom("#VALUE!", "#N/A", "#DIV/0!", "#NUM!", "#REF!", "#NAME?", "#NULL!", "#SPILL!", "#CALC!", "#BUSY!")
  .map((code) => new CellError(code, code === "#N/A" ? "made elsewhere" : ""));

const refuse = (): never => {
  throw new Error("no value for you");
};

/** What no host should send, and what tries to pass for something else. */
const objects = fc.constantFrom<unknown>(
  {},
  { basicValue: 320, type: "Double" },
  { code: 7 },
  { code: "#N/A" },
  { length: 3 },
  Object.create(null),
  Object.create(CellError.prototype),
  Object.create(Array.prototype),
  JSON.parse('{"__proto__": {"code": "#N/A"}, "constructor": 1}'),
  { toString: refuse, valueOf: refuse },
  { toString: null, valueOf: null },
  { [Symbol.toPrimitive]: refuse },
  { code: Object.create(null) },
  new Date(0),
  new Map([[1, 2]]),
  /tea/,
  () => 320,
  Symbol("tea"),
  320n,
  new Number(320),
  new String("320"),
  [320],
  [[320]],
);

const blanks = fc.constantFrom(null, "", undefined);

/** Anything at all in one cell. */
export const junkCell: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 6, arbitrary: numbers },
  { weight: 3, arbitrary: texts },
  { weight: 2, arbitrary: blanks },
  { weight: 1, arbitrary: fc.boolean() },
  { weight: 1, arbitrary: errors },
  { weight: 1, arbitrary: objects },
);

/** Rows of one length, of any lengths, and what is no rows at all. */
const junkRange = fc.oneof(
  fc.array(junkCell, { maxLength: 5 }).map((cells) => cells.map((cell) => [cell])),
  fc.array(junkCell, { maxLength: 5 }).map((cells) => [cells]),
  fc.array(fc.array(junkCell, { minLength: 2, maxLength: 2 }), { maxLength: 3 }),
  fc.array(fc.array(junkCell, { maxLength: 3 }), { maxLength: 4 }),
  fc.array(junkCell, { maxLength: 3 }),
);

const junkArgument = fc.oneof(junkCell, junkRange);

/** Mostly what a farm has; now and then the edge of what is allowed. */
function soundNumber({ bounds }: Quantity): fc.Arbitrary<number> {
  const low = bounds.atLeast ?? bounds.above ?? -1000;
  const high = Math.min(bounds.atMost ?? bounds.below ?? 5000, 5000);
  // Evenly spread, as fc.double is not: half of its numbers are too small for any scale.
  const even = fc.integer({ min: 1, max: 99_999 }).map((part) => low + (high - low) * (part / 100_000));
  const inside = bounds.whole ? fc.integer({ min: low, max: 9 }) : even;
  const least = bounds.atLeast ?? (bounds.above === 0 ? 1e-12 : low);
  const most = bounds.atMost ?? (bounds.below === undefined ? 1e12 : bounds.below - 2 ** -53);
  return fc.oneof({ weight: 9, arbitrary: inside }, { weight: 1, arbitrary: fc.constantFrom(least, most) });
}

function soundCell({ name, quantity }: Parameter): fc.Arbitrary<unknown> {
  switch (quantity.holds) {
    case "number":
      return soundNumber(quantity);
    case "yesNo":
      return fc.constantFrom(true, false, 1, 0);
    case "choice":
      return fc.constantFrom(
        ...Object.entries(quantity.choices ?? {}).flatMap(([word, aliases]) => [word, ...aliases]),
      );
    case "text":
      return name === "functionName"
        ? fc.constantFrom("OUTTURN", "tea.drymatter", "TARGETWEIGHT", "FINISHEDWEIGHT", "LEAFCOST", "MOISTURENOW")
        : fc.constantFrom("hill plot", "river plot", "Hill Plot", "桃园", "first flush");
  }
}

const mostRows = 6;

/** What each parameter asks for, the lists of a call all of one length. */
function soundArguments(parameters: readonly Parameter[]): fc.Arbitrary<unknown[]> {
  const cells = parameters.map((parameter) =>
    fc.array(soundCell(parameter), { minLength: mostRows, maxLength: mostRows }),
  );
  const forms = fc.array(fc.nat(9), { minLength: parameters.length, maxLength: parameters.length });
  return fc.tuple(fc.integer({ min: 1, max: mostRows }), fc.tuple(...cells), forms).map(([rows, columns, shapes]) =>
    parameters.map(({ takes, optional }, place) => {
      const column = (columns[place] as unknown[]).slice(0, rows);
      const shape = shapes[place] as number;
      if (optional && shape < 4) return null;
      if (takes === "cell") return shape < 8 ? column[0] : column.map((cell) => [cell]);
      return shape < 8 ? column.map((cell) => [cell]) : [column];
    }),
  );
}

/** One thing done to the arguments of a call. The places are taken modulo what is there. */
interface Spoiling {
  readonly what: "cell" | "argument" | "scale" | "cut" | "append" | "row";
  readonly place: number;
  readonly row: number;
  readonly column: number;
  readonly cell: unknown;
  readonly argument: unknown;
  readonly factor: number;
}

const spoilings: fc.Arbitrary<Spoiling> = fc.record({
  what: fc.constantFrom("cell", "cell", "cell", "argument", "scale", "scale", "cut", "append", "row"),
  place: fc.nat(20),
  row: fc.nat(20),
  column: fc.nat(20),
  cell: junkCell,
  argument: junkArgument,
  factor: fc.constantFrom(0, -1, 0.5, 0.9, 0.999999999, 1.000000001, 1.1, 2, 10, 1e6, 1e-6, 1e9, 1e-9),
});

function spoiled(given: readonly unknown[], { what, place, row, column, ...junk }: Spoiling): unknown[] {
  if (what === "append" || given.length === 0) return [...given, junk.argument];
  const at = place % given.length;
  if (what === "cut") return given.slice(0, at);
  const argument = given[at];
  const scaled = (value: unknown) => (typeof value === "number" ? value * junk.factor : value);
  const replace = (value: unknown) => (what === "scale" ? scaled(value) : junk.cell);
  return given.with(at, what === "argument" ? junk.argument : within(argument));

  function within(range: unknown): unknown {
    if (!Array.isArray(range) || range.length === 0) return replace(range);
    const line = range[row % range.length];
    if (!Array.isArray(line) || line.length === 0) return range.with(row % range.length, junk.cell);
    // A second time the same row: lists of unequal length, and equal readings one after the other.
    if (what === "row") return range.toSpliced(row % range.length, 0, line);
    return range.with(row % range.length, line.with(column % line.length, replace(line[column % line.length])));
  }
}

/** Any call of a function: nothing but junk, or a sound call with nothing, one thing or a few things spoiled. */
export function calls({ spec, page }: Entry): fc.Arbitrary<Arguments> {
  const pageCalls: unknown[][] = [...page.examples, ...page.checks].map(({ given }) => [...given]);
  const sound = fc.oneof(soundArguments(spec.parameters), fc.constantFrom(...pageCalls));
  const damaged = (most: number) =>
    fc
      .tuple(sound, fc.array(spoilings, { maxLength: most }))
      .map(([given, damage]) => damage.reduce<unknown[]>(spoiled, given));
  return fc.oneof(
    { weight: 2, arbitrary: fc.array(junkArgument, { maxLength: spec.parameters.length + 2 }) },
    { weight: 5, arbitrary: damaged(1) },
    { weight: 3, arbitrary: damaged(4) },
  );
}

/**
 * A few cells for each parameter, to be repeated down a tall column; one cell stands alone. Lists and cells are not
 * tall at once, for then each cell of the answer asks for all of the list.
 */
export function tallCalls({ spec }: Entry, rows: number): fc.Arbitrary<Arguments> {
  const cells = (parameter: Parameter) =>
    fc.array(fc.oneof({ weight: 9, arbitrary: soundCell(parameter) }, { weight: 1, arbitrary: junkCell }), {
      minLength: 1,
      maxLength: 4,
    });
  const tall = fc.constantFrom(...new Set(spec.parameters.map(({ takes }) => takes)));
  return fc.tuple(tall, fc.tuple(...spec.parameters.map(cells))).map(([tallOnes, columns]) =>
    spec.parameters.map(({ takes }, place) => {
      const few = columns[place] as unknown[];
      if (takes === "cell" && (takes !== tallOnes || few.length === 1)) return few[0];
      if (takes !== tallOnes) return [few];
      return Array.from({ length: rows }, (_, row) => [few[row % few.length]]);
    }),
  );
}
