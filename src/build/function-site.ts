import { cpSync, mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { catalogue } from "../core/catalogue";
import { asHtml } from "../generate/blocks";
import { functionPages } from "../generate/function-pages";
import { howSurePage, pictureOf } from "../generate/how-sure-page";
import { measuredStudies } from "../generate/measured";
import { picture } from "../generate/picture";
import { project } from "./folders";

const source = join(project, "src");
const style = join(source, "generate/page.css");

/**
 * Writes the pages of the functions, which Excel's help and the pane's working open, and how sure they are, beside the
 * pages in a folder.
 */
export function writeFunctionSite(folder: string): void {
  const docs = join(folder, "docs", "functions");
  mkdirSync(docs, { recursive: true });
  const studies = measuredStudies(project);
  for (const functionPage of functionPages(catalogue, studies)) {
    writeFileSync(join(docs, `${functionPage.name}.html`), asHtml(functionPage));
  }
  cpSync(style, join(docs, "page.css"));
  writeFileSync(join(folder, "docs", "how-sure.html"), asHtml(howSurePage(studies), "functions/page.css"));
  mkdirSync(join(folder, "docs", "how-sure"), { recursive: true });
  for (const study of studies) writeFileSync(join(folder, "docs", pictureOf(study)), picture(study));
}
