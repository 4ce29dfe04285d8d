import { words } from "./words";

/** Asks before something that cannot be taken back; true when the maker agrees. Escape means no. */
export const ask = async (question: string, agree: string, refuse = words().cancel): Promise<boolean> =>
  (await choose(question, [refuse, agree])) === agree;

/** Asks what of several to do; undefined when the maker closes the question with Escape. */
export function choose(question: string, answers: readonly string[]): Promise<string | undefined> {
  const dialog = document.createElement("dialog");
  dialog.className = "question";
  const text = document.createElement("p");
  text.id = "question";
  text.textContent = question;
  dialog.setAttribute("aria-labelledby", text.id);
  const buttons = document.createElement("div");
  buttons.className = "buttons";
  buttons.append(...answers.map((answer) => closingButton(dialog, answer, answer)));
  dialog.append(text, buttons);
  document.body.append(dialog);
  dialog.showModal();
  return new Promise((answer) => {
    dialog.addEventListener("close", () => {
      dialog.remove();
      answer(dialog.returnValue === "" ? undefined : dialog.returnValue);
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
