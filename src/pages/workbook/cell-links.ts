/** Where the selected cell leads to, below the sheet, to be followed with a click. */
import { AreaIndex } from "../../workbook/area-index";
import { placeNamed } from "../../workbook/references";
import type { Link } from "../../workbook/workbook";
import { goToCell } from "./go-to-cell";
import type { Grid } from "./grid";
import { showStatus } from "./show";
import { words } from "./words";

/** What a page may open; of other kinds, such as files, the address is shown alone. */
const opens = /^(?:https?|mailto):/i;

/** `around`: the element that the sheet fills. */
export function showCellLinks(grid: Grid, around: HTMLElement): void {
  const links = new Map(
    grid
      .workbook()
      .sheets.flatMap(({ name, links = [] }) =>
        links.length > 0 ? [[name, new AreaIndex(links.map((link) => ({ ...link.area, link })))] as const] : [],
      ),
  );
  if (links.size === 0) return;
  const line = document.createElement("p");
  line.id = "cell-link";
  line.hidden = true;
  around.append(line);
  const show = () => {
    const sheet = grid.api.getActiveWorkbook()?.getActiveSheet();
    const cell = sheet?.getSelection()?.getCurrentCell();
    const found = sheet && cell && links.get(sheet.getSheetName())?.at(cell.actualRow, cell.actualColumn);
    line.hidden = found === undefined;
    line.replaceChildren(...(found ? [linkTo(found.link, sheet?.getSheetName() ?? "", grid)] : []));
  };
  grid.onSelect(show);
  grid.api.addEvent(grid.api.Event.ActiveSheetChanged, show);
  show();
}

function linkTo({ address, place }: Link, sheet: string, grid: Grid): HTMLElement | string {
  const { leadsTo } = words().ownFile;
  if (address === undefined) {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = leadsTo(place ?? "");
    button.addEventListener("click", () => goToPlace(place ?? "", sheet, grid));
    return button;
  }
  if (!opens.test(address)) return leadsTo(address);
  const link = document.createElement("a");
  link.href = place === undefined ? address : `${address}#${place}`;
  link.target = "_blank";
  link.rel = "noopener noreferrer";
  link.textContent = leadsTo(address);
  return link;
}

function goToPlace(place: string, from: string, grid: Grid): void {
  const found = placeNamed(place, from, grid.workbook());
  const id = found && grid.api.getActiveWorkbook()?.getSheetByName(found.sheet)?.getSheetId();
  if (!found || id === undefined || !goToCell(grid, id, found.row, found.column)) {
    showStatus(words().ownFile.leadsNowhere(place), "warning");
  }
}
