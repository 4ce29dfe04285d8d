import { readdirSync } from "node:fs";
import { dirname, join, relative, resolve, sep } from "node:path";
import { fileURLToPath } from "node:url";

/** The folder of the project, from wherever a command is given. */
export const project = resolve(dirname(fileURLToPath(import.meta.url)), "../..");

/** Where `npm run build` writes: what is copied to a host, and nothing else. */
export const siteFolder = (project: string): string => join(project, "dist", "site");

/** Where `npm run build` writes what is copied into Google Sheets. */
export const sheetsFolder = (project: string): string => join(project, "dist", "google-sheets");

/** Where a release is made, beside the site of a build, so that neither takes the other away or along. */
export const releaseFolder = (project: string, name: string, version: string): string =>
  join(project, "dist", `${name}-${version}`);

/** The phone page within what is served or released beside it. */
export const phoneFolder = "phone";

/** The files of a folder, by their paths inside it, in an order of their own. */
export const filesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .sort();
