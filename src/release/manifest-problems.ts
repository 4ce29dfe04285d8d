import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { namespace } from "../core/namespace";
import { elementAt, elementsNamed, parseXml, type XmlElement } from "../xlsx/container/xml-tree";

/** The most characters that Excel takes in a short and in a long text of a manifest. */
const longest = { ShortStrings: 125, LongStrings: 250 } as const;

interface Built {
  readonly version: string;
  readonly origin: string;
  /** What is served at the origin. */
  readonly folder: string;
}

/** What is wrong with the manifest of a build, one line each. */
export function manifestProblems(xml: string, { version, origin, folder }: Built): string[] {
  const problems: string[] = [];
  const holds = (condition: boolean, problem: string): void => {
    if (!condition) problems.push(problem);
  };
  const manifest = parseXml(xml);
  const textAt = (...path: string[]): string => elementAt(manifest, ...path)?.text.trim() ?? "";
  const resources = elementAt(manifest, "VersionOverrides", "Resources");

  holds(/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/.test(textAt("Id")), "its Id is no GUID");
  holds(textAt("Version") === `${version}.0`, `its Version is ${textAt("Version")}, not ${version}.0`);
  holds(resourceText(resources, "Functions.Namespace") === namespace, `the functions' namespace is not ${namespace}`);

  for (const address of addressesIn(manifest)) {
    const isOurs = address.startsWith(`${origin}/`);
    holds(isOurs, `${address} is not under ${origin}`);
    holds(!isOurs || existsSync(join(folder, address.slice(origin.length))), `nothing is built for ${address}`);
  }

  const used = allAttributes(manifest, "resid");
  const defined = (resources?.children ?? []).flatMap(({ children }) =>
    children.map(({ attributes }) => attributes.id),
  );
  for (const id of used) holds(defined.includes(id), `${id} is used and not defined`);
  for (const id of defined) holds(used.includes(id as string), `${id} is defined and not used`);
  for (const id of defined) holds((id ?? "").length <= 32, `${id} is longer than 32 characters`);

  for (const [kind, most] of Object.entries(longest)) {
    for (const { attributes } of elementAt(resources, kind)?.children ?? []) {
      const { length } = attributes.DefaultValue ?? "";
      holds(length <= most, `${attributes.id} has ${length} characters, more than ${most}`);
    }
  }

  for (const { attributes } of elementsNamed("Icon", manifest).flatMap(({ children }) => children)) {
    const address = resourceText(resources, attributes.resid ?? "");
    const file = join(folder, address?.slice(origin.length) ?? "");
    if (!existsSync(file)) continue;
    const png = readFileSync(file);
    const size = `${png.readUInt32BE(16)} × ${png.readUInt32BE(20)}`;
    const wanted = `${attributes.size} × ${attributes.size}`;
    holds(size === wanted, `${attributes.resid} is ${size}, not ${wanted}`);
  }
  return problems;
}

/** Every address of ours that a manifest names. */
export const addressesIn = (manifest: XmlElement): string[] =>
  allAttributes(manifest, "DefaultValue").filter((value) => /^https?:/.test(value));

const allAttributes = (element: XmlElement, name: string): string[] => [
  ...(element.attributes[name] === undefined ? [] : [element.attributes[name]]),
  ...element.children.flatMap((child) => allAttributes(child, name)),
];

const resourceText = (resources: XmlElement | undefined, id: string): string | undefined =>
  resources?.children.flatMap(({ children }) => children).find(({ attributes }) => attributes.id === id)?.attributes
    .DefaultValue;
