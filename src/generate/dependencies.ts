/**
 * What the product stands on: why each package is there, which licences are taken, and what is known of the packages
 * that those bring along. Read from package.json and the lockfile; docs/dependencies.md tells it, a test holds to it.
 */

/** The package as the lockfile records it. */
export interface LockedPackage {
  readonly version: string;
  readonly license?: string;
  readonly integrity?: string;
  readonly dev?: boolean;
  readonly hasInstallScript?: boolean;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly optionalDependencies?: Readonly<Record<string, string>>;
  readonly peerDependencies?: Readonly<Record<string, string>>;
}

export interface Lockfile {
  readonly packages: Readonly<Record<string, LockedPackage>>;
}

/** Why each runtime dependency of package.json is there. */
export const reasons: Readonly<Record<string, string>> = {
  "@borgar/fx": "reads worksheet formulas for the pane's working and for files",
  "@observablehq/plot": "draws the pane's pictures",
  "@univerjs/core": "the grid of the workbook page: its model of a workbook",
  "@univerjs/engine-formula": "the grid's calculation engine, in which the functions run",
  "@univerjs/preset-sheets-core": "the grid itself, in the browser",
  "@univerjs/preset-sheets-node-core": "the same engine without a browser, for the command line and the tests",
  "@univerjs/sheets":
    "the grid's commands, such as the one that puts rows in another order; both of the above bring it",
  "@univerjs/themes": "the grid's colours",
  fflate: "unpacks and packs the parts of an .xlsx",
  "idb-keyval": "keeps a maker's work in the browser",
  jszip: "packs the .xlsx that is written, and the release",
  react: "the pane; the grid brings it too",
  "react-dom": "the pane; the grid brings it too",
  rxjs: "the grid's events come as its streams",
  saxes: "reads the XML inside an .xlsx",
  "wasm-xlsxwriter": "writes .xlsx with live formulas, tables and charts",
  "workbox-precaching": "keeps the phone page on the phone, for use without a connection",
  zod: "checks what comes from outside: forms, stored settings, the command line",
};

/** Licences that let a maker use, copy and change what they get, without more than naming the authors. */
export const acceptedLicences: readonly string[] = [
  "MIT",
  "MIT/X11",
  "ISC",
  "0BSD",
  "BSD-3-Clause",
  "Apache-2.0",
  "BlueOak-1.0.0",
  "Unlicense",
  // Of a choice the first is taken.
  "(MIT OR GPL-3.0-or-later)",
  "MIT/Apache-2.0",
  "(MIT AND Zlib)",
];

/** Packages whose licence the lockfile does not name, and what is known of it. */
export const licencesByHand: Readonly<Record<string, string>> = {
  "@univerjs/telemetry":
    "Apache-2.0, by the LICENSE file in the package. It holds the name of an interface and no code that sends anything.",
};

/** Tools of which something is in what is shipped, so that their licences belong to it. */
export const shippedTools: Readonly<Record<string, string>> = {
  "@fluentui/tokens": "the values of its tokens stand in the pane's style sheet",
  esbuild: "its part that puts modules together is in the scripts of the add-in and of the workbook page",
};

/** Packages that would run a script when they are installed. Every install here passes --ignore-scripts. */
export const scriptsNotRun: Readonly<Record<string, string>> = {
  "core-js-pure": "prints a call for donations",
  esbuild: "tests and scripts: checks that its program fits the machine; the program itself is a package of its own",
  protobufjs: "warns of versions that do not go together",
};

/** `node_modules/a/node_modules/@b/c` → `@b/c`. */
export const nameIn = (path: string): string => path.slice(path.lastIndexOf("node_modules/") + "node_modules/".length);

/** The packages that the product is made of, without the tools that build and test it. */
export const runtimePackages = ({ packages }: Lockfile): [string, LockedPackage][] =>
  Object.entries(packages).filter(([path, { dev }]) => path !== "" && dev !== true);

/** The packages of which a release holds something, or may. */
export const shippedPackages = (lockfile: Lockfile): [string, LockedPackage][] => [
  ...runtimePackages(lockfile),
  ...Object.keys(shippedTools).flatMap((name): [string, LockedPackage][] => {
    const path = `node_modules/${name}`;
    const locked = lockfile.packages[path];
    return locked === undefined ? [] : [[path, locked]];
  }),
];

/** A package with all that it brings along, by their places. */
export function broughtBy(name: string, lockfile: Lockfile): Set<string> {
  const found = new Set<string>();
  const visit = (wanted: string, from: string): void => {
    const path = placeOf(wanted, from, lockfile);
    if (path === undefined || found.has(path)) return;
    found.add(path);
    const { dependencies, optionalDependencies, peerDependencies } = lockfile.packages[path] as LockedPackage;
    for (const next of Object.keys({ ...dependencies, ...optionalDependencies, ...peerDependencies }))
      visit(next, path);
  };
  visit(name, "");
  return found;
}

/** Where Node finds a package that is asked for at a place: the nearest folder above. */
function placeOf(wanted: string, from: string, { packages }: Lockfile): string | undefined {
  for (let folder = from; ; folder = folder.slice(0, Math.max(0, folder.lastIndexOf("/node_modules/")))) {
    const path = `${folder === "" ? "" : `${folder}/`}node_modules/${wanted}`;
    if (packages[path] !== undefined) return path;
    if (folder === "") return undefined;
  }
}
