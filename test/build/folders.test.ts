import { readFileSync } from "node:fs";
import { relative, resolve } from "node:path";
import { expect, test } from "vitest";
import { releaseFolder, sheetsFolder, siteFolder } from "../../src/build/folders";

const [site, release] = [siteFolder(resolve()), releaseFolder(resolve(), "tea-mass-balance", "1.2.3")];

test("a build takes no release away, and a release does not lie in what is copied to a host", () => {
  expect(relative(site, release)).toMatch(/^\.\.[\\/]/);
  expect(relative(release, site)).toMatch(/^\.\.[\\/]/);
});

test("the README names the folders that a build writes", () => {
  for (const folder of [site, sheetsFolder(resolve())])
    expect(readFileSync("README.md", "utf8")).toContain(`\`${relative(resolve(), folder).replaceAll("\\", "/")}\``);
});
