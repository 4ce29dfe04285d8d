import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { type Lockfile, licencesByHand, nameIn, shippedPackages } from "../generate/dependencies";

const namesItself = /^(licen[cs]e|copying|notice)/i;

const standardTexts = join(dirname(fileURLToPath(import.meta.url)), "standard-licences");

/** Names of licences, as packages declare them, that have another name among the standard texts. */
const otherNames: Readonly<Record<string, string>> = { "MIT/X11": "MIT" };

interface LicenceTexts {
  readonly text: string;
  /** Why the text is not all that is due, one line each. */
  readonly problems: readonly string[];
}

interface Shipped {
  readonly lockfile: Lockfile;
  readonly project: string;
  /** The places of the packages that the bundles hold code of. */
  readonly bundled: readonly string[];
}

/** The licence of every package of which a release may hold something, with its text. */
export function licenceTexts({ lockfile, project, bundled }: Shipped): LicenceTexts {
  const shipped = shippedPackages(lockfile);
  const parts = shipped.map(([path, { version, license }]) => {
    const name = nameIn(path);
    const folder = join(project, path);
    const own = ownTexts(folder);
    const texts = own.length > 0 ? own : standardText(license, folder);
    const known = license ?? licencesByHand[name] ?? "no licence named";
    // What was looked at by hand may lack a text as long as nothing of it is handed out.
    const isExcused = name in licencesByHand && !bundled.includes(path);
    return {
      text: [`${name} ${version}: ${known}`, ...texts].join("\n\n"),
      problems: texts.length > 0 || isExcused ? [] : [`${path} has no text for its licence: ${known}`],
    };
  });
  const unknown = bundled.filter((path) => !shipped.some(([known]) => known === path));
  return {
    text: `${parts.map(({ text }) => text).join(`\n\n${"-".repeat(80)}\n\n`)}\n`,
    problems: [
      ...parts.flatMap(({ problems }) => problems),
      ...unknown.map((path) => `${path} is in a bundle, and neither a dependency nor among the shipped tools`),
    ],
  };
}

function ownTexts(folder: string): string[] {
  const files = existsSync(folder) ? readdirSync(folder, { withFileTypes: true }) : [];
  return files
    .filter((file) => file.isFile() && namesItself.test(file.name))
    .map((file) => readFileSync(join(folder, file.name), "utf8").trim());
}

/** The standard text of a licence with the author of the package; none where one of the two is not known. */
function standardText(license: string | undefined, folder: string): string[] {
  const file = join(standardTexts, `${otherNames[license ?? ""] ?? license}.txt`);
  const author = authorIn(folder);
  if (license === undefined || author === undefined || !existsSync(file)) return [];
  return [
    `The package holds no text of its own. This is the standard text of the licence that it declares, with the author
that it names.`,
    `Author: ${author}`,
    readFileSync(file, "utf8")
      .trim()
      .replace("<holder>", () => author),
  ];
}

function authorIn(folder: string): string | undefined {
  const file = join(folder, "package.json");
  if (!existsSync(file)) return undefined;
  const { author } = JSON.parse(readFileSync(file, "utf8")) as { author?: string | { name: string; email?: string } };
  if (typeof author !== "object") return author;
  return author.email === undefined ? author.name : `${author.name} <${author.email}>`;
}
