import { SaxesParser } from "saxes";

/** An element of an XML part, with names as they are written without their prefix. */
export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly XmlElement[];
  readonly text: string;
}

/** The outermost element of a part. */
export function parseXml(content: string): XmlElement {
  const root = { name: "", attributes: {}, children: [] as XmlElement[], text: "" };
  const open = [root];
  const parser = new SaxesParser();
  parser.on("opentag", ({ name, attributes }) => {
    const unprefixed = Object.entries(attributes).map(([key, value]) => [withoutPrefix(key), value]);
    const element = {
      ...root,
      name: withoutPrefix(name),
      attributes: Object.fromEntries(unprefixed),
      children: [],
      text: "",
    };
    open.at(-1)?.children.push(element);
    open.push(element);
  });
  parser.on("text", (text) => {
    const element = open.at(-1);
    if (element) element.text += text;
  });
  parser.on("closetag", () => {
    open.pop();
  });
  parser.write(content).close();
  const [outermost] = root.children;
  if (!outermost) throw new Error("the part has no element");
  return outermost;
}

const withoutPrefix = (name: string): string => name.slice(name.indexOf(":") + 1);

/** The first element that a path of names leads to. */
export function elementAt(from: XmlElement | undefined, ...path: readonly string[]): XmlElement | undefined {
  return path.reduce<XmlElement | undefined>(
    (element, name) => element?.children.find((child) => child.name === name),
    from,
  );
}

/** Every element of this name inside, in the order of the part. */
export function elementsNamed(name: string, inside: XmlElement | undefined): XmlElement[] {
  return (inside?.children ?? []).flatMap((child) => [
    ...(child.name === name ? [child] : []),
    ...elementsNamed(name, child),
  ]);
}
