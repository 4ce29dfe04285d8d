/** The zip archive that an .xlsx is: what is in it, looked through before anything is unpacked. */
import { damaged, Refusal } from "../refusal";
import { mostUnpacked } from "./limits";
import { type DirectoryEnd, type DirectoryRecord, directoryEnd, directoryRecords, signatures, viewOf } from "./records";
import { unpack } from "./unpack";

export interface Entry extends DirectoryRecord {
  /** The name with slashes, from the root of the archive. */
  readonly path: string;
  readonly dataAt: number;
}

export class Archive {
  readonly bytes: Uint8Array;
  readonly end: DirectoryEnd;
  /** In the order of the directory. */
  readonly entries: readonly Entry[];
  readonly #byPath = new Map<string, Entry>();

  /** Refuses what is no archive, damaged, locked, too large, or made to do harm. */
  constructor(given: Uint8Array) {
    // Node's own kind of bytes takes a slice for a view: a plain one leaves the original alone.
    const bytes = new Uint8Array(given.buffer, given.byteOffset, given.byteLength);
    const end = directoryEnd(bytes);
    if (!end) throw damaged("end missing");
    this.bytes = bytes;
    this.end = end;
    const records = directoryRecords(bytes, end);
    const total = records.reduce((sum, { size }) => sum + size, 0);
    if (total > mostUnpacked) throw tooLarge(total);
    this.entries = records.map((record) => ({ ...record, path: pathOf(record), dataAt: dataAt(bytes, record) }));
    for (const entry of this.entries) {
      const key = keyOf(entry.path);
      if (this.#byPath.has(key)) throw damaged({ kind: "two parts named", path: entry.path });
      this.#byPath.set(key, entry);
    }
    refuseOverlaps(this.entries, end.start);
  }

  /** Paths differ by more than capitals (ECMA-376 part 2, 6.2.2). */
  entry(path: string): Entry | undefined {
    return this.#byPath.get(keyOf(path));
  }

  /** Hands on the content piece by piece, so that no more than a piece need be in memory. */
  unpack(entry: Entry, take: (piece: Uint8Array) => void): void {
    if ((entry.flags & 1) !== 0) throw locked();
    if (entry.method !== 0 && entry.method !== 8) {
      throw new Refusal({ kind: "packed in another way", method: entry.method });
    }
    const packed = this.bytes.subarray(entry.dataAt, entry.dataAt + entry.packedSize);
    unpack(packed, entry, take);
  }

  /** The whole content. */
  content(entry: Entry): Uint8Array {
    const content = new Uint8Array(entry.size);
    let at = 0;
    this.unpack(entry, (piece) => {
      content.set(piece, at);
      at += piece.length;
    });
    return content;
  }
}

export const locked = (): Refusal => new Refusal("password");

export const tooLarge = (total: number): Refusal =>
  new Refusal({ kind: "large when unpacked", megabytes: Math.ceil(total / 1024 / 1024) });

const keyOf = (path: string): string => path.toLowerCase();

function pathOf({ name }: DirectoryRecord): string {
  const path = name.replaceAll("\\", "/").replace(/^\/+/, "");
  if (path.split("/").includes("..") || path.includes("\0")) {
    throw new Refusal({ kind: "leads out of it", name: name.slice(0, 60) });
  }
  return path;
}

/** Behind the local header, whose name and extra fields may be longer than the directory's. */
function dataAt(bytes: Uint8Array, { localAt, packedSize, name }: DirectoryRecord): number {
  const view = viewOf(bytes);
  if (localAt + 30 > bytes.length || view.getUint32(localAt, true) !== signatures.local) {
    throw damaged({ kind: "not where it should be", path: name.slice(0, 60) });
  }
  const at = localAt + 30 + view.getUint16(localAt + 26, true) + view.getUint16(localAt + 28, true);
  if (at + packedSize > bytes.length) throw damaged({ kind: "cut off", path: name.slice(0, 60) });
  return at;
}

function refuseOverlaps(entries: readonly Entry[], directoryStart: number): void {
  const inOrder = [...entries].sort((one, other) => one.localAt - other.localAt);
  inOrder.forEach(({ dataAt, packedSize, path }, index) => {
    const next = inOrder[index + 1]?.localAt ?? directoryStart;
    if (dataAt + packedSize > next) throw damaged({ kind: "over another", path: path.slice(0, 60) });
  });
}
