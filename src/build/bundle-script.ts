import { writeFile } from "node:fs/promises";
import { type BuildOptions, build } from "esbuild";
import { minify } from "terser";
import { withoutPages } from "./without-pages";

interface Source {
  readonly project: string;
  /** The script, from the project. */
  readonly from: string;
}

interface Script extends Source {
  /** The file that is written. */
  readonly to: string;
}

/** The language that Excel's own script engine, without a page, can be trusted to know on all its systems. */
const plainLanguage = "es2018";

/** Long names of parts of objects that never leave the script: they become short ones. */
const ownNames =
  /^(argument|atLeast|atMost|atNoLoss|bounds|calculate|columns|degrees|degreesOfFreedom|deviations|dryLoss|elsewhere|factor|fallback|filled|firing|firstLeftOut|fitting|isByMedian|leftOut|leftovers|median|moistureError|oneForAll|optional|parameter|parameters|predictionError|quantity|question|reader|refusal|removed|removedMoisture|requirement|result|rounds|saying|scatter|seconds|shared|slopeError|smooth|solution|squares|stages|variance|wanted|weightError|withSwapped)$/;

const shared: BuildOptions = {
  bundle: true,
  minifySyntax: true,
  target: plainLanguage,
  legalComments: "none",
  metafile: true,
  write: false,
  logLevel: "silent",
};

interface FunctionsScript {
  readonly script: string;
  /** The source files that it holds code of. */
  readonly sources: readonly string[];
}

/**
 * Bundles functions without their pages into one script in plain language. It is made small by terser: esbuild alone
 * leaves it above the size that it is held to.
 */
export async function functionsScript({ project, from }: Source): Promise<FunctionsScript> {
  const { outputFiles, metafile, warnings } = await build({
    ...shared,
    absWorkingDir: project,
    entryPoints: [from],
    format: "iife",
    platform: "neutral",
    mangleProps: ownNames,
    plugins: [withoutPages(project)],
  });
  // Such as words of the language that the bundler cannot put into plainer ones.
  if (warnings.length > 0) throw new Error(warnings.map(({ text }) => text).join("\n"));
  return {
    script: await small(outputFiles?.[0]?.text ?? ""),
    sources: Object.values(metafile?.outputs ?? {}).flatMap(({ inputs }) =>
      Object.entries(inputs).flatMap(([path, { bytesInOutput }]) => (bytesInOutput > 0 ? [path] : [])),
    ),
  };
}

/** Writes the functions script, and gives the source files that it holds code of. */
export async function bundleFunctions({ to, ...source }: Script): Promise<readonly string[]> {
  const { script, sources } = await functionsScript(source);
  await writeFile(to, script);
  return sources;
}

/** Bundles a script for Node in the same language and as small, with packages taken as they are installed. */
export async function bundleForNode({ project, from, to }: Script): Promise<void> {
  const { outputFiles, warnings } = await build({
    ...shared,
    absWorkingDir: project,
    entryPoints: [from],
    format: "cjs",
    platform: "node",
    packages: "external",
    // What it is made of asks where it lies, to find the project from there; here that is where the script lies.
    banner: { js: 'const ownAddress = require("node:url").pathToFileURL(__filename).href;' },
    define: { "import.meta.url": "ownAddress" },
  });
  if (warnings.length > 0) throw new Error(warnings.map(({ text }) => text).join("\n"));
  await writeFile(to, await small(outputFiles?.[0]?.text ?? ""));
}

const compress = { passes: 3, pure_getters: true, unsafe_arrows: true, keep_fargs: false };

/** By the scripts that they were: the tests of one process build the same ones again and again. */
const madeSmall = new Map<string, string>();

async function small(script: string): Promise<string> {
  const made = madeSmall.get(script);
  if (made !== undefined) return made;
  const { code } = await minify(script, { ecma: 2018, toplevel: true, compress });
  if (code === undefined) throw new Error("the minifier gave no script");
  madeSmall.set(script, code);
  return code;
}
