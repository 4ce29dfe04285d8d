import { cpSync, mkdirSync, writeFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { catalogue } from "../core/catalogue";
import { asHtml } from "../generate/blocks";
import { functionPages } from "../generate/function-pages";

const style = resolve(dirname(fileURLToPath(import.meta.url)), "../generate/page.css");

/** Writes the pages of the functions, which Excel's help and the pane's working open, beside the pages in a folder. */
export function writeFunctionSite(folder: string): void {
  const docs = join(folder, "docs", "functions");
  mkdirSync(docs, { recursive: true });
  for (const functionPage of functionPages(catalogue)) {
    writeFileSync(join(docs, `${functionPage.name}.html`), asHtml(functionPage));
  }
  cpSync(style, join(docs, "page.css"));
}
