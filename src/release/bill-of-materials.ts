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
  const bill = withShippedTools(npmsBill(project, ["--omit", "dev"]), npmsBill(project, []));
  const { name } = JSON.parse(readFileSync(join(project, "package.json"), "utf8")) as { name: string };
  Object.assign(bill.metadata.component, { name, type: "application" });
  return `${JSON.stringify(bill, null, 1)}\n`;
}

function npmsBill(project: string, more: readonly string[]): Bill {
  const written = execFileSync("npm", ["sbom", "--sbom-format", "cyclonedx", "--package-lock-only", ...more], {
    cwd: project,
    encoding: "utf8",
    maxBuffer: 2 ** 28,
    shell: process.platform === "win32",
  });
  return JSON.parse(written) as Bill;
}

/** npm leaves out every tool; of some, a part is in what is shipped. */
function withShippedTools(bill: Bill, withTools: Bill): Bill {
  const tools = withTools.components.filter(({ name }) => name in shippedTools).map(asPart);
  const refs = tools.map((tool) => tool["bom-ref"]);
  const root = bill.metadata.component["bom-ref"];
  return {
    ...bill,
    components: [...bill.components, ...tools],
    dependencies: [
      ...bill.dependencies.map(({ ref, dependsOn = [] }) =>
        ref === root ? { ref, dependsOn: [...dependsOn, ...refs] } : { ref, dependsOn },
      ),
      // What a tool itself needs is not shipped.
      ...refs.map((ref) => ({ ref, dependsOn: [] })),
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
