import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import type { WorkbookHost } from "../host/workbook-host";
import type { Language } from "../words/languages";
import { firstSpeech, Pane } from "./pane";
import "./all-styles";

/**
 * Shows the pane in an element of any page, for a workbook; without one only what can be read. The answer takes it
 * away again. `onLanguage` hears which language it speaks, from the beginning.
 */
export async function mountPane(
  element: HTMLElement,
  host: WorkbookHost | undefined,
  onLanguage?: (language: Language) => void,
): Promise<() => void> {
  const speech = await firstSpeech(host);
  element.classList.add("tea-pane");
  const root = createRoot(element);
  root.render(
    <StrictMode>
      <Pane host={host} speech={speech} onLanguage={onLanguage} />
    </StrictMode>,
  );
  return () => {
    root.unmount();
    element.classList.remove("tea-pane");
  };
}
