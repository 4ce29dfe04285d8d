/** The plain parts of the page around the grid. */

export function byId(id: string): HTMLElement {
  const element = document.getElementById(id);
  if (!element) throw new Error(`the page has no element "${id}"`);
  return element;
}

/** The line that says how the work stands; screen readers read it out. */
export function showStatus(text: string, kind: "plain" | "warning" = "plain"): void {
  const status = byId("status");
  status.textContent = text;
  status.classList.toggle("warning", kind === "warning");
}

/** A message that stays, with what can be done about it. */
export function showNotice(text: string, actions: readonly (readonly [label: string, action: () => void])[]): void {
  const notice = byId("notice");
  notice.replaceChildren(
    text,
    ...actions.map(([label, action]) => {
      const button = document.createElement("button");
      button.type = "button";
      button.textContent = label;
      button.addEventListener("click", action);
      return button;
    }),
  );
  notice.hidden = false;
}

/** Says above the sheet what is going on, with the way to end it; gives the way to say no more. */
export function showWaiting(text: string, label: string, end: () => void): () => void {
  const line = document.createElement("p");
  line.className = "waiting";
  line.setAttribute("role", "status");
  const button = document.createElement("button");
  button.type = "button";
  button.textContent = label;
  button.addEventListener("click", end);
  line.append(text, button);
  byId("notice").before(line);
  return () => line.remove();
}
