import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import JSZip from "jszip";
import { afterAll, beforeEach, expect, test } from "vitest";
import { filesIn } from "../../src/build/folders";
import { alteredFiles, pack, unpack, writeSums } from "../../src/release/packing";

const workplace = mkdtempSync(join(tmpdir(), "tea-pack-"));
const [folder, unpacked] = [join(workplace, "folder"), join(workplace, "unpacked")];

beforeEach(() => {
  rmSync(folder, { recursive: true, force: true });
  rmSync(unpacked, { recursive: true, force: true });
  mkdirSync(join(folder, "docs"), { recursive: true });
  writeFileSync(join(folder, "index.html"), "<p>tea</p>");
  writeFileSync(join(folder, "docs", "checks.html"), "<p>茶</p>");
  writeSums(folder);
});
afterAll(() => rmSync(workplace, { recursive: true }));

test("a packed folder comes out as it went in", async () => {
  await unpack(await pack(folder), unpacked);
  expect(filesIn(unpacked)).toEqual(["SHA256SUMS", "docs/checks.html", "index.html"]);
  expect(readFileSync(join(unpacked, "docs", "checks.html"), "utf8")).toBe("<p>茶</p>");
  expect(alteredFiles(unpacked)).toEqual([]);
});

test("the same files give the same bytes", async () => {
  const first = await pack(folder);
  writeFileSync(join(folder, "index.html"), "<p>tea</p>");
  expect((await pack(folder)).equals(first)).toBe(true);
});

test("the sums are those that any machine works out", () => {
  // SHA-256 of <p>tea</p>, by sha256sum.
  expect(readFileSync(join(folder, "SHA256SUMS"), "utf8")).toContain(
    "c443ab13f124b1d835d9d13453ace80cb1dc6cad304776b017f80c495c18ea44  index.html\n",
  );
});

test("a file that was changed, added or lost is named", () => {
  writeFileSync(join(folder, "index.html"), "<p>other</p>");
  expect(alteredFiles(folder)).toEqual(["index.html"]);
  writeFileSync(join(folder, "new.js"), "");
  expect(alteredFiles(folder)).toEqual(["index.html", "new.js"]);
  rmSync(join(folder, "index.html"));
  expect(alteredFiles(folder)).toEqual(["index.html", "new.js"]);
});

test("nothing is unpacked outside the folder", async () => {
  const archive = new JSZip();
  archive.file("../outside.txt", "no");
  archive.file("inside.txt", "yes");
  await unpack(await archive.generateAsync({ type: "nodebuffer" }), unpacked);
  expect(filesIn(workplace).filter((path) => path.endsWith(".txt"))).toEqual(
    expect.arrayContaining(["unpacked/inside.txt"]),
  );
  expect(filesIn(workplace)).not.toContain("outside.txt");
});
