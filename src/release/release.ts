/**
 * `npm run release -- --origin https://example.org/tea` makes dist/tea-mass-balance-<version>: the add-in, the
 * workbook page, the samples and the docs as one static site, and an archive of it; then tries the archive alone.
 */
import { cpSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { buildAddIn } from "../build/add-in";
import { findBrowser, openBrowser } from "../build/open-browser";
import { originFrom } from "../build/origin";
import { officeOrigin } from "../build/page-policy";
import { buildPage } from "../build/workbook-page-build";
import { catalogue } from "../core/catalogue";
import type { Lockfile } from "../generate/dependencies";
import { signatureRecord } from "../generate/signatures";
import { untranslated } from "../pane/messages/untranslated";
import { billOfMaterials } from "./bill-of-materials";
import { lastRelease, reasonsAgainst, recordRelease } from "./last-release";
import { licenceTexts } from "./licence-texts";
import { manifestProblems } from "./manifest-problems";
import { pack, writeSums } from "./packing";
import { faultsOf } from "./proof";
import { writeSite } from "./site";

const project = resolve();
const text = (file: string): string => readFileSync(join(project, file), "utf8");

async function release(): Promise<void> {
  const origin = originFrom(process.argv.slice(2));
  const { name, version } = JSON.parse(text("package.json")) as { name: string; version: string };
  const next = { version, signatures: catalogue.map(({ spec }) => signatureRecord(spec)) };
  stopFor("Workbooks that were saved with the last release would break", reasonsAgainst(next, lastRelease()));
  stopFor(
    "The changelog",
    text("docs/changelog.md").includes(`\n## ${version}\n`) ? [] : [`has no part for ${version}`],
  );
  stopFor("The pane has no Chinese for", untranslated(catalogue));
  const found = await findBrowser();
  if (found === undefined) throw new Error("A release is tried in a browser, and none was found.");

  const folder = join(project, "dist", `${name}-${version}`);
  console.log(`Building ${name} ${version} for ${origin} …`);
  await buildAddIn({ origin, folder });
  await buildPage(join(folder, "workbook"), { minimize: true });
  writeSite(folder, project, version);
  writeFileSync(join(folder, "sbom.cdx.json"), billOfMaterials(project));
  writeFileSync(
    join(folder, "third-party-licences.txt"),
    licenceTexts(JSON.parse(text("package-lock.json")) as Lockfile, project),
  );
  cpSync(join(project, "signatures.json"), join(folder, "signatures.json"));
  stopFor(
    "The manifest",
    manifestProblems(readFileSync(join(folder, "manifest.xml"), "utf8"), { version, origin, folder }),
  );
  writeSums(folder);

  console.log("Packing, and trying the archive alone in a clean folder …");
  const archive = await pack(folder);
  const browser = await openBrowser(found, [officeOrigin]);
  try {
    stopFor("The packed release", await faultsOf(archive, origin, browser));
  } finally {
    await browser.close();
  }
  writeFileSync(`${folder}.zip`, archive);
  recordRelease(next);
  console.log(`Wrote dist/${name}-${version} and its .zip (${(archive.length / 1e6).toFixed(1)} MB). Put the folder's contents at
${origin}/ and load ${origin}/manifest.xml into Excel. Commit last-release.json.`);
}

function stopFor(what: string, problems: readonly string[]): void {
  if (problems.length > 0) throw new Error(`${what}:\n${problems.map((problem) => `- ${problem}`).join("\n")}`);
}

release().catch((problem: unknown) => {
  console.error(problem instanceof Error ? problem.message : problem);
  process.exitCode = 1;
});
