/** The XML of a part as it streams by: strict UTF-8, no document type, nothing deeper or longer than a workbook needs. */
import { SaxesParser } from "saxes";
import { damaged, Refusal } from "../refusal";
import type { Archive, Entry } from "./archive";

export type Attributes = Readonly<Record<string, string>>;

/** Names come without their prefix. */
export interface XmlHandler {
  open?(name: string, attributes: Attributes): void;
  /** All text up to the next tag. */
  text?(text: string): void;
  close?(name: string): void;
}

const deepest = 256;
/** Characters between two tags, or inside one. Notes of 32,767 characters and what comes beside them fit well. */
const longestRun = 1_000_000;
/** What the parser gets at once. */
const pieceLength = 64 * 1024;

export function readXml(archive: Archive, entry: Entry, handler: XmlHandler): void {
  parseXmlPieces(entry.path, handler, (write) => eachText(archive, entry, write));
}

/** `path` is for messages; `feed` hands over the text, in pieces of any length. */
export function parseXmlPieces(path: string, handler: XmlHandler, feed: (write: (text: string) => void) => void): void {
  const parser = new SaxesParser();
  let depth = 0;
  let run = 0;
  parser.on("doctype", () => {
    throw new Refusal({ kind: "document type", path });
  });
  parser.on("xmldecl", ({ encoding }) => {
    if (encoding !== undefined && !/^(?:utf-?8|us-ascii)$/i.test(encoding)) throw otherEncoding(path, encoding);
  });
  parser.on("opentag", ({ name, attributes }) => {
    run = 0;
    depth += 1;
    if (depth > deepest) throw damaged({ kind: "nested", path, deepest });
    handler.open?.(withoutPrefix(name), attributes as Attributes);
  });
  if (handler.text) parser.on("text", handler.text.bind(handler));
  parser.on("closetag", ({ name }) => {
    run = 0;
    depth -= 1;
    handler.close?.(withoutPrefix(name));
  });
  const write = (text: string) => {
    for (let at = 0; at < text.length; at += pieceLength) {
      const piece = text.slice(at, at + pieceLength);
      run += piece.length;
      parser.write(piece);
      if (run > longestRun) throw damaged({ kind: "long text", path });
    }
  };
  try {
    feed(write);
    parser.close();
  } catch (problem) {
    if (problem instanceof Refusal) throw problem;
    throw damaged({ kind: "no XML", path });
  }
}

/** The text of a part, piece by piece. */
function eachText(archive: Archive, entry: Entry, take: (text: string) => void): void {
  const decoder = new TextDecoder("utf-8", { fatal: true });
  let isFirst = true;
  archive.unpack(entry, (piece) => {
    if (isFirst) refuseUtf16(piece, entry.path);
    isFirst = false;
    take(decoder.decode(piece, { stream: true }));
  });
  take(decoder.decode());
}

function refuseUtf16([first, second]: Uint8Array, path: string): void {
  const isMarked = (first === 0xfe && second === 0xff) || (first === 0xff && second === 0xfe);
  if (isMarked || first === 0 || second === 0) throw otherEncoding(path, "UTF-16");
}

const otherEncoding = (path: string, encoding: string): Refusal =>
  new Refusal({ kind: "encoding", encoding: encoding.slice(0, 20), path });

export const withoutPrefix = (name: string): string => name.slice(name.indexOf(":") + 1);

/** The attribute of this name, whatever prefix it has. */
export function attribute(attributes: Attributes, name: string): string | undefined {
  const value = attributes[name];
  if (value !== undefined) return value;
  for (const key in attributes) if (key.endsWith(`:${name}`)) return attributes[key];
  return undefined;
}

/** XML's truth: `1`, `true`, and in old files `on`. */
export const isTrue = (value: string | undefined): boolean => value === "1" || value === "true" || value === "on";
