import { Inflate } from "fflate";
import { damaged, Refusal } from "../refusal";
import type { Entry } from "./archive";
import { checksumOf } from "./checksum";

/** Deflate makes at most 1,032 bytes of one: no piece that is handed on is longer than 16 MB. */
const packedPiece = 16 * 1024;

/** Hands on what is packed, piece by piece; refuses more, less and other than the directory declares. */
export function unpack(packed: Uint8Array, entry: Entry, take: (piece: Uint8Array) => void): void {
  let size = 0;
  let checksum = 0;
  const receive = (piece: Uint8Array) => {
    size += piece.length;
    if (size > entry.size) throw damaged({ kind: "more than declared", path: entry.path });
    checksum = checksumOf(piece, checksum);
    if (piece.length > 0) take(piece);
  };
  if (entry.method === 0) eachPiece(packed, receive);
  else inflate(packed, entry, receive);
  if (size !== entry.size) throw damaged({ kind: "less than declared", path: entry.path });
  if (checksum !== entry.checksum) throw damaged({ kind: "not what was written", path: entry.path });
}

function inflate(packed: Uint8Array, { path }: Entry, receive: (piece: Uint8Array) => void): void {
  // What `receive` throws is told apart from what the library throws.
  let stopped: unknown;
  const inflater = new Inflate((piece) => {
    try {
      receive(piece);
    } catch (problem) {
      stopped = problem;
      throw problem;
    }
  });
  try {
    eachPiece(packed, (piece, isLast) => inflater.push(piece, isLast));
  } catch (problem) {
    if (stopped !== undefined || problem instanceof Refusal) throw problem;
    throw damaged({ kind: "not unpacked", path });
  }
}

function eachPiece(bytes: Uint8Array, take: (piece: Uint8Array, isLast: boolean) => void): void {
  for (let at = 0; at < bytes.length || at === 0; at += packedPiece) {
    take(bytes.subarray(at, at + packedPiece), at + packedPiece >= bytes.length);
  }
}
