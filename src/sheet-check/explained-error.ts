import { CellError } from "../cells/values";
import type { Entry } from "../core/entry";
import type { CellPlace, WorkbookReader } from "../host/workbook-host";
import { addressOf } from "../workbook/addresses";
import { workingIn } from "../working/working-of";

/** An error with what there is to say of it: the function's own reason to the same arguments, or the host's words. */
export async function explainedError(
  code: string,
  host: WorkbookReader,
  place: CellPlace,
  catalogue: readonly Entry[],
): Promise<CellError> {
  try {
    const cell = await host.read(addressOf(place.row, place.column), place);
    const working = await workingIn(cell, host, catalogue);
    const known = working?.error;
    if (known?.message) return known;
    const refused = working?.calls.flatMap(({ outcome }) => (outcome.is === "error" ? [outcome.error] : []));
    return refused?.find(({ message }) => message !== "") ?? new CellError(code);
  } catch {
    // A formula may reach where the host cannot read. The finding stands without its message, and so do all others.
    return new CellError(code);
  }
}
