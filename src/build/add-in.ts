import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { catalogue } from "../core/catalogue";
import { escaped } from "../generate/blocks";
import { functionsJson } from "../generate/functions-json";
import { bundlePage } from "./bundle-pages";
import { bundleFunctions } from "./bundle-script";
import { packagesOf } from "./bundled-packages";
import { project } from "./folders";
import { writeFunctionSite } from "./function-site";
import { officeOrigin } from "./page-policy";

const source = (...path: string[]): string => join(project, "src", ...path);

/** The address that manifest.xml at the root holds. */
export const localOrigin = "https://localhost:3000";

/** What a page inside Excel may do: run its own scripts and Office.js, and nothing else. */
const policy = [
  "default-src 'none'",
  `script-src 'self' ${officeOrigin}`,
  "style-src 'self'",
  "img-src 'self'",
  `connect-src 'self' ${officeOrigin}`,
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

/** Writes a page inside Excel: its own text, the policy before Office.js, and what the page loads after it. */
function writePage(folder: string, name: string, loads: readonly string[]): void {
  const html = readFileSync(source("pages", "excel", `${name}.html`), "utf8")
    .replace("<title>", () => `<meta http-equiv="Content-Security-Policy" content="${escaped(policy)}" />\n    <title>`)
    .replace("\n  </head>", () => `${loads.map((tag) => `\n    ${tag}`).join("")}\n  </head>`);
  writeFileSync(join(folder, `${name}.html`), html);
}

/** The manifest with the addresses of another host. An address may hold `&`, and `$&`, which a plain replacement reads. */
export const manifestFor = (origin: string): string =>
  readFileSync(join(project, "manifest.xml"), "utf8").replaceAll(localOrigin, () => escaped(origin));

/** The script that Excel loads before the first cell resolves, with its page alone. Gives the packages in it. */
export async function buildFunctions(folder: string): Promise<readonly string[]> {
  mkdirSync(folder, { recursive: true });
  const to = join(folder, "functions.js");
  const sources = await bundleFunctions({ project, from: "src/pages/excel/functions-page.ts", to });
  writePage(folder, "functions", ['<script defer src="functions.js"></script>']);
  return packagesOf(sources);
}

/** The task pane's page alone. Gives the packages in it, and its scripts, the first one first. */
export async function buildPane(
  folder: string,
): Promise<{ readonly packages: readonly string[]; readonly scripts: readonly string[] }> {
  const { scripts, styles, sources } = await bundlePage({
    project,
    folder,
    scripts: { pane: "src/pages/excel/pane-page.ts" },
  });
  const [first, ...others] = scripts.pane ?? [];
  writePage(folder, "pane", [
    `<link rel="stylesheet" href="${styles.pane}" />`,
    ...others.map((name) => `<link rel="modulepreload" href="${name}" />`),
    `<script type="module" src="${first}"></script>`,
  ]);
  return { packages: packagesOf(sources), scripts: scripts.pane ?? [] };
}

interface Target {
  readonly origin: string;
  readonly folder: string;
}

/**
 * Writes everything that Excel loads from `origin`, and the pages of the functions, into a folder of its own. Gives the
 * packages that it holds code of.
 */
export async function buildAddIn({ origin, folder }: Target): Promise<readonly string[]> {
  rmSync(folder, { recursive: true, force: true });
  const packages = [...(await buildFunctions(folder)), ...(await buildPane(folder)).packages];

  writeFileSync(join(folder, "functions.json"), JSON.stringify(functionsJson(catalogue, origin), null, 1));
  writeFileSync(join(folder, "manifest.xml"), manifestFor(origin));
  writeFunctionSite(folder);
  cpSync(join(project, "LICENSE"), join(folder, "LICENSE"));
  for (const icon of readdirSync(source("pages", "excel", "icons")).filter((name) => name.endsWith(".png"))) {
    cpSync(source("pages", "excel", "icons", icon), join(folder, "icons", icon));
  }
  return packages;
}
