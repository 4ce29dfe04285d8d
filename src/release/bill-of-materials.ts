/** `npm run sbom` writes dist/sbom.cdx.json: what the product is made of, in the open CycloneDX format. */
import { execFileSync } from "node:child_process";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";

/** npm reads the lockfile, and calls the project by the folder that it lies in: here it gets its name. */
export function billOfMaterials(project: string): string {
  const arguments_ = ["sbom", "--sbom-format", "cyclonedx", "--omit", "dev", "--package-lock-only"];
  const written = execFileSync("npm", arguments_, {
    cwd: project,
    encoding: "utf8",
    maxBuffer: 2 ** 28,
    shell: process.platform === "win32",
  });
  const bill = JSON.parse(written) as { metadata: { component: { name: string; type: string } } };
  const { name } = JSON.parse(readFileSync(join(project, "package.json"), "utf8")) as { name: string };
  Object.assign(bill.metadata.component, { name, type: "application" });
  return `${JSON.stringify(bill, null, 1)}\n`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  mkdirSync("dist", { recursive: true });
  writeFileSync(join("dist", "sbom.cdx.json"), billOfMaterials(resolve()));
  console.log("Wrote dist/sbom.cdx.json.");
}
