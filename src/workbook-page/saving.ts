import type { Grid } from "./grid";
import { keep } from "./kept-work";
import { canLeave } from "./leave-page";
import { showStatus } from "./show";

/** Long enough for a row of keystrokes and what follows from them, short enough for an impatient hand. */
const pause = 400;

/** Keeps the workbook after every change, and says so. Other tabs with the same workbook follow. */
export function startSaving(key: string, grid: Grid, keptAt: Date | undefined): void {
  showStatus(keptAt ? keptSince(keptAt) : "The sample; what you type is kept here.");
  const tabs = new BroadcastChannel("tea-mass-balance");
  let waiting: ReturnType<typeof setTimeout> | undefined;
  let saving = Promise.resolve();
  let lost = false;

  const save = () => {
    clearTimeout(waiting);
    waiting = undefined;
    saving = saving.then(async () => {
      try {
        const { savedAt } = await keep(key, grid.workbook());
        lost = false;
        showStatus(keptSince(savedAt));
        tabs.postMessage(key);
      } catch {
        lost = true;
        showStatus("This browser does not keep your work here: download it before you close the page.", "warning");
      }
    });
  };
  grid.onChange(() => {
    clearTimeout(waiting);
    waiting = setTimeout(save, pause);
  });

  // Going away: what is half typed counts, and there is no time to wait.
  const leave = async () => {
    await grid.finishTyping();
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
    if (data === key && waiting === undefined && (await canLeave())) location.reload();
  });
}

function keptSince(moment: Date): string {
  const time = moment.toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" });
  const today = moment.toDateString() === new Date().toDateString();
  return `Kept in this browser, ${today ? time : `${moment.toLocaleDateString([], { dateStyle: "medium" })}, ${time}`}`;
}
