import { words } from "./words";

/** Asks before something that cannot be taken back; true when the maker agrees. Escape means no. */
export function ask(question: string, agree: string, refuse = words().cancel): Promise<boolean> {
  const dialog = document.createElement("dialog");
  dialog.className = "question";
  const text = document.createElement("p");
  text.id = "question";
  text.textContent = question;
  dialog.setAttribute("aria-labelledby", text.id);
  const buttons = document.createElement("div");
  buttons.className = "buttons";
  buttons.append(closingButton(dialog, refuse, ""), closingButton(dialog, agree, "agreed"));
  dialog.append(text, buttons);
  document.body.append(dialog);
  dialog.showModal();
  return new Promise((answer) => {
    dialog.addEventListener("close", () => {
      dialog.remove();
      answer(dialog.returnValue === "agreed");
    });
  });
}

function closingButton(dialog: HTMLDialogElement, label: string, value: string): HTMLButtonElement {
  const button = document.createElement("button");
  button.type = "button";
  button.textContent = label;
  button.addEventListener("click", () => dialog.close(value));
  return button;
}
