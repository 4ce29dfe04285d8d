/** The ways of a keyboard around the page: the sheet keeps the Tab key to itself, unless Escape came just before. */
import type { Grid } from "./grid";
import { byId } from "./show";

interface Keys {
  /** `tellWayOut` is called when the Tab key is first pressed in the sheet, which stays there. */
  follow(grid: Grid, tellWayOut: () => void): void;
}

/** To be called before the grid is there: the engine listens at the same place, and who listens first decides. */
export function prepareKeys(): Keys {
  let followed: { grid: Grid; tellWayOut: () => void } | undefined;
  let mayLeave = false;
  let isTold = false;
  addEventListener(
    "keydown",
    (event) => {
      if (!followed) return;
      const { grid, tellWayOut } = followed;
      const isInGrid = byId("grid").contains(document.activeElement);
      if (event.key === "F6") {
        event.preventDefault();
        event.stopImmediatePropagation();
        goAround(event.shiftKey ? -1 : 1);
      } else if (event.key === "Tab" && isInGrid && mayLeave) {
        // The engine sees nothing of it, and the browser goes on to what comes next.
        event.stopImmediatePropagation();
        event.preventDefault();
        leave(event.shiftKey);
      } else if (event.key === "Tab" && isInGrid && !isTold) {
        isTold = true;
        tellWayOut();
      }
      if (event.key === "Shift") return;
      mayLeave = event.key === "Escape" && isInGrid && grid.api.getActiveWorkbook()?.isCellEditing() !== true;
    },
    { capture: true },
  );
  return {
    follow: (grid, tellWayOut) => {
      followed = { grid, tellWayOut };
    },
  };
}

/** On to the sheet tabs below, or back to what stands above. */
function leave(isBack: boolean): void {
  const pane = byId("pane");
  if (!isBack) byId("grid").querySelector<HTMLElement>("[role=tab][aria-selected=true]")?.focus();
  else if (pane.hidden) byId("menu").querySelector("summary")?.focus();
  else pane.focus();
}

/** Header, sheet, pane, and the header again. */
function goAround(step: 1 | -1): void {
  const [header, grid, pane] = [document.querySelector(".page-header"), byId("grid"), byId("pane")];
  const stops = [
    { part: header, enter: () => byId("pane-button").focus() },
    { part: grid, enter: focusGrid },
    ...(pane.hidden ? [] : [{ part: pane, enter: () => pane.focus() }]),
  ];
  const here = stops.findIndex(({ part }) => part?.contains(document.activeElement));
  stops[here < 0 ? 1 : (here + step + stops.length) % stops.length]?.enter();
}

/** The grid takes its keys in a field that cannot be seen. */
export function focusGrid(): void {
  byId("grid").querySelector<HTMLElement>("[data-u-comp=editor]")?.focus();
}
