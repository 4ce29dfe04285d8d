import { areaWithin, partsOf } from "../workbook/references";
import type { TeaCall } from "../working/formula-reading";
import type { At } from "./headed-cells";
import type { KnownSheet } from "./known-sheet";

interface Target {
  readonly at: At;
  readonly value: number;
}

/** The driest and the moistest that a round of firing is meant to reach. */
const driest = 0.02;
const moistest = 0.85;

/**
 * Where moistures that follow each other fall but for one, and that one ten times as high or as low restores the fall:
 * its place, and what was meant. A fall that ends far below what tea is dried to is as doubtful as a broken one.
 */
export function slipInFall(
  values: readonly number[],
  mayBe: (place: number) => boolean = () => true,
): { readonly place: number; readonly meant: number } | undefined {
  if (values.length < 2 || (falls(values) && (values.at(-1) as number) >= driest / 2)) return undefined;
  const mended = values.flatMap((value, place) =>
    [value * 10, value / 10].flatMap((meant) => {
      const whole = values.with(place, meant);
      const isSound = mayBe(place) && meant >= driest && meant <= moistest && falls(whole);
      return isSound ? [{ place, meant, steepest: steepest(whole) }] : [];
    }),
  );
  return mended.sort((one, other) => one.steepest - other.steepest)[0];
}

/** Moistures to reach in turn, one of which is ten times off. */
export function targetSlips({ area, formulas, valueAt, formulaAt }: KnownSheet) {
  const lists = formulas.flatMap(({ calls }) => calls.flatMap((call) => targetsOf(call)));
  return lists.flatMap((targets) => {
    const isOwn = (place: number) => formulaAt((targets[place] as Target).at) === "";
    const slip = slipInFall(
      targets.map(({ value }) => value),
      isOwn,
    );
    return slip === undefined ? [] : [{ ...(targets[slip.place] as Target), meant: slip.meant }];
  });

  /** The typed moistures of a list of targets, without losses. */
  function targetsOf({ entry, given }: TeaCall): Target[][] {
    const cellsOf = (name: string): readonly At[] | undefined => {
      const place = entry.spec.parameters.findIndex((parameter) => parameter.name === name);
      const argument = given[place];
      if (argument?.is !== "reference") return undefined;
      const { sheet, cells } = partsOf(argument.address);
      if (sheet !== undefined && sheet !== area.sheet) return undefined;
      const of = areaWithin(cells, { rows: area.row + area.rows, columns: area.column + area.columns });
      return (
        of &&
        Array.from({ length: Math.min(of.rows * of.columns, 50) }, (_, index) => ({
          row: of.row + Math.floor(index / of.columns),
          column: of.column + (index % of.columns),
        }))
      );
    };
    const targets = cellsOf("targets");
    if (targets === undefined) return [];
    const kinds = cellsOf("targetKinds");
    const isMoisture = (index: number) => {
      const kind = kinds?.[kinds.length === 1 ? 0 : index];
      const word = kind === undefined ? "" : String(valueAt(kind)).trim().toLowerCase();
      return word === "" || word === "moisture";
    };
    return [
      targets.flatMap((at, index): Target[] => {
        const value = valueAt(at);
        return typeof value === "number" && value > 0 && value < 1 && isMoisture(index) ? [{ at, value }] : [];
      }),
    ];
  }
}

const falls = (values: readonly number[]): boolean =>
  values.every((value, index) => index === 0 || value < (values[index - 1] as number));

const steepest = (values: readonly number[]): number =>
  Math.max(...values.slice(1).map((value, index) => (values[index] as number) / value));
