/** Refusals by what the sheet calls the refused cells, where a function alone can only name its argument. */
import { catalogue } from "../../core/catalogue";
import type { Named } from "../../core/english-refusals";
import type { Reason } from "../../core/refusals";
import { addressOf } from "../../workbook/addresses";
import { type ArgumentReading, formulaReading, type TeaCall } from "../../working/formula-reading";
import { labelOf, labelOfList } from "./cell-labels";
import { isOneCell, type KnownWorkbook, keyOf, type SheetArea, type Spot } from "./known-workbook";
import { words } from "./words";

/**
 * `“Pan load” must be a number; got the text "350 g"`, for the formula in a cell. A number that other formulas passed
 * on goes by the cell where it was typed, which is the cause.
 */
export function namedReason(workbook: KnownWorkbook, spot: Spot, reason: Reason, cause?: Spot): string {
  const calls = callsIn(workbook.cellAt(spot)?.formula ?? "");
  const named: Named = (argument) => {
    const reference = referenceFor(argument, calls);
    if (reference === undefined) return argument;
    const area = workbook.areaOf(reference.address, spot.sheet);
    if (area === undefined) return isName(reference.text) ? `“${reference.text}”` : argument;
    return nameOf(workbook, spot, area, cause) ?? argument;
  };
  return words().reason(reason, named);
}

/** The cells that the formula in a cell gives for an argument. */
export function cellsGivenFor(argument: string, workbook: KnownWorkbook, spot: Spot): SheetArea | undefined {
  const reference = referenceFor(argument, callsIn(workbook.cellAt(spot)?.formula ?? ""));
  return reference && workbook.areaOf(reference.address, spot.sheet);
}

/** undefined also where two calls have an argument of this name: nobody knows which of them refused. */
function referenceFor(argument: string, calls: readonly TeaCall[]) {
  const given = calls.flatMap((call) => givenAs(argument, call));
  const [first, ...others] = new Map(given.map((each) => [textOf(each), each])).values();
  return others.length === 0 && first?.is === "reference" ? first : undefined;
}

function nameOf(workbook: KnownWorkbook, reader: Spot, area: SheetArea, cause: Spot | undefined): string | undefined {
  if (!isOneCell(area)) {
    const label = labelOfList(workbook, area);
    return label && `“${label}”`;
  }
  const isPassedOn = cause !== undefined && workbook.originsOf(area).some((origin) => keyOf(origin) === keyOf(cause));
  const meant = isPassedOn ? cause : area;
  const label = labelOf(workbook, meant);
  if (label !== undefined) return `“${label}”`;
  const address = addressOf(meant.row, meant.column);
  return meant.sheet === reader.sheet ? address : `${meant.sheet} ${address}`;
}

/** A call and those inside its arguments. */
const withInner = (call: TeaCall): TeaCall[] => [call, ...call.given.flatMap(innerOf)];

function innerOf(given: ArgumentReading): TeaCall[] {
  if (given.is === "call") return withInner(given.call);
  return given.is === "arithmetic" ? given.of.flatMap(innerOf) : [];
}

function callsIn(formula: string): TeaCall[] {
  return formulaReading(formula, catalogue).calls.flatMap(withInner);
}

function givenAs(argument: string, { entry, given }: TeaCall): ArgumentReading[] {
  const reading = given[entry.spec.parameters.findIndex(({ name }) => name === argument)];
  return reading === undefined ? [] : [reading];
}

const textOf = (given: ArgumentReading): string =>
  "text" in given ? given.text.replaceAll("$", "").toUpperCase() : given.is;

/** A name that the maker gave to cells. */
const isName = (text: string): boolean => /^[\p{L}_][\p{L}\p{N}_.]*$/u.test(text);
