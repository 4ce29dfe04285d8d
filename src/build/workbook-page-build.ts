import { createHash } from "node:crypto";
import { existsSync } from "node:fs";
import { readdir, readFile, rm, writeFile } from "node:fs/promises";
import { join, sep } from "node:path";
import { escaped } from "../generate/blocks";
import { bundlePage } from "./bundle-pages";
import { packagesOf } from "./bundled-packages";
import { phoneFolder, project } from "./folders";
import { writeFunctionSite } from "./function-site";
import { pagePolicy } from "./page-policy";
import { buildPhonePage } from "./phone-page-build";

/** Whatever a change of makes another page. */
const sources = ["package-lock.json", "sample-workbooks", "src"];

/** Where the page that `npm start` serves is built. */
export const pageFolder = join(project, ".cache", "workbook-page");
const builtFrom = join(project, ".cache", "workbook-page.built-from");

/** Builds the page, and the phone page under it, unless those there were built from these very sources. Says whether it built. */
export async function buildPageOnce(): Promise<boolean> {
  const wanted = await hashOfSources();
  const there = await readFile(builtFrom, "utf8").catch(() => "");
  if (there === wanted && existsSync(join(pageFolder, "index.html"))) return false;
  // An interrupted build must not pass for a finished one.
  await rm(builtFrom, { force: true });
  await buildPage(pageFolder);
  await buildPhonePage(join(pageFolder, phoneFolder));
  await writeFile(builtFrom, wanted);
  return true;
}

/** Writes the page and the pages of the functions that its pane links to. Gives the packages that it holds code of. */
export async function buildPage(folder: string): Promise<readonly string[]> {
  await rm(folder, { recursive: true, force: true });
  const { scripts, styles, sources } = await bundlePage({
    project,
    folder,
    scripts: {
      "first-sight": "src/pages/workbook/first-sight.ts",
      "workbook-page": "src/pages/workbook/workbook-page.ts",
      "reading-worker": "src/pages/workbook/reading-worker.ts",
    },
  });
  const template = await readFile(join(project, "src/pages/workbook/workbook-page.html"), "utf8");
  const [firstSight = [], page = []] = [scripts["first-sight"], scripts["workbook-page"]];
  const head = [
    `<meta http-equiv="Content-Security-Policy" content="${escaped(pagePolicy)}" />`,
    `<link rel="stylesheet" href="${styles["workbook-page"]}" />`,
    // In this order: the first look at the workbook comes before all else.
    `<script type="module" src="${firstSight[0]}"></script>`,
    ...[...new Set([...firstSight.slice(1), ...page.slice(1)])].map(
      (name) => `<link rel="modulepreload" href="${name}" />`,
    ),
    `<script type="module" src="${page[0]}"></script>`,
    // Fetched when nothing else is to be done, and there when a file is opened.
    `<link rel="prefetch" id="reading-worker" href="${scripts["reading-worker"]?.[0]}" />`,
  ];
  await writeFile(
    join(folder, "index.html"),
    template.replace("</title>", () => `</title>\n    ${head.join("\n    ")}`),
  );
  writeFunctionSite(folder);
  return packagesOf(sources);
}

async function hashOfSources(): Promise<string> {
  const hash = createHash("sha256");
  for (const file of (await Promise.all(sources.map(filesUnder))).flat()) {
    hash.update(`${file.split(sep).join("/")}\0`);
    hash.update(await readFile(join(project, file)));
  }
  return hash.digest("hex");
}

/** The file itself, or every file in the folder, in an order of its own. */
async function filesUnder(path: string): Promise<string[]> {
  const entries = await readdir(join(project, path), { recursive: true, withFileTypes: true }).catch(() => undefined);
  if (entries === undefined) return existsSync(join(project, path)) ? [path] : [];
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(project.length + 1))
    .sort();
}
