import type { Direction } from "../../sorting/row-order";
import { words } from "./words";

interface SortQuestion {
  readonly rows: string;
  /** What the columns are called, with the one that is offered first. */
  readonly headings: readonly string[];
  readonly offered: number;
  /** The columns beside the table that could go along, in words. */
  readonly beside: string | undefined;
  /** What to know beforehand; empty when there is nothing. */
  readonly warning: string;
}

export interface SortAnswer {
  /** The place among the headings. */
  readonly by: number;
  readonly direction: Direction;
  readonly withBeside: boolean;
}

/** Asks by which column, and which way. `attempt` says why it could not be done, and the question stays; or "". */
export function askHowToSort(question: SortQuestion, attempt: (answer: SortAnswer) => string): void {
  const dialog = document.createElement("dialog");
  dialog.className = "question";
  const rows = element("p", question.rows);
  rows.id = "sorted-rows";
  dialog.setAttribute("aria-labelledby", rows.id);

  const column = document.createElement("select");
  column.append(...question.headings.map((heading, place) => new Option(heading, String(place))));
  column.selectedIndex = question.offered;
  const directions = document.createElement("fieldset");
  directions.setAttribute("aria-labelledby", rows.id);
  const choices = (["up", "down"] as const).map((direction) => {
    const choice = input("radio", "direction");
    choice.checked = direction === "up";
    directions.append(labelled(choice, words().sorting.directions[direction]));
    return { direction, choice };
  });
  const beside = input("checkbox", "beside");
  beside.checked = true;
  const reason = element("p", "");
  reason.setAttribute("role", "alert");

  const buttons = document.createElement("div");
  buttons.className = "buttons";
  const refuse = element("button", words().cancel) as HTMLButtonElement;
  refuse.type = "button";
  refuse.addEventListener("click", () => dialog.close());
  buttons.append(refuse, element("button", words().sorting.agree));

  const form = document.createElement("form");
  const by = document.createElement("label");
  by.append(words().sorting.by, column);
  form.append(rows, by, directions);
  if (question.beside !== undefined) form.append(labelled(beside, words().sorting.beside(question.beside)));
  if (question.warning) form.append(element("p", question.warning));
  form.append(reason, buttons);
  column.addEventListener("keydown", (event) => {
    if (event.key !== "Enter" || isOpen(column)) return;
    // In a closed list Enter means the same as in any other field.
    event.preventDefault();
    form.requestSubmit();
  });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const direction = choices.find(({ choice }) => choice.checked)?.direction ?? "up";
    reason.textContent = attempt({ by: column.selectedIndex, direction, withBeside: beside.checked });
    if (!reason.textContent) dialog.close();
  });
  dialog.append(form);
  dialog.addEventListener("close", () => dialog.remove());
  document.body.append(dialog);
  dialog.showModal();
}

/** A browser that does not know the word opens the list, as before. */
function isOpen(list: HTMLSelectElement): boolean {
  try {
    return list.matches(":open");
  } catch {
    return true;
  }
}

function element(kind: "p" | "button", text: string): HTMLElement {
  const made = document.createElement(kind);
  made.textContent = text;
  return made;
}

function input(type: "radio" | "checkbox", name: string): HTMLInputElement {
  const made = document.createElement("input");
  Object.assign(made, { type, name });
  return made;
}

function labelled(field: HTMLInputElement, text: string): HTMLElement {
  const label = document.createElement("label");
  label.append(field, text);
  return label;
}
