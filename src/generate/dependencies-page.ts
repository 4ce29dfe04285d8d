import type { Page } from "./blocks";
import {
  acceptedLicences,
  broughtBy,
  type Lockfile,
  licencesByHand,
  nameIn,
  reasons,
  runtimePackages,
  scriptsNotRun,
  shippedPackages,
  shippedTools,
} from "./dependencies";

const megabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(bytes < 1e6 ? 2 : 1)} MB`;

/** What the product stands on; `sizeOf` gives the bytes of a package's own files by its place. */
export function dependenciesPage(lockfile: Lockfile, sizeOf: (path: string) => number): Page {
  const total = (paths: Iterable<string>): number => [...paths].reduce((sum, path) => sum + sizeOf(path), 0);
  const runtime = runtimePackages(lockfile);
  const licences = new Map<string, number>();
  for (const [, { license }] of runtime) {
    if (license !== undefined) licences.set(license, (licences.get(license) ?? 0) + 1);
  }
  return {
    name: "dependencies",
    title: "What Tea Mass Balance stands on",
    blocks: [
      { heading: "What it stands on", level: 1 },
      {
        paragraph:
          "The calculations use no package at all, and neither does the script that Excel loads for the functions. These are for the workbook page, the pane, files and the command line.",
      },
      {
        table: ["Package", "Version", "Licence", "Own size", "With all it brings", "Why it is there"],
        rows: Object.entries(reasons).map(([name, reason]) => {
          const path = `node_modules/${name}`;
          const { version = "", license = "" } = lockfile.packages[path] ?? {};
          const brought = broughtBy(name, lockfile);
          return [
            name,
            version,
            license,
            megabytes(sizeOf(path)),
            brought.size === 1 ? "nothing" : `${brought.size} packages, ${megabytes(total(brought))}`,
            reason,
          ];
        }),
      },
      {
        paragraph: `Together ${runtime.length} packages, ${megabytes(total(runtime.map(([path]) => path)))} as installed; what builds and tests comes on top, among it @ironcalc/wasm, a second spreadsheet engine in which the tests work out the named formulas, and what the tests alone hold the project against (Microsoft's runtime, its checker and its mock, another reader of .xlsx) has a lockfile of its own in test/, from which npm test and npm run lint install it. Packages that two of these bring are counted with each.`,
      },
      { heading: "Licences", level: 2 },
      {
        table: ["Licence", "Packages"],
        rows: [...licences]
          .sort(([, one], [, other]) => other - one)
          .map(([license, packages]) => [license, String(packages)]),
      },
      {
        paragraph: `A test lets pass ${acceptedLicences.join(", ")}, and these, looked at by hand:`,
      },
      { list: Object.entries(licencesByHand).map(([name, known]) => `${name}: ${known}`) },
      { paragraph: "Of the tools that build, these leave a part of their own in what is shipped:" },
      { list: Object.entries(shippedTools).map(([name, part]) => `${name}: ${part}`) },
      { heading: "What an installation runs", level: 2 },
      {
        paragraph:
          "Nothing: every command here installs with --ignore-scripts, what the lockfile names, to the byte that its SHA-512 sums name. These packages would run something:",
      },
      { list: Object.entries(scriptsNotRun).map(([name, script]) => `${name}: ${script}`) },
      {
        paragraph:
          "One thing is fetched outside the lockfile: on Linux, where no browser is found, what needs one (npm test, npm run bench, npm run picture, npm run release) has npm fetch @sparticuz/chromium, with what it brings, into node_modules/.cache/browser, in a version that src/build/open-browser.ts names, and no sum in this project holds it.",
      },
      { heading: "Bill of materials", level: 2 },
      {
        paragraph:
          "npm run sbom writes dist/sbom.cdx.json, a CycloneDX list of every package that the product is made of; a release holds one, and the texts of the licences beside it: where a package brings no text of its own, the standard text of the licence that it declares, with the author that it names. A release is refused when a package is left without.",
      },
    ],
  };
}

/** Packages of the product with a licence that is neither accepted nor looked at by hand. */
export const licencesInDoubt = (lockfile: Lockfile): string[] =>
  shippedPackages(lockfile)
    .filter(([path, { license }]) => !acceptedLicences.includes(license ?? "") && !(nameIn(path) in licencesByHand))
    .map(([path, { license }]) => `${nameIn(path)}: ${license ?? "no licence named"}`);
