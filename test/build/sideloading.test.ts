import { describe, expect, test } from "vitest";
import { sideloading } from "../../src/build/sideloading";

const words = (platform: NodeJS.Platform) => sideloading("/farm/manifest.xml", "/farm/local.crt", platform);

describe("how to load the add-in", () => {
  test.each(["win32", "darwin", "linux"] as const)(
    "names the manifest and the certificate on %s, and the web",
    (platform) => {
      expect(words(platform)).toContain("/farm/manifest.xml");
      expect(words(platform)).toContain("/farm/local.crt");
      expect(words(platform)).toContain("Excel on the web");
    },
  );

  test("leaves out the other system where there is one, and tells both where there is none", () => {
    expect(words("win32")).not.toContain("Excel on a Mac");
    expect(words("darwin")).not.toContain("Excel on Windows");
    expect(words("linux")).toMatch(/Excel on Windows[\s\S]*Excel on a Mac/);
  });
});
