import { showStatus } from "./show";
import { words } from "./words";

/**
 * Whether the page can be left for another of its addresses, or loaded again. When nobody serves it any more the browser
 * would show an error in its place: it stays, and says why.
 */
export async function canLeave(): Promise<boolean> {
  const answer = await fetch(location.pathname, { method: "HEAD", cache: "no-store" }).catch(() => undefined);
  if (answer?.ok) return true;
  showStatus(words().keeping.nobodyServes, "warning");
  return false;
}

/** Goes to an address of the page if it can be left. */
export async function goTo(address: string): Promise<void> {
  if (await canLeave()) location.assign(address);
}
