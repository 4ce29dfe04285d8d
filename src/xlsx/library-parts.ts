/**
 * The library finds notes and tables only under the paths that it would write itself, and dies of what it does not
 * find. Here the file is put as the library expects it; what our model does not hold is kept from it altogether.
 */
import { linksOf, type Parts, targetFrom } from "./parts";

/** What the library need not read: some programs' drawings end it, and it unrolls a validation cell by cell. */
export const notRead = ["dataValidations", "conditionalFormatting", "drawing", "picture", "legacyDrawing", "extLst"];

/** The bytes to give to the library, given those of the file. */
export async function forLibrary(bytes: Uint8Array, parts: Parts): Promise<Uint8Array> {
  const changed = new Map<string, string>();
  for (const sheet of parts.paths(/^xl\/worksheets\/[^/]+\.xml$/)) {
    const links = linksOf(sheet);
    const before = await parts.text(links);
    if (before === undefined) continue;
    const after = await linksForLibrary(before, parts, changed);
    if (after !== before) changed.set(links, after);
  }
  return changed.size > 0 ? parts.with(changed) : bytes;
}

/** Links to drawings go, those to notes and tables are written the library's way; others stay. */
async function linksForLibrary(links: string, parts: Parts, changed: Map<string, string>): Promise<string> {
  let after = links;
  for (const [link] of links.matchAll(/<(?:\w+:)?Relationship\s[^>]*>/g)) {
    const kind = /\sType=["'][^"']*\/(\w+)["']/.exec(link)?.[1];
    const target = /\sTarget=["']([^"']*)["']/.exec(link)?.[1] ?? "";
    const path = kind === "comments" || kind === "table" ? targetFrom("xl/worksheets/", target) : "";
    if (kind === "vmlDrawing" || kind === "drawing") after = after.replace(link, "");
    if (kind === "table") after = after.replace(link, link.replace(target, path.replace(/^xl\//, "../")));
    if (kind === "comments" && !/^xl\/comments\d+\.xml$/.test(path)) {
      const content = await parts.text(path);
      const name = `comments${1000 + changed.size}.xml`;
      if (content !== undefined) changed.set(`xl/${name}`, content);
      after = after.replace(link, content === undefined ? "" : link.replace(target, `../${name}`));
    } else if (kind === "comments") after = after.replace(link, link.replace(target, path.replace(/^xl\//, "../")));
  }
  return after;
}
