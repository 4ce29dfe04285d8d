/// <reference types="office-js" />
import { namespace } from "../../core/namespace";
import { HostProblem } from "../../host/host-problem";
import type { CellContent, CellPlace } from "../../host/workbook-host";
import { problemFrom } from "./excel-problems";
import { expressionAlone, ownPartsIn } from "./expression-alone";
import { tableCells } from "./table-cells";

/** Nobody else's name; should one ever be left over, the next time takes it away. */
const passingName = `${namespace}_working_for_a_moment`;

/**
 * Excel works nothing out beside its cells and names: a hidden name of the sheet holds the expression for a moment. It
 * is taken away again whatever happens, if need be when a cell that is being typed in is done.
 */
export async function evaluateInExcel(expression: string, place: CellPlace): Promise<CellContent[][]> {
  let isProtected: boolean | undefined;
  let isBegun = false;
  try {
    return await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItemOrNullObject(place.sheet);
      sheet.load("name,protection/protected");
      await context.sync();
      if (sheet.isNullObject) {
        throw new HostProblem("gone", { kind: "sheet gone", sheet: place.sheet });
      }
      isProtected = sheet.protection.protected;
      const formula = `=${expressionAlone(expression, place, await addressesOf(context, expression, place))}`;
      await takeAway(context, place.sheet);
      isBegun = true;
      const item = sheet.names.add(passingName, formula);
      item.visible = false;
      item.load("type,value");
      await context.sync();
      return await valuesOf(context, item);
    });
  } catch (thrown) {
    throw problemFrom(thrown, isProtected);
  } finally {
    if (isBegun) {
      await Excel.run({ delayForCellEdit: true }, (context) => takeAway(context, place.sheet)).catch((thrown) => {
        throw nameLeft(thrown);
      });
    }
  }
}

/** Where the parts of the formula's own table are. */
async function addressesOf(
  context: Excel.RequestContext,
  expression: string,
  place: CellPlace,
): Promise<ReadonlyMap<string, string>> {
  const addresses = new Map<string, string>();
  for (const part of ownPartsIn(expression)) {
    const range = await tableCells(context, part, place);
    if (range === undefined) continue;
    range.load("address");
    await context.sync();
    addresses.set(part, range.address);
  }
  return addresses;
}

async function takeAway(context: Excel.RequestContext, sheet: string): Promise<void> {
  const item = context.workbook.worksheets.getItem(sheet).names.getItemOrNullObject(passingName);
  item.load("name");
  await context.sync();
  if (item.isNullObject) return;
  item.delete();
  await context.sync();
}

async function valuesOf(context: Excel.RequestContext, item: Excel.NamedItem): Promise<CellContent[][]> {
  switch (item.type) {
    case "Range": {
      const range = item.getRange();
      range.load("values");
      await context.sync();
      return range.values;
    }
    case "Array":
      item.arrayValues.load("values");
      await context.sync();
      return item.arrayValues.values;
    default:
      return [[settled(item.value)]];
  }
}

/** A function of an add-in answers after a while, and not every Excel waits for it in a name. */
function settled(value: CellContent): CellContent {
  if (value !== "#BUSY!" && value !== "#GETTING_DATA" && value !== "#CONNECT!") return value;
  throw new HostProblem("busy", "not worked out yet");
}

function nameLeft(thrown: unknown): HostProblem {
  const { reason, trouble } = problemFrom(thrown);
  return new HostProblem(reason, { kind: "name left", name: passingName, after: trouble });
}
