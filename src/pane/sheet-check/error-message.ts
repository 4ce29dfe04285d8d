import type { Entry } from "../../core/entry";
import { addressOf } from "../../workbook-files/addresses";
import type { CellPlace, WorkbookHost } from "../host/workbook-host";
import { workingIn } from "../working/working-of";

/** The message of an error: the host's, or what the function says to the same arguments where the host has none. */
export async function errorMessage(
  host: WorkbookHost,
  place: CellPlace,
  catalogue: readonly Entry[],
): Promise<string | undefined> {
  try {
    const message = await host.errorMessage(place);
    if (message !== undefined && message !== "") return message;
    const cell = await host.read(addressOf(place.row, place.column), place);
    const working = await workingIn(cell, host, catalogue);
    const refused = working?.calls.flatMap(({ outcome }) =>
      outcome.is === "error" && outcome.message ? [outcome] : [],
    );
    return refused?.[0]?.message;
  } catch {
    // A formula may reach where the host cannot read. The finding stands without its message, and so do all others.
    return undefined;
  }
}
