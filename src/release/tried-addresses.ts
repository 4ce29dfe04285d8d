import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { filesIn } from "../build/folders";
import { officeOrigin } from "../build/page-policy";
import { parseXml } from "../xlsx/container/xml-tree";
import { addressesIn } from "./manifest-problems";
import { followed, referencesIn } from "./references";

/** An unpacked release: where it will be served, and where it is for the proof, with a slash at its end. */
export interface Site {
  readonly folder: string;
  readonly origin: string;
  readonly address: string;
}

/** What Excel would ask for in vain. */
export async function deadAddresses({ folder, origin, address }: Site): Promise<string[]> {
  const wanted = addressesIn(parseXml(readFileSync(join(folder, "manifest.xml"), "utf8")));
  const { functions } = JSON.parse(readFileSync(join(folder, "functions.json"), "utf8")) as {
    functions: { helpUrl: string }[];
  };
  const all = [...new Set([...wanted, ...functions.map(({ helpUrl }) => helpUrl)])];
  const strange = all.filter((each) => !each.startsWith(`${origin}/`)).map((each) => `${each} is not under ${origin}`);
  const paths = all.filter((each) => each.startsWith(`${origin}/`)).map((each) => each.slice(origin.length + 1));
  const answers = await Promise.all(paths.map(async (path) => [path, await fetch(address + path)] as const));
  return [...strange, ...answers.filter(([, { ok }]) => !ok).map(([path, { status }]) => `${path} answers ${status}`)];
}

/** What a reader of the site would click in vain, and what its pages would load in vain. */
export async function deadReferences(page: Page, { folder, origin, address }: Site): Promise<string[]> {
  const site = { origin, address, trusted: [officeOrigin] };
  const paths = filesIn(folder).filter((file) => file.endsWith(".html"));
  const found = await referencesIn(
    page,
    paths.map((path) => readFileSync(join(folder, path), "utf8")),
  );
  const faults: string[] = [];
  /** Most pages name the same style sheet and each other: each address is asked for once. */
  const isThere = new Map<string, boolean>();
  for (const [index, path] of paths.entries()) {
    for (const reference of found[index] ?? []) {
      const { fault, address: target } = followed(reference, path, site);
      if (fault) faults.push(`${path} names ${reference.written}, which ${fault}`);
      if (target === undefined) continue;
      if (!isThere.has(target)) isThere.set(target, (await fetch(target, { method: "HEAD" })).ok);
      if (!isThere.get(target)) faults.push(`${path} leads to ${target.slice(address.length)}, which is not there`);
    }
  }
  return [...new Set(faults)];
}
