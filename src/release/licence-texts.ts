import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type Lockfile, licencesByHand, nameIn, runtimePackages } from "../generate/dependencies";

const namesItself = /^(licen[cs]e|copying|notice)/i;

/** The licence of every package of the product, with its text where the package holds one. */
export function licenceTexts(lockfile: Lockfile, project: string): string {
  const parts = runtimePackages(lockfile).map(([path, { version, license }]) => {
    const name = nameIn(path);
    const folder = join(project, path);
    const files = existsSync(folder) ? readdirSync(folder, { withFileTypes: true }) : [];
    const texts = files
      .filter((file) => file.isFile() && namesItself.test(file.name))
      .map((file) => readFileSync(join(folder, file.name), "utf8").trim());
    const known = license ?? licencesByHand[name] ?? "no licence named";
    return [`${name} ${version}: ${known}`, ...texts].join("\n\n");
  });
  return `${parts.join(`\n\n${"-".repeat(80)}\n\n`)}\n`;
}
