import type { Grid } from "./grid";
import { keep } from "./kept-work";
import { isSettled, keepAtLastMoment } from "./last-moment";
import { canLeave } from "./leave-page";
import { showStatus } from "./show";
import { timeInWords, words } from "./words";

/** Long enough for a row of keystrokes and what follows from them, short enough for an impatient hand. */
const pause = 400;

/**
 * Keeps the workbook after every change, and says so. Other tabs with the same workbook follow. Gives a way to keep at
 * once what is not kept yet, half-typed text among it.
 */
export function startSaving(key: string, grid: Grid, keptAt: Date | undefined): () => Promise<void> {
  showStatus(keptAt ? keptSince(keptAt) : words().sample.shown);
  const tabs = new BroadcastChannel("tea-mass-balance");
  let waiting: ReturnType<typeof setTimeout> | undefined;
  let saving = Promise.resolve();
  let lost = false;
  /** Whether something was changed that the browser has not kept yet. */
  let unkept = false;
  let follows = false;

  const save = () => {
    clearTimeout(waiting);
    waiting = undefined;
    if (isSettled(key)) return;
    saving = saving.then(async () => {
      try {
        const { savedAt } = await keep(key, grid.workbook());
        // After a warning that nothing was kept, this is what is waited for.
        showStatus(keptSince(savedAt), lost ? "plain" : "in passing");
        lost = false;
        unkept = waiting !== undefined;
        tabs.postMessage(key);
      } catch {
        lost = true;
        showStatus(words().keeping.notKept, "warning");
      }
    });
  };
  grid.onChange(() => {
    unkept = true;
    clearTimeout(waiting);
    waiting = setTimeout(save, pause);
  });

  // Going away: what is half typed counts, and there is no time to wait.
  const leave = async () => {
    if (follows || isSettled(key)) return;
    // The cell holds what was typed as soon as this is called.
    const typed = grid.finishTyping();
    if (unkept) keepAtLastMoment(key, grid.workbook());
    await typed;
    if (waiting !== undefined) save();
  };
  addEventListener("pagehide", leave);
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") leave();
  });
  addEventListener("beforeunload", (event) => {
    if (lost) event.preventDefault();
  });

  // The same workbook in another tab was changed: two versions must not overwrite each other.
  tabs.addEventListener("message", async ({ data }) => {
    if (data === key && waiting === undefined && (await canLeave())) {
      follows = true;
      location.reload();
    }
  });

  return async () => {
    await grid.finishTyping();
    if (waiting !== undefined) save();
    await saving;
  };
}

const keptSince = (moment: Date): string => words().keeping.kept(timeInWords(moment));
