import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { Pane } from "./pane";
import "./fluent-tokens.css";
import "./pane.css";

/** Shows the pane in an element of any page. The answer takes it away again. */
export function mountPane(element: HTMLElement): () => void {
  element.classList.add("tea-pane");
  const root = createRoot(element);
  root.render(
    <StrictMode>
      <Pane />
    </StrictMode>,
  );
  return () => {
    root.unmount();
    element.classList.remove("tea-pane");
  };
}
