import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import type { WorkbookHost } from "../host/workbook-host";
import { Pane } from "./pane";
import "./all-styles";

/**
 * Shows the pane in an element of any page, for a workbook; without one only what can be read. The answer takes it
 * away again.
 */
export function mountPane(element: HTMLElement, host: WorkbookHost | undefined): () => void {
  element.classList.add("tea-pane");
  const root = createRoot(element);
  root.render(
    <StrictMode>
      <Pane host={host} />
    </StrictMode>,
  );
  return () => {
    root.unmount();
    element.classList.remove("tea-pane");
  };
}
