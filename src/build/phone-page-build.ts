import { createHash } from "node:crypto";
import { cp, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { build } from "esbuild";
import { escaped } from "../generate/blocks";
import { firstPhone } from "../words/in-every-language/phone";
import { languageIds, languages } from "../words/languages";
import { bundlePage } from "./bundle-pages";
import { packagesOf } from "./bundled-packages";
import { filesIn, project } from "./folders";
import { phonePolicy } from "./page-policy";

const source = (...path: string[]): string => join(project, "src/pages", ...path);

/** The icons that the page is installed with, in pixels; the last one only where a phone asks for it by its name. */
const installedIcons = [192, 512] as const;

const webManifest = {
  name: firstPhone.phone.title,
  short_name: "Tea",
  description: "The guided jobs beside the pan, without a connection.",
  lang: languages[languageIds[0]].tag,
  id: "./",
  start_url: "./",
  scope: "./",
  display: "standalone",
  background_color: "#ffffff",
  theme_color: "#ffffff",
  icons: installedIcons.flatMap((size) =>
    ["any", "maskable"].map((purpose) => ({
      src: `icon-${size}.png`,
      sizes: `${size}x${size}`,
      type: "image/png",
      purpose,
    })),
  ),
};

export interface BuiltPhonePage {
  /** Of which it holds code. */
  readonly packages: readonly string[];
  /** What a first visit needs before the page can be used, and in the words of each language. */
  readonly firstLoad: readonly string[];
}

/** Writes the phone page with its manifest, icons and service worker into a folder. */
export async function buildPhonePage(folder: string): Promise<BuiltPhonePage> {
  const { scripts, styles, sources } = await bundlePage({
    project,
    folder,
    scripts: { "phone-page": "src/pages/phone/phone-page.tsx" },
  });
  const [page = "", ...others] = scripts["phone-page"] ?? [];
  const head = [
    `<meta http-equiv="Content-Security-Policy" content="${escaped(phonePolicy)}" />`,
    `<link rel="stylesheet" href="${styles["phone-page"]}" />`,
    ...others.map((name) => `<link rel="modulepreload" href="${name}" />`),
    `<script type="module" src="${page}"></script>`,
  ];
  const template = await readFile(source("phone", "phone-page.html"), "utf8");
  await writeFile(
    join(folder, "index.html"),
    template.replace("</title>", () => `</title>\n    ${head.join("\n    ")}`),
  );
  await writeFile(join(folder, "phone.webmanifest"), `${JSON.stringify(webManifest, null, 1)}\n`);
  await cp(source("phone", "icons"), folder, { recursive: true });
  const worker = await buildWorker(folder);
  return {
    packages: [...new Set([...packagesOf(sources), ...packagesOf(worker)])],
    firstLoad: ["index.html", styles["phone-page"] ?? "", page, ...others],
  };
}

/** The service worker with the list of every file of the page. Gives the source files that it holds code of. */
async function buildWorker(folder: string): Promise<string[]> {
  const files = await Promise.all(
    filesIn(folder).map(async (url) => ({ url, revision: hashOf(await readFile(join(folder, url))) })),
  );
  const { metafile } = await build({
    absWorkingDir: project,
    entryPoints: ["src/pages/phone-worker/service-worker.ts"],
    outfile: join(folder, "service-worker.js"),
    bundle: true,
    format: "iife",
    target: "es2022",
    minify: true,
    legalComments: "none",
    define: { filesOfPage: JSON.stringify(files), "process.env.NODE_ENV": '"production"' },
    metafile: true,
    logLevel: "silent",
  });
  return Object.values(metafile.outputs).flatMap(({ inputs }) => Object.keys(inputs));
}

const hashOf = (content: Buffer): string => createHash("sha256").update(content).digest("hex").slice(0, 16);
