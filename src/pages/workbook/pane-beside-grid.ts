import "../../pane/all-styles";
import type { Grid } from "./grid";
import { byId, showStatus } from "./show";
import { speak, words } from "./words";

const rememberedAs = "tea-mass-balance pane";

/** The button that opens and closes the pane beside the grid. As it was left, so it is found again. */
export function preparePane(grid: Grid): void {
  const button = byId("pane-button") as HTMLButtonElement;
  const place = byId("pane");
  let mounted: Promise<void> | undefined;

  const show = (isOpen: boolean): void => {
    place.hidden = !isOpen;
    button.setAttribute("aria-expanded", String(isOpen));
    document.body.classList.toggle("with-pane", isOpen);
    if (!isOpen) return;
    mounted ??= mount(place, grid).catch((problem: unknown) => {
      mounted = undefined;
      showStatus(words().opening.paneFailed, "warning");
      throw problem;
    });
  };

  button.disabled = false;
  button.addEventListener("click", () => {
    const isOpen = place.hidden !== false;
    show(isOpen);
    remember(isOpen);
    // Also where the pane is below the grid and out of sight.
    if (isOpen) mounted?.then(() => place.focus());
  });
  show(isRemembered());
}

/** The pane's script is fetched when someone wants it. */
async function mount(place: HTMLElement, grid: Grid): Promise<void> {
  const [{ mountPane }, { EmbeddedWorkbookHost }] = await Promise.all([
    import("../../pane/mount-pane"),
    import("./embedded-workbook-host"),
  ]);
  const host = new EmbeddedWorkbookHost(grid);
  await mountPane(place, host, speak);
  // For the tests, and for the curious in the browser's console.
  Object.assign(globalThis, { workbookHost: host });
}

// A browser that forbids storage still shows the pane; it only forgets it.

function remember(isOpen: boolean): void {
  try {
    localStorage.setItem(rememberedAs, isOpen ? "open" : "closed");
  } catch {}
}

function isRemembered(): boolean {
  try {
    return localStorage.getItem(rememberedAs) === "open";
  } catch {
    return false;
  }
}
