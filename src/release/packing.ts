import { createHash } from "node:crypto";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import JSZip from "jszip";
import { filesIn } from "../build/folders";

const sumsFile = "SHA256SUMS";

const sumOf = (content: Uint8Array): string => createHash("sha256").update(content).digest("hex");

/** Writes the sums of all files beside them. */
export function writeSums(folder: string): void {
  const lines = filesIn(folder)
    .filter((path) => path !== sumsFile)
    .map((path) => `${sumOf(readFileSync(join(folder, path)))}  ${path}\n`);
  writeFileSync(join(folder, sumsFile), lines.join(""));
}

/** Files of an unpacked release that are not what its sums say, or that its sums do not name. */
export function alteredFiles(folder: string): string[] {
  const lines = readFileSync(join(folder, sumsFile), "utf8").trimEnd().split("\n");
  const sums = new Map(lines.map((line) => [line.slice(66), line.slice(0, 64)]));
  const there = filesIn(folder).filter((path) => path !== sumsFile);
  const missing = [...sums.keys()].filter((path) => !there.includes(path));
  return [...missing, ...there.filter((path) => sums.get(path) !== sumOf(readFileSync(join(folder, path))))];
}

/** The folder as one archive: the same files give the same bytes. */
export async function pack(folder: string): Promise<Buffer> {
  const archive = new JSZip();
  const date = new Date(Date.UTC(2000, 0, 1));
  for (const path of filesIn(folder)) {
    archive.file(path, readFileSync(join(folder, path)), { date, createFolders: false });
  }
  return archive.generateAsync({ type: "nodebuffer", compression: "DEFLATE", compressionOptions: { level: 9 } });
}

export async function unpack(archive: Buffer, folder: string): Promise<void> {
  for (const [path, file] of Object.entries((await JSZip.loadAsync(archive)).files)) {
    const target = join(folder, path);
    // A path that leads out of the folder is no part of a release.
    if (file.dir || relative(folder, target).startsWith("..")) continue;
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, await file.async("nodebuffer"));
  }
}
