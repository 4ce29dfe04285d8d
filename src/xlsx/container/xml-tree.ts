/** A part as a tree: for parts that are small in every honest file. */
import { Refusal } from "../refusal";
import type { Archive, Entry } from "./archive";
import { type Attributes, parseXmlPieces, readXml, type XmlHandler } from "./xml-events";

/** An element, with names as they are written without their prefix. */
export interface XmlElement {
  readonly name: string;
  readonly attributes: Attributes;
  readonly children: readonly XmlElement[];
  readonly text: string;
}

const mostElements = 500_000;

/** The outermost element of a part. */
export const treeOf = (archive: Archive, entry: Entry): XmlElement =>
  grown(entry.path, (handler) => readXml(archive, entry, handler));

/** The outermost element of a text. */
export const parseXml = (text: string): XmlElement =>
  grown("the text", (handler) => parseXmlPieces("the text", handler, (write) => write(text)));

function grown(path: string, read: (handler: XmlHandler) => void): XmlElement {
  const root = { name: "", attributes: {} as Attributes, children: [] as XmlElement[], text: "" };
  const open = [root];
  let elements = 0;
  read({
    open(name, attributes) {
      elements += 1;
      if (elements > mostElements) {
        throw new Refusal({ kind: "many elements", path, most: mostElements });
      }
      const element = { name, attributes: withoutPrefixes(attributes), children: [] as XmlElement[], text: "" };
      open.at(-1)?.children.push(element);
      open.push(element);
    },
    text(text) {
      const element = open.at(-1);
      if (element) element.text += text;
    },
    close: () => void open.pop(),
  });
  // A part without an element is not well-formed, and was refused.
  return root.children[0] as XmlElement;
}

/** A map without a prototype: a name like `constructor` is a name. */
function withoutPrefixes(attributes: Attributes): Attributes {
  const plain: Record<string, string> = Object.create(null);
  for (const key in attributes) plain[key.slice(key.indexOf(":") + 1)] = attributes[key] as string;
  return plain;
}

/** The first element that a path of names leads to. */
export function elementAt(from: XmlElement | undefined, ...path: readonly string[]): XmlElement | undefined {
  return path.reduce<XmlElement | undefined>(
    (element, name) => element?.children.find((child) => child.name === name),
    from,
  );
}

/** The children of this name of the element that a path leads to. */
export const childrenAt = (from: XmlElement | undefined, ...path: readonly string[]): readonly XmlElement[] =>
  elementAt(from, ...path)?.children ?? [];

/** Every element of this name inside, in the order of the part. */
export function elementsNamed(name: string, inside: XmlElement | undefined): XmlElement[] {
  return (inside?.children ?? []).flatMap((child) => [
    ...(child.name === name ? [child] : []),
    ...elementsNamed(name, child),
  ]);
}
