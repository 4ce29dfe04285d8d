/** `npm run sbom` writes dist/sbom.cdx.json: what the product is made of, in the open CycloneDX format. */
import { execFileSync } from "node:child_process";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { shippedTools } from "../generate/dependencies";

interface Bill {
  readonly metadata: { readonly component: { readonly "bom-ref": string; name: string; type: string } };
  readonly components: readonly Component[];
  readonly dependencies: readonly { readonly ref: string; readonly dependsOn?: readonly string[] }[];
}

interface Component {
  readonly "bom-ref": string;
  readonly name: string;
  readonly scope?: string;
  readonly properties?: readonly { readonly name: string }[];
}

/** npm reads the lockfile, and calls the project by the folder that it lies in: here it gets its name. */
export function billOfMaterials(project: string): string {
  const { name, dependencies } = JSON.parse(readFileSync(join(project, "package.json"), "utf8")) as {
    name: string;
    dependencies: Readonly<Record<string, string>>;
  };
  const bill = ofTheProduct(npmsBill(project), dependencies);
  Object.assign(bill.metadata.component, { name, type: "application" });
  return `${JSON.stringify(bill, null, 1)}\n`;
}

function npmsBill(project: string): Bill {
  const written = execFileSync("npm", ["sbom", "--sbom-format", "cyclonedx", "--package-lock-only"], {
    cwd: project,
    encoding: "utf8",
    maxBuffer: 2 ** 28,
    shell: process.platform === "win32",
  });
  return JSON.parse(written) as Bill;
}

/**
 * What the product needs, and the tools of which a part is in what is shipped. npm can leave tools out by itself, but
 * leaves out with them what a tool and the product share.
 */
function ofTheProduct(bill: Bill, dependencies: Readonly<Record<string, string>>): Bill {
  const needs = new Map(bill.dependencies.map(({ ref, dependsOn = [] }) => [ref, dependsOn]));
  const root = bill.metadata.component["bom-ref"];
  const named = (has: (name: string) => boolean): string[] =>
    bill.components.flatMap(({ name, "bom-ref": ref }) => (needs.get(root)?.includes(ref) && has(name) ? [ref] : []));
  const own = named((name) => name in dependencies);
  // What a tool itself needs is not shipped.
  const tools = named((name) => name in shippedTools);
  const parts = new Set(own);
  for (const ref of parts) for (const needed of needs.get(ref) ?? []) parts.add(needed);
  const all = new Set([...parts, ...tools]);
  return {
    ...bill,
    components: bill.components.filter((component) => all.has(component["bom-ref"])).map(asPart),
    dependencies: [
      { ref: root, dependsOn: [...own, ...tools] },
      ...[...all].map((ref) => ({ ref, dependsOn: parts.has(ref) ? (needs.get(ref) ?? []) : [] })),
    ],
  };
}

const asPart = ({ properties = [], ...component }: Component): Component => ({
  ...component,
  scope: "required",
  properties: properties.filter(({ name }) => name !== "cdx:npm:package:development"),
});

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  mkdirSync("dist", { recursive: true });
  writeFileSync(join("dist", "sbom.cdx.json"), billOfMaterials(resolve()));
  console.log("Wrote dist/sbom.cdx.json.");
}
