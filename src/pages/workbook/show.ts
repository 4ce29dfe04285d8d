/** The plain parts of the page around the grid. */

export function byId(id: string): HTMLElement {
  const element = document.getElementById(id);
  if (!element) throw new Error(`the page has no element "${id}"`);
  return element;
}

/** Milliseconds for which a message stands that somebody has to read. */
const reading = 8000;
let heldUntil = 0;
let waiting: ReturnType<typeof setTimeout> | undefined;

/**
 * The line that says how the work stands; screen readers read it out. What is said in passing waits until a warning, or what
 * became of something that was asked for, has had time to be read.
 */
export function showStatus(text: string, kind: "plain" | "answer" | "warning" | "in passing" = "plain"): void {
  clearTimeout(waiting);
  const left = heldUntil - Date.now();
  if (kind === "in passing" && left > 0) {
    waiting = setTimeout(() => showStatus(text), left);
    return;
  }
  heldUntil = kind === "warning" || kind === "answer" ? Date.now() + reading : 0;
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
