/**
 * The records that close a zip archive, after PKWARE's APPNOTE: one for each entry in the central directory (4.3.12),
 * and the end of it (4.3.16), which large archives repeat with wider numbers (4.3.14, 4.3.15).
 */
import { damaged } from "../refusal";

export const signatures = {
  local: 0x04034b50,
  central: 0x02014b50,
  end: 0x06054b50,
  wideEnd: 0x06064b50,
  wideEndLocator: 0x07064b50,
} as const;

const endLength = 22;
export const locatorLength = 20;
const centralLength = 46;
const longestComment = 0xffff;

export const viewOf = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

/** Where the directory stands, and its closing records. */
export interface DirectoryEnd {
  readonly start: number;
  readonly length: number;
  readonly entries: number;
  readonly endAt: number;
  /** The record with the wider numbers, where there is one. */
  readonly wideEndAt: number | undefined;
}

/** undefined where the bytes have no end of a directory. */
export function directoryEnd(bytes: Uint8Array): DirectoryEnd | undefined {
  const view = viewOf(bytes);
  const first = Math.max(0, bytes.length - endLength - longestComment);
  for (let at = bytes.length - endLength; at >= first; at -= 1) {
    if (view.getUint32(at, true) !== signatures.end) continue;
    if (at + endLength + view.getUint16(at + 20, true) > bytes.length) continue;
    const wideEndAt = wideEnd(view, at);
    if (wideEndAt === undefined) {
      const [entries, length, start] = [
        view.getUint16(at + 10, true),
        view.getUint32(at + 12, true),
        view.getUint32(at + 16, true),
      ];
      return { start, length, entries, endAt: at, wideEndAt };
    }
    const wide = (offset: number) => wideNumber(view, wideEndAt + offset);
    return { start: wide(48), length: wide(40), entries: wide(32), endAt: at, wideEndAt };
  }
  return undefined;
}

function wideEnd(view: DataView, endAt: number): number | undefined {
  const locator = endAt - locatorLength;
  if (locator < 0 || view.getUint32(locator, true) !== signatures.wideEndLocator) return undefined;
  const at = wideNumber(view, locator + 8);
  if (at + 56 > locator || view.getUint32(at, true) !== signatures.wideEnd) throw damaged("directory not found");
  return at;
}

function wideNumber(view: DataView, at: number): number {
  const number = Number(view.getBigUint64(at, true));
  if (!Number.isSafeInteger(number)) throw damaged("senseless length");
  return number;
}

/** What the directory says of an entry. */
export interface DirectoryRecord {
  readonly at: number;
  readonly end: number;
  readonly flags: number;
  readonly method: number;
  readonly checksum: number;
  readonly packedSize: number;
  readonly size: number;
  readonly localAt: number;
  readonly name: string;
  /** Where in the record the numbers stand that changed content changes: 4 bytes each, or 8 where it is wide. */
  readonly places: { readonly packedSize: Place; readonly size: Place; readonly localAt: Place };
}

interface Place {
  readonly at: number;
  readonly isWide: boolean;
}

export function directoryRecords(bytes: Uint8Array, { start, length, entries }: DirectoryEnd): DirectoryRecord[] {
  const view = viewOf(bytes);
  const end = start + length;
  if (end > bytes.length) throw damaged("directory outside");
  const records: DirectoryRecord[] = [];
  let at = start;
  while (records.length < entries) {
    if (at + centralLength > end || view.getUint32(at, true) !== signatures.central) {
      throw damaged("directory broken off");
    }
    const record = recordAt(bytes, view, at, end);
    records.push(record);
    at = record.end;
  }
  return records;
}

function recordAt(bytes: Uint8Array, view: DataView, at: number, limit: number): DirectoryRecord {
  const nameLength = view.getUint16(at + 28, true);
  const extraLength = view.getUint16(at + 30, true);
  const extraAt = at + centralLength + nameLength;
  const end = extraAt + extraLength + view.getUint16(at + 32, true);
  if (end > limit) throw damaged("directory broken off");
  const places = placesIn(view, at, extraAt, extraLength);
  const number = ({ at: place, isWide }: Place) => (isWide ? wideNumber(view, place) : view.getUint32(place, true));
  return {
    at,
    end,
    flags: view.getUint16(at + 8, true),
    method: view.getUint16(at + 10, true),
    checksum: view.getUint32(at + 16, true),
    packedSize: number(places.packedSize),
    size: number(places.size),
    localAt: number(places.localAt),
    name: new TextDecoder().decode(bytes.subarray(at + centralLength, extraAt)),
    places,
  };
}

/** A number of all ones stands, wider, in an extra field (APPNOTE 4.5.3): there are as many there as are missing here. */
function placesIn(view: DataView, at: number, extraAt: number, extraLength: number): DirectoryRecord["places"] {
  const wideFields = wideFieldsAt(view, extraAt, extraLength);
  const place = (narrow: number): Place => {
    if (view.getUint32(narrow, true) !== 0xffffffff) return { at: narrow, isWide: false };
    const wide = wideFields.shift();
    if (wide === undefined) throw damaged("senseless length");
    return { at: wide, isWide: true };
  };
  // In this order.
  const size = place(at + 24);
  const packedSize = place(at + 20);
  return { size, packedSize, localAt: place(at + 42) };
}

function wideFieldsAt(view: DataView, extraAt: number, extraLength: number): number[] {
  const end = extraAt + extraLength;
  for (let at = extraAt; at + 4 <= end; ) {
    const [id, length] = [view.getUint16(at, true), view.getUint16(at + 2, true)];
    if (id === 1 && at + 4 + length <= end) {
      return Array.from({ length: Math.floor(length / 8) }, (_, index) => at + 4 + index * 8);
    }
    at += 4 + length;
  }
  return [];
}
