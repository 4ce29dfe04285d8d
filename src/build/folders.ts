import { join } from "node:path";

/** Where `npm run build` writes: what is copied to a host, and nothing else. */
export const siteFolder = (project: string): string => join(project, "dist", "site");

/** Where a release is made, beside the site of a build, so that neither takes the other away or along. */
export const releaseFolder = (project: string, name: string, version: string): string =>
  join(project, "dist", `${name}-${version}`);
