/** Writes a file in the place of another, so that at no moment there is none, and the old one stays beside it. */
import {
  closeSync,
  copyFileSync,
  existsSync,
  fsyncSync,
  openSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";

interface Stamp {
  readonly changedAt: number;
  readonly size: number;
}

export function stampOf(path: string): Stamp {
  const { mtimeMs: changedAt, size } = statSync(path);
  return { changedAt, size };
}

/** The name under which a spreadsheet program says that it has the file open. */
const openMark = (path: string): string => join(dirname(path), `~$${basename(path)}`);

/** Throws, and leaves everything as it is, where the file is open elsewhere or was changed since `before`. */
export function writeInPlace(path: string, bytes: Uint8Array, before: Stamp, keepsOld: boolean): void {
  if (existsSync(openMark(path))) throw new Error("the file is open in a spreadsheet program: close it there first");
  const { changedAt, size } = stampOf(path);
  if (changedAt !== before.changedAt || size !== before.size) {
    throw new Error("the file was changed by another program while it was worked out: try again");
  }
  const beside = `${path}.new`;
  try {
    writeWhole(beside, bytes);
    if (keepsOld) copyFileSync(path, `${path}.bak`);
    renameSync(beside, path);
  } finally {
    rmSync(beside, { force: true });
  }
}

/** On the disk before this returns. */
export function writeWhole(path: string, bytes: Uint8Array): void {
  const file = openSync(path, "w");
  try {
    for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}
