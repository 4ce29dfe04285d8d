/**
 * The archive with other content in some entries. Every other entry keeps its compressed bytes, its header and its place
 * among the others; so does what stands between them.
 */
import { deflateSync, strToU8 } from "fflate";
import type { Archive, Entry } from "./archive";
import { checksumOf } from "./checksum";
import { locatorLength, signatures, viewOf } from "./records";

interface ArchiveChanges {
  /** New content by path; undefined takes the entry out. A path that is not there yet is put behind all others. */
  readonly contents: ReadonlyMap<string, Uint8Array | undefined>;
}

export function rewriteArchive(archive: Archive, { contents }: ArchiveChanges): Uint8Array {
  const changes = new Map<Entry, Uint8Array | undefined>();
  const added: [string, Uint8Array][] = [];
  for (const [path, content] of contents) {
    const entry = archive.entry(path);
    if (entry) changes.set(entry, content);
    else if (content) added.push([path, content]);
  }
  const pieces = new Pieces();
  const placed = new Map<Entry, Placed>();
  const inOrder = [...archive.entries].sort((one, other) => one.localAt - other.localAt);
  pieces.add(archive.bytes.subarray(0, inOrder[0]?.localAt ?? archive.end.start));
  inOrder.forEach((entry, index) => {
    const end = inOrder[index + 1]?.localAt ?? archive.end.start;
    const at = pieces.length;
    const content = changes.get(entry);
    if (content) placed.set(entry, { at, ...addContent(pieces, archive, entry, content) });
    else if (!changes.has(entry)) {
      pieces.add(archive.bytes.subarray(entry.localAt, end));
      placed.set(entry, { at });
    }
  });
  const records = archive.entries.flatMap((entry) => {
    const place = placed.get(entry);
    return place ? [recordOf(archive, entry, place)] : [];
  });
  for (const [path, content] of added) records.push(addEntry(pieces, path, content));
  const directoryAt = pieces.length;
  for (const record of records) pieces.add(record);
  addEnd(pieces, archive, { at: directoryAt, entries: records.length });
  return pieces.joined();
}

class Pieces {
  readonly #pieces: Uint8Array[] = [];
  length = 0;

  add(piece: Uint8Array): void {
    this.#pieces.push(piece);
    this.length += piece.length;
  }

  joined(): Uint8Array {
    const all = new Uint8Array(this.length);
    let at = 0;
    for (const piece of this.#pieces) {
      all.set(piece, at);
      at += piece.length;
    }
    return all;
  }
}

interface Placed {
  readonly at: number;
  /** Of changed content. */
  readonly packed?: Packed;
}

interface Packed {
  readonly bytes: Uint8Array;
  readonly checksum: number;
  readonly size: number;
}

/** Packed as it was packed before. */
function packedAs(method: number, content: Uint8Array): Packed {
  const bytes = method === 0 ? content : deflateSync(content, { level: 6 });
  return { bytes, checksum: checksumOf(content), size: content.length };
}

/** Bit 3: sizes and checksum follow the content. Ours stand in the header. */
const sizesFollow = 1 << 3;

function addContent(pieces: Pieces, archive: Archive, entry: Entry, content: Uint8Array): { packed: Packed } {
  const packed = packedAs(entry.method, content);
  const nameEnd = entry.localAt + 30 + viewOf(archive.bytes).getUint16(entry.localAt + 26, true);
  const extra = withoutWideSizes(archive.bytes.subarray(nameEnd, entry.dataAt));
  const header = archive.bytes.slice(entry.localAt, nameEnd);
  const view = viewOf(header);
  view.setUint16(6, view.getUint16(6, true) & ~sizesFollow, true);
  setSizes(view, 14, packed);
  view.setUint16(28, extra.length, true);
  pieces.add(header);
  pieces.add(extra);
  pieces.add(packed.bytes);
  return { packed };
}

/** Checksum, packed size and size stand in this order in every record. */
function setSizes(view: DataView, at: number, { checksum, bytes, size }: Packed): void {
  view.setUint32(at, checksum, true);
  view.setUint32(at + 4, bytes.length, true);
  view.setUint32(at + 8, size, true);
}

/** The extra fields without the one for sizes of four gigabytes and more, which nothing here has. */
function withoutWideSizes(extra: Uint8Array): Uint8Array {
  const view = viewOf(extra);
  const kept: number[] = [];
  for (let at = 0; at < extra.length; ) {
    const end = at + 4 <= extra.length ? Math.min(extra.length, at + 4 + view.getUint16(at + 2, true)) : extra.length;
    if (at + 4 > extra.length || view.getUint16(at, true) !== 1) kept.push(...extra.subarray(at, end));
    at = end;
  }
  return Uint8Array.from(kept);
}

/** The directory's record with what has changed. */
function recordOf({ bytes }: Archive, { at: start, end, places }: Entry, { at, packed }: Placed): Uint8Array {
  const record = bytes.slice(start, end);
  const view = viewOf(record);
  const set = ({ at: place, isWide }: Entry["places"]["size"], number: number) => {
    if (isWide) view.setBigUint64(place - start, BigInt(number), true);
    else view.setUint32(place - start, number, true);
  };
  set(places.localAt, at);
  if (packed) {
    view.setUint16(8, view.getUint16(8, true) & ~sizesFollow, true);
    view.setUint32(16, packed.checksum, true);
    set(places.packedSize, packed.bytes.length);
    set(places.size, packed.size);
  }
  return record;
}

/** A new entry behind the others; gives its record for the directory. */
function addEntry(pieces: Pieces, path: string, content: Uint8Array): Uint8Array {
  const name = strToU8(path);
  const packed = packedAs(8, content);
  const at = pieces.length;
  const local = new Uint8Array(30 + name.length);
  const record = new Uint8Array(46 + name.length);
  const fields = (view: DataView, signature: number, versionAt: number) => {
    view.setUint32(0, signature, true);
    view.setUint16(versionAt, 20, true);
    view.setUint16(versionAt + 4, 8, true);
    // 1 January 1980: an entry needs a day.
    view.setUint16(versionAt + 8, 0x21, true);
    setSizes(view, versionAt + 10, packed);
    view.setUint16(versionAt + 22, name.length, true);
  };
  fields(viewOf(local), signatures.local, 4);
  local.set(name, 30);
  fields(viewOf(record), signatures.central, 6);
  viewOf(record).setUint16(4, 20, true);
  viewOf(record).setUint32(42, at, true);
  record.set(name, 46);
  pieces.add(local);
  pieces.add(packed.bytes);
  return record;
}

/** What closes the archive, its comment included, with what has changed. */
function addEnd(pieces: Pieces, { bytes, end }: Archive, { at, entries }: { at: number; entries: number }): void {
  const oldDirectoryEnd = end.start + end.length;
  const length = pieces.length - at;
  const moved = pieces.length - oldDirectoryEnd;
  const closing = bytes.slice(oldDirectoryEnd);
  const view = viewOf(closing);
  if (end.wideEndAt !== undefined) {
    const wide = end.wideEndAt - oldDirectoryEnd;
    for (const [offset, number] of [
      [24, entries],
      [32, entries],
      [40, length],
      [48, at],
    ] as const) {
      view.setBigUint64(wide + offset, BigInt(number), true);
    }
    view.setBigUint64(end.endAt - oldDirectoryEnd - locatorLength + 8, BigInt(end.wideEndAt + moved), true);
  }
  const narrow = end.endAt - oldDirectoryEnd;
  const set16 = (offset: number, number: number) => {
    if (view.getUint16(narrow + offset, true) !== 0xffff) view.setUint16(narrow + offset, number, true);
  };
  const set32 = (offset: number, number: number) => {
    if (view.getUint32(narrow + offset, true) !== 0xffffffff) view.setUint32(narrow + offset, number, true);
  };
  set16(8, entries);
  set16(10, entries);
  set32(12, length);
  set32(16, at);
  pieces.add(closing);
}
