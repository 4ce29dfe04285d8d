/** The header keeps to one row: what a screen has no room for stands in its menu. */

import { isCard } from "./firing-card";
import type { Grid } from "./grid";
import { byId } from "./show";

export function prepareHeader(grid: Grid): void {
  const menu = byId("menu") as HTMLDetailsElement;
  const narrow = matchMedia("(width <= 640px)");
  const middling = matchMedia("(width <= 1180px)");
  const actions = menu.parentElement as HTMLElement;
  const place = () => {
    const [nav, items] = [byId("workbooks"), byId("menu-items")];
    if (narrow.matches) items.prepend(nav, byId("print"), byId("download"));
    else {
      actions.before(nav);
      if (middling.matches) items.prepend(byId("print"), byId("download"));
      else menu.before(byId("print"), byId("download"));
    }
  };
  for (const width of [narrow, middling]) width.addEventListener("change", place);
  place();

  const close = () => {
    menu.open = false;
  };
  menu.addEventListener("click", ({ target }) => {
    if (target instanceof Element && target.closest("#menu-items button, #menu-items a")) close();
  });
  addEventListener("pointerdown", ({ target }) => {
    if (target instanceof Node && !menu.contains(target)) close();
  });
  menu.addEventListener("keydown", ({ key }) => {
    if (key !== "Escape" || !menu.open) return;
    close();
    menu.querySelector("summary")?.focus();
  });
  prepareCard(grid);
}

/** One tap shows the firing card, and one more the sheet before. */
function prepareCard({ api, workbook }: Grid): void {
  const button = byId("card") as HTMLButtonElement;
  const cards = new Set(
    workbook()
      .sheets.filter(isCard)
      .map(({ name }) => name),
  );
  const book = api.getActiveWorkbook();
  const [first] = cards;
  button.hidden = first === undefined;
  if (!book || first === undefined) return;
  button.disabled = false;
  let before: string | undefined;
  const follow = () => button.setAttribute("aria-pressed", String(cards.has(book.getActiveSheet().getSheetName())));
  button.addEventListener("click", () => {
    const here = book.getActiveSheet().getSheetName();
    const there = cards.has(here) ? (before ?? book.getSheets()[0]?.getSheetName()) : first;
    before = here;
    const sheet = there === undefined ? undefined : book.getSheetByName(there);
    if (sheet) book.setActiveSheet(sheet);
  });
  api.addEvent(api.Event.ActiveSheetChanged, follow);
  follow();
}
