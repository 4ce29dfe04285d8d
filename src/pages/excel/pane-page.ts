/// <reference types="office-js" />
import { mountPane } from "../../pane/mount-pane";
import { ExcelWorkbookHost } from "./excel-workbook-host";

/** The task pane in Excel. Opened in a plain browser there is no workbook, and the pane only has what can be read. */
async function start(place: HTMLElement): Promise<void> {
  const inExcel = typeof Office !== "undefined" && (await Office.onReady()).host === Office.HostType.Excel;
  // Office has themes of its own, whatever the system's is.
  if (inExcel && Office.context.officeTheme)
    place.dataset.theme = isDark(Office.context.officeTheme) ? "dark" : "light";
  await mountPane(place, inExcel ? new ExcelWorkbookHost() : undefined);
}

/** By the colour that Office itself writes on: older ones do not say whether their theme is dark. */
function isDark({ bodyBackgroundColor }: Office.OfficeTheme): boolean {
  const [red = 255, green = 255, blue = 255] = (bodyBackgroundColor.match(/[\da-f]{2}/gi) ?? []).map((part) =>
    Number.parseInt(part, 16),
  );
  return red * 0.299 + green * 0.587 + blue * 0.114 < 128;
}

const place = document.getElementById("pane");
if (place !== null) void start(place);
