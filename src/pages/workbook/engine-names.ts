/** The engine draws buttons of its own and names none of them. */
import { words } from "./words";

/** Names each as soon as it is there; the engine draws them anew when it likes. */
export function nameEngineParts(container: HTMLElement): void {
  const { addSheet, allSheets, cellName, formula, others, furtherNotices } = words().engine;
  const name = () => {
    for (const canvas of container.querySelectorAll("canvas[tabindex='1']")) canvas.setAttribute("tabindex", "-1");
    for (const track of container.querySelectorAll("[role=track]")) nameZoom(track);
    const [add, all] = container.querySelectorAll("[data-u-comp=sheet-bar-append-button]");
    put(add, addSheet);
    put(all, allSheets);
    for (const field of container.querySelectorAll("input")) put(field, cellName);
    for (const editor of container.querySelectorAll("[data-u-comp=editor]")) {
      if (!editor.hasAttribute("role")) editor.setAttribute("role", "textbox");
      put(editor, formula);
      // How to get out again, for those who come to it with the keyboard.
      editor.setAttribute("aria-describedby", "key-hint");
    }
    for (const opener of container.querySelectorAll("a[aria-expanded]:not([role])")) {
      opener.setAttribute("role", "button");
      put(opener, others);
    }
    for (const around of container.querySelectorAll("div[data-slot=dropdown-menu-trigger]")) handOn(around);
    const [, ...further] = container.querySelectorAll("section[aria-label^=Notifications]");
    for (const section of further) section.setAttribute("aria-label", furtherNotices);
    for (const button of container.querySelectorAll("button")) {
      if (!button.textContent?.trim()) put(button, others);
    }
  };
  new MutationObserver(name).observe(container, {
    childList: true,
    subtree: true,
    attributeFilter: ["aria-expanded"],
  });
  name();
}

function nameZoom(track: Element): void {
  const { zoomOut, zoomIn, zoomTo, zoom } = words().engine;
  const [less, more] = [track.parentElement?.previousElementSibling, track.parentElement?.nextElementSibling];
  put(less?.matches("button") ? less : track.previousElementSibling, zoomOut);
  put(more?.matches("button") ? more : track.nextElementSibling, zoomIn);
  for (const part of track.querySelectorAll("a[role=button]")) put(part, zoomTo);
  for (const handle of track.querySelectorAll("button")) {
    handle.removeAttribute("role");
    put(handle, zoom);
  }
  track.setAttribute("role", "presentation");
}

/** What is said of a box around a button belongs to the button. */
function handOn(around: Element): void {
  const button = around.querySelector("button");
  for (const attribute of ["aria-haspopup", "aria-expanded"]) {
    const value = around.getAttribute(attribute);
    if (value === null) continue;
    around.removeAttribute(attribute);
    button?.setAttribute(attribute, value);
  }
}

function put(element: Element | null | undefined, name: string): void {
  if (element && !element.getAttribute("aria-label")) element.setAttribute("aria-label", name);
}
