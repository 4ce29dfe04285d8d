/** Lists of a part with items more, and lists that it does not have yet. */
import { childrenOf, type Replacement, type Span, withAttribute } from "./tag-scanner";

/** A list with more items behind its own; `count` is how many it holds then. */
export function grown(text: string, list: Span, items: string, count: number, name: string): Replacement[] {
  const { start, end, inside, insideEnd } = list;
  const isEmpty = inside === end;
  const tag = text.slice(start, inside);
  const open = withAttribute(isEmpty ? tag.replace(/\s*\/>$/, ">") : tag, "count", String(count));
  if (isEmpty) return [{ start, end, text: `${open}${items}</${name}>` }];
  return [
    { start, end: inside, text: open },
    { start: insideEnd, end: insideEnd, text: items },
  ];
}

/** A list that comes in, before the first of those that its part has behind it. */
export function placed(text: string, name: string, list: string, order: readonly string[]): Replacement {
  const behind = childrenOf(text).find((each) => order.indexOf(each.name) > order.indexOf(name));
  const at = behind?.start ?? text.lastIndexOf("</");
  return { start: at, end: at, text: list };
}
