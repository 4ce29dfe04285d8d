import type { Injector } from "@univerjs/core";
import { IRenderManagerService, type Spreadsheet } from "@univerjs/preset-sheets-core";
import type { Api } from "./grid";

/** Between two clicks that are one double click, in milliseconds; the engine's own measure. */
const longest = 500;
/** Before the engine opens the cell. */
const first = -100;

/**
 * Two clicks on a cell are a double click when hands were quick. The engine goes by a timer of its own, which runs late
 * while the page calculates: two clicks a second apart opened the cell, and what was typed over it was added to what
 * stood there.
 */
export function keepClicksApart(container: HTMLElement, api: Api, injector: Injector): void {
  const book = api.getActiveWorkbook();
  const render = book && injector.get(IRenderManagerService).getRenderById(book.getId());
  const cells = render?.mainComponent as Spreadsheet | null | undefined;
  if (!cells) throw new Error("the sheet is not drawn yet");
  let [before, last] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  container.addEventListener(
    "pointerup",
    ({ timeStamp }) => {
      [before, last] = [last, timeStamp];
    },
    { capture: true },
  );
  cells.onDblclick$.subscribeEvent({
    priority: first,
    next: ([, state]) => {
      if (last - before > longest) state.skipNextObservers = true;
    },
  });
}
