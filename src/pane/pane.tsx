import { useState } from "react";
import { catalogue } from "../core/catalogue";
import { CautionsPage } from "./cautions-page";
import { FunctionReference } from "./function-reference";

const pages = ["Functions", "Cautions"] as const;

/** The reference of all functions, and the cautions. */
export function Pane() {
  const [shown, show] = useState<(typeof pages)[number]>("Functions");
  return (
    <>
      <nav aria-label="Pages">
        {pages.map((page) => (
          <button
            key={page}
            type="button"
            aria-current={page === shown ? "page" : undefined}
            onClick={() => show(page)}
          >
            {page}
          </button>
        ))}
      </nav>
      <main>{shown === "Functions" ? <FunctionReference catalogue={catalogue} /> : <CautionsPage />}</main>
    </>
  );
}
