/** The parts that say what belongs to a file: with a part more, or one less, and nothing else changed. */
import { childrenOf, prefixAt, replaced, TagScanner, valueIn, withAttribute } from "./tag-scanner";

const rootPrefix = (text: string): string => prefixAt(text, new TagScanner(text).next()?.start ?? 0);

/** [Content_Types].xml without what it says of a part. */
export const withoutType = (text: string, path: string): string =>
  without(text, (tag) => valueIn(tag, "PartName")?.replace(/^\//, "").toLowerCase() === path.toLowerCase());

export function withType(text: string, path: string, type: string): string {
  return withLast(text, `<${rootPrefix(text)}Override PartName="/${path}" ContentType="${type}"/>`);
}

/** Relations without those of a kind. */
export const withoutRelation = (text: string, kind: string): string =>
  without(text, (tag) => valueIn(tag, "Type")?.endsWith(`/${kind}`) === true);

export function withRelation(text: string, type: string, target: string): string {
  const ids = new Set(childrenOf(text).map(({ start, inside }) => valueIn(text.slice(start, inside), "Id")));
  let number = ids.size + 1;
  while (ids.has(`rId${number}`)) number += 1;
  return withLast(text, `<${rootPrefix(text)}Relationship Id="rId${number}" Type="${type}" Target="${target}"/>`);
}

function without(text: string, isMeant: (tag: string) => boolean): string {
  const meant = childrenOf(text).filter(({ start, inside }) => isMeant(text.slice(start, inside)));
  return replaced(
    text,
    meant.map(({ start, end }) => ({ start, end, text: "" })),
  );
}

function withLast(text: string, element: string): string {
  const at = text.lastIndexOf("</");
  return replaced(text, [{ start: at, end: at, text: element }]);
}

/** Where an element begins that has to stand behind all of these, in the part of a workbook. */
export const placeBehind = (text: string, before: readonly string[]): number =>
  childrenOf(text)
    .filter(({ name }) => before.includes(name))
    .at(-1)?.end ?? 0;

const beforeCalculation = ["sheets", "functionGroups", "externalReferences", "definedNames"];

/** The workbook's part, asking the next program to work everything out when it opens the file. */
export function withFullCalculation(text: string): string {
  const children = childrenOf(text);
  const there = children.find(({ name }) => name === "calcPr");
  if (there) {
    const tag = text.slice(there.start, there.inside);
    return replaced(text, [{ start: there.start, end: there.inside, text: withAttribute(tag, "fullCalcOnLoad", "1") }]);
  }
  const at = placeBehind(text, beforeCalculation);
  return replaced(text, [{ start: at, end: at, text: `<${rootPrefix(text)}calcPr fullCalcOnLoad="1"/>` }]);
}
