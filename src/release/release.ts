/**
 * `npm run release -- --origin https://example.org/tea` makes dist/tea-mass-balance-<version>: the add-in, the
 * workbook page, the samples and the docs as one static site, and an archive of it; then tries the archive alone.
 */
import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { buildAddIn } from "../build/add-in";
import { phoneFolder, releaseFolder } from "../build/folders";
import { buildGoogleSheets } from "../build/google-sheets";
import { findBrowser, openBrowser } from "../build/open-browser";
import { originFrom } from "../build/origin";
import { officeOrigin } from "../build/page-policy";
import { buildPhonePage } from "../build/phone-page-build";
import { buildPage } from "../build/workbook-page-build";
import { catalogue } from "../core/catalogue";
import type { Lockfile } from "../generate/dependencies";
import { signatureRecord } from "../generate/signatures";
import { sampleBooks } from "../sample-books/sample-books";
import { billOfMaterials } from "./bill-of-materials";
import { lastRelease, recordRelease } from "./last-release";
import { licenceTexts } from "./licence-texts";
import { manifestProblems } from "./manifest-problems";
import { pack, writeSums } from "./packing";
import { faultsOf } from "./proof";
import { refusals } from "./refusals";
import { staleSamples } from "./samples";
import { writeSite } from "./site";

const project = resolve();
const text = (file: string): string => readFileSync(join(project, file), "utf8");

async function release(): Promise<void> {
  const origin = originFrom(process.argv.slice(2));
  const { name, version } = JSON.parse(text("package.json")) as { name: string; version: string };
  const next = { version, signatures: catalogue.map(({ spec }) => signatureRecord(spec)) };
  for (const [what, problems] of await refusals(project, next, lastRelease())) stopFor(what, problems);
  const found = await findBrowser();
  if (found === undefined) throw new Error("A release is tried in a browser, and none was found.");

  const folder = releaseFolder(project, name, version);
  console.log(`Building ${name} ${version} for ${origin} …`);
  // An archive of an earlier run must not pass for this one's.
  rmSync(`${folder}.zip`, { force: true });
  const inAddIn = await buildAddIn({ origin, folder });
  await writeSite(folder, project, version, sampleBooks);
  const [committed, built] = [join(project, "sample-workbooks"), join(folder, "sample-workbooks")];
  const stale = await staleSamples(Object.keys(sampleBooks), { committed, built });
  stopFor("Stale, run npm run samples", stale);
  await buildGoogleSheets(join(folder, "google-sheets"));
  const inPage = await buildPage(join(folder, "workbook"));
  const { packages: inPhone } = await buildPhonePage(join(folder, phoneFolder));
  writeFileSync(join(folder, "sbom.cdx.json"), billOfMaterials(project));
  const lockfile = JSON.parse(text("package-lock.json")) as Lockfile;
  const licences = licenceTexts({ lockfile, project, bundled: [...new Set([...inAddIn, ...inPage, ...inPhone])] });
  stopFor("The licences of others' parts", licences.problems);
  writeFileSync(join(folder, "third-party-licences.txt"), licences.text);
  writeFileSync(join(folder, "signatures.json"), `${JSON.stringify(next.signatures, null, 1)}\n`);
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
