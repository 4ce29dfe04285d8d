/** The files of the maker's own that this browser keeps: to choose from, and to remove. */
import { type OwnWork, readOwnWorks } from "./kept-work";
import { goTo } from "./leave-page";
import { removeOwn } from "./own-file";
import { dayInWords, words } from "./words";

/** Shows the list; done when it is closed. `here`: the key of the workbook that the page shows. */
export async function showOwnFiles(here: string): Promise<void> {
  const dialog = document.createElement("dialog");
  dialog.className = "question files";
  const title = document.createElement("p");
  title.id = "files-title";
  title.textContent = words().ownFile.kept;
  dialog.setAttribute("aria-labelledby", title.id);
  const list = document.createElement("ul");
  const buttons = document.createElement("div");
  buttons.className = "buttons";
  buttons.append(button(words().ownFile.close, () => dialog.close()));
  dialog.append(title, list, buttons);
  document.body.append(dialog);

  const fill = async () => {
    const works = await readOwnWorks();
    if (works.length === 0) dialog.close();
    list.replaceChildren(...works.map((work) => line(work, here, remove)));
  };
  const remove = async ({ key, name }: OwnWork) => {
    if (!(await removeOwn(key, name))) return;
    // The page shows it no more.
    if (key === here) return location.replace(location.pathname);
    const link = document.querySelector(`#workbooks a[href="?workbook=${key}"]`);
    link?.remove();
    await fill();
  };
  await fill();
  dialog.showModal();
  await new Promise((done) => dialog.addEventListener("close", done));
  dialog.remove();
}

function line(work: OwnWork, here: string, remove: (work: OwnWork) => unknown): HTMLLIElement {
  const link = document.createElement("a");
  link.className = "file-link";
  link.href = `?workbook=${work.key}`;
  link.textContent = work.name;
  if (work.key === here) link.setAttribute("aria-current", "page");
  link.addEventListener("click", (event) => {
    event.preventDefault();
    void goTo(link.href);
  });
  const day = document.createElement("time");
  day.dateTime = work.changedAt.toISOString();
  day.textContent = words().ownFile.changed(dayInWords(work.changedAt));
  const removal = button(words().ownFile.remove, () => remove(work));
  removal.setAttribute("aria-label", `${words().ownFile.remove}: ${work.name}`);
  const item = document.createElement("li");
  item.append(link, day, removal);
  return item;
}

function button(label: string, action: () => unknown): HTMLButtonElement {
  const made = document.createElement("button");
  made.type = "button";
  made.textContent = label;
  made.addEventListener("click", action);
  return made;
}
