import { messagesIn } from "../../words/in-every-language/messages";
import { languageIds } from "../../words/languages";

/**
 * Fetches, once the sheet stands and nothing else is to be done, whatever the page needs later to show and save the work: the
 * program that serves it may be ended, or the network fail, before anybody asks for a download.
 */
export async function fetchAhead(): Promise<void> {
  await quietMoment();
  const parts = [
    () => import("../../xlsx/spreadsheet-writer").then(({ spreadsheetWriter }) => spreadsheetWriter()),
    () => import("../../xlsx/write-workbook"),
    () => import("../../xlsx/patch/patchable-book"),
    () => import("../../xlsx/named-functions"),
    () => import("../../xlsx/patch/edits-between"),
    () => import("../../pane/mount-pane"),
    () => import("../../pane/parts").then(({ fetchParts }) => fetchParts()),
    ...languageIds.map((language) => () => messagesIn[language]()),
    () => import("./embedded-workbook-host"),
    () => import("./chart-picture"),
  ];
  // One after the other: the sheet comes first. What fails is tried again when it is wanted, and says so then.
  for (const part of parts) await part().catch(() => undefined);
  document.documentElement.dataset.fetched = "yes";
}

const quietMoment = (): Promise<unknown> =>
  new Promise((done) => {
    if ("requestIdleCallback" in globalThis) requestIdleCallback(done, { timeout: 3000 });
    else setTimeout(done, 1000);
  });
