/**
 * metadata.xml, which says of a formula that its answer spills: cells name the place of this in a list there
 * (ECMA-376 part 1, 18.9; [MS-XLSX] 2.2.4.3 for the property of dynamic arrays).
 */
import { grown, placed } from "./growing-lists";
import { childrenOf, prefixAt, type Replacement, replaced, type Span, TagScanner, valueIn } from "./tag-scanner";

const namespace = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const arrays = "http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray";
const propertyId = "{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}";
const listOrder = [
  "metadataTypes",
  "metadataStrings",
  "mdxMetadata",
  "futureMetadata",
  "cellMetadata",
  "valueMetadata",
  "extLst",
];

export interface SpillMetadata {
  /** What a cell says in `cm`. */
  readonly number: number;
  /** The part where it had to change. */
  readonly changed: string | undefined;
}

export function spillMetadata(text: string | undefined): SpillMetadata {
  if (text === undefined) {
    const start = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<metadata xmlns="${namespace}"></metadata>`;
    return { number: 1, changed: spillMetadata(start).changed };
  }
  const x = prefixAt(text, new TagScanner(text).next()?.start ?? 0);
  const lists = childrenOf(text);
  const list = (name: string) => lists.find((each) => each.name === name);
  const itemsOf = (span: Span | undefined) => (span ? childrenOf(text, span) : []);
  const tagOf = (span: Span) => text.slice(span.start, span.inside);
  const types = itemsOf(list("metadataTypes"));
  const known = types.findIndex((type) => valueIn(tagOf(type), "name") === "XLDAPR") + 1;
  const cells = itemsOf(list("cellMetadata"));
  const used = cells.findIndex(
    (bk) => known > 0 && new RegExp(`<(?:\\w+:)?rc\\s[^>]*\\bt="${known}"`).test(text.slice(bk.start, bk.end)),
  );
  if (used >= 0) return { number: used + 1, changed: undefined };
  const type = known > 0 ? known : types.length + 1;
  const replacements: Replacement[] = [];
  const append = (name: string, item: string) => {
    const span = list(name);
    if (span) replacements.push(...grown(text, span, item, itemsOf(span).length + 1, `${x}${name}`));
    else replacements.push(placed(text, name, `<${x}${name} count="1">${item}</${x}${name}>`, listOrder));
  };
  if (known === 0) {
    append(
      "metadataTypes",
      `<${x}metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/>`,
    );
  }
  // One list for each type: no type had one of this name.
  const hasFuture = lists.some((each) => each.name === "futureMetadata" && valueIn(tagOf(each), "name") === "XLDAPR");
  if (!hasFuture) {
    const property = `<xda:dynamicArrayProperties xmlns:xda="${arrays}" fDynamic="1" fCollapsed="0"/>`;
    const ext = `<${x}ext uri="${propertyId}">${property}</${x}ext>`;
    const future = `<${x}futureMetadata name="XLDAPR" count="1"><${x}bk><${x}extLst>${ext}</${x}extLst></${x}bk></${x}futureMetadata>`;
    replacements.push(placed(text, "futureMetadata", future, listOrder));
  }
  append("cellMetadata", `<${x}bk><${x}rc t="${type}" v="0"/></${x}bk>`);
  return { number: cells.length + 1, changed: replaced(text, replacements) };
}
