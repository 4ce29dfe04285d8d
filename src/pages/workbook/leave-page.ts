import { showStatus } from "./show";

/**
 * Whether the page can be left for another of its addresses, or loaded again. When nobody serves it any more the browser
 * would show an error in its place: it stays, and says why.
 */
export async function canLeave(): Promise<boolean> {
  const answer = await fetch(location.pathname, { method: "HEAD", cache: "no-store" }).catch(() => undefined);
  if (answer?.ok) return true;
  showStatus(
    "Nobody serves this page any more, so it cannot open another workbook now. What you see still works: download it to take it along.",
    "warning",
  );
  return false;
}

/** Goes to an address of the page if it can be left. */
export async function goTo(address: string): Promise<void> {
  if (await canLeave()) location.assign(address);
}
