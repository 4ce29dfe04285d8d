/**
 * `npm run generate` writes docs/functions, docs/checks.md and signatures.json from the catalogue, docs/how-sure.md with
 * its pictures from what `npm run calibrate` measured, docs/named-formulas.md from the
 * named formulas, docs/dependencies.md from the lockfile, docs/rooms.svg from the
 * imports of the sources, the Fluent tokens that the pane uses, src/pane/fluent-tokens.css, src/words/released.ts from
 * last-release.json, src/jobs/cautions-of-functions.ts from the catalogue, what names every language from the list of them,
 * and the numbers in sentences of the README; with `--check` it writes nothing and fails when one of them is stale.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { catalogue } from "../core/catalogue";
import { asMarkdown } from "./blocks";
import { checksPage } from "./checks-page";
import { corrections } from "./corrections";
import { countsInDocuments, withCounts } from "./counts-in-documents";
import type { Lockfile } from "./dependencies";
import { dependenciesPage } from "./dependencies-page";
import { fluentTokensFor } from "./fluent-tokens";
import { functionPages } from "./function-pages";
import { howSurePage, pictureOf } from "./how-sure-page";
import { wordsInEveryLanguage } from "./in-every-language";
import { measuredFile, measuredStudies, staleStudies } from "./measured";
import { namedFormulasPage } from "./named-formulas-page";
import { picture } from "./picture";
import { roomsOf } from "./rooms";
import { roomsPicture } from "./rooms-picture";
import { breaches, type Signature, signatureRecord } from "./signatures";

const docsFolder = "docs/functions";
const picturesFolder = "docs/how-sure";
const checksFile = "docs/checks.md";
const dependenciesFile = "docs/dependencies.md";
const namedFormulasFile = "docs/named-formulas.md";
const howSureFile = "docs/how-sure.md";
const roomsFile = "docs/rooms.svg";
const signaturesFile = "signatures.json";
const tokensFile = "src/pane/fluent-tokens.css";
const releasedFile = "src/words/released.ts";
const cautionsFile = "src/jobs/cautions-of-functions.ts";

/** Every generated file with its text, from the catalogue that runs here and the sources of a project. */
function generatedFiles(project: string): Map<string, string> {
  const studies = measuredStudies(project);
  const pages = functionPages(catalogue, studies).map(
    (page) => [`${docsFolder}/${page.name}.md`, asMarkdown(page)] as const,
  );
  const signatures = `${JSON.stringify(
    catalogue.map(({ spec }) => signatureRecord(spec)),
    null,
    1,
  )}\n`;
  const lockfile = JSON.parse(readFileSync(join(project, "package-lock.json"), "utf8")) as Lockfile;
  const tokens = fluentTokensFor(readFileSync(join(project, "src/pane/pane.css"), "utf8"));
  return new Map([
    ...pages,
    [checksFile, asMarkdown(checksPage(catalogue))],
    [namedFormulasFile, asMarkdown(namedFormulasPage(catalogue))],
    [howSureFile, asMarkdown(howSurePage(studies))],
    ...studies.map((study) => [`docs/${pictureOf(study)}`, picture(study)] as const),
    [dependenciesFile, asMarkdown(dependenciesPage(lockfile, (path) => sizeOfPackage(join(project, path))))],
    [roomsFile, roomsPicture(roomsOf(project))],
    [signaturesFile, signatures],
    [tokensFile, tokens],
    [releasedFile, releasedFunctions(project)],
    [cautionsFile, cautionsOfFunctions()],
    ...wordsInEveryLanguage(),
    ...countedDocuments(project),
  ]);
}

/** The documents written by hand that count something, with the numbers of today. */
function countedDocuments(project: string): readonly (readonly [string, string])[] {
  const { engines } = JSON.parse(readFileSync(join(project, "package.json"), "utf8")) as { engines: { node: string } };
  const counts = countsInDocuments(Number.parseInt(engines.node.replace(">=", ""), 10));
  return [...new Set(counts.map(({ file }) => file))].map((file) => {
    const text = textOf(join(project, file)) ?? "";
    return [
      file,
      withCounts(
        text,
        counts.filter((each) => each.file === file),
      ),
    ];
  });
}

/** The functions of the last release, as a type has to know them. */
function releasedFunctions(project: string): string {
  const last = textOf(join(project, "last-release.json")) ?? '{ "signatures": [] }';
  const { signatures } = JSON.parse(last) as { readonly signatures: readonly Signature[] };
  return [
    "/** The functions of the last release, whose pages are to be had in every language. Written by npm run generate. */",
    "export type Released =",
    `${signatures.map(({ id }) => `  | "${id}"`).join("\n")};\n`,
  ].join("\n");
}

/** The cautions on the pages of functions, by the ids of both, for what has no pages at hand. */
function cautionsOfFunctions(): string {
  const lines = catalogue.flatMap(({ spec, page }) => {
    const ids = page.cautions.map(({ id }) => JSON.stringify(id)).join(", ");
    return ids === "" ? [] : [`  ${spec.id}: [${ids}],`];
  });
  return [
    "/** What the pages of functions say to be careful of, by ids. Written by npm run generate. */",
    "export const cautionsOfFunctions: Readonly<Record<string, readonly string[]>> = {",
    ...lines,
    "};\n",
  ].join("\n");
}

/** The bytes of a package's own files, without the packages inside it; 0 where this machine needs none of it. */
function sizeOfPackage(path: string): number {
  if (!existsSync(path)) return 0;
  return readdirSync(path, { recursive: true, withFileTypes: true })
    .filter(
      (entry) => entry.isFile() && !join(entry.parentPath, entry.name).slice(path.length).includes("node_modules"),
    )
    .reduce((sum, entry) => sum + statSync(join(entry.parentPath, entry.name)).size, 0);
}

/** Pages of functions, and pictures, that are no longer there. */
const leftovers = (project: string, files: ReadonlyMap<string, string>): string[] =>
  [docsFolder, picturesFolder]
    .filter((folder) => existsSync(join(project, folder)))
    .flatMap((folder) => readdirSync(join(project, folder)).map((name) => `${folder}/${name}`))
    .filter((path) => !files.has(path));

const textOf = (path: string): string | undefined =>
  existsSync(path) ? readFileSync(path, "utf8").replaceAll("\r\n", "\n") : undefined;

/** Generated files that are missing, differ or should not be there. */
export function staleFiles(project = "."): string[] {
  const files = generatedFiles(project);
  const differing = [...files].filter(([path, text]) => textOf(join(project, path)) !== text).map(([path]) => path);
  const measuredAnew = staleStudies(project).map((functions) => `${measuredFile}: npm run calibrate (${functions})`);
  return [...differing, ...leftovers(project, files), ...measuredAnew];
}

/** What the catalogue would break in saved workbooks, by the signatures that were recorded last, beyond the corrections. */
export function signatureBreaches(): string[] {
  const recorded = textOf(signaturesFile);
  if (recorded === undefined) return [`${signaturesFile} is missing`];
  return breaches(
    JSON.parse(recorded) as Signature[],
    catalogue.map(({ spec }) => signatureRecord(spec)),
    corrections,
  );
}

export function write(): void {
  const files = generatedFiles(".");
  for (const folder of [docsFolder, picturesFolder]) mkdirSync(folder, { recursive: true });
  for (const path of leftovers(".", files)) rmSync(path);
  for (const [path, text] of files) writeFileSync(path, text);
  console.log(
    `Wrote ${files.size} files: ${[docsFolder, checksFile, howSureFile, picturesFolder, dependenciesFile, roomsFile, signaturesFile].join(", ")}, ${tokensFile}, ${releasedFile}, ${cautionsFile}, what names every language, and the numbers of the README.`,
  );
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const found = existsSync(signaturesFile) ? signatureBreaches() : [];
  if (found.length > 0) {
    console.error(`Saved workbooks would break:\n${found.join("\n")}`);
    process.exitCode = 1;
  } else if (!process.argv.includes("--check")) {
    write();
  } else if (staleFiles().length > 0) {
    console.error(`Stale, run npm run generate:\n${staleFiles().join("\n")}`);
    process.exitCode = 1;
  }
}
