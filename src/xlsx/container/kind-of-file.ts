/** What is not an .xlsx, by name: told from its first bytes and from the parts of its archive. */
import { damaged, Refusal } from "../refusal";
import { Archive, locked } from "./archive";

/** The archive of an .xlsx; refuses other files by what they are. */
export function openArchive(bytes: Uint8Array): Archive {
  if (bytes.length === 0) throw new Refusal("empty");
  if (startsWith(bytes, [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1])) throw ofCompoundFile(bytes);
  if (!startsWith(bytes, [0x50, 0x4b])) {
    throw new Refusal("no .xlsx");
  }
  const archive = new Archive(bytes);
  const mimetype = archive.entry("mimetype");
  if (mimetype && archive.entry("META-INF/manifest.xml")) {
    throw new Refusal("OpenDocument");
  }
  if (archive.entry("xl/workbook.bin")) throw new Refusal("binary .xlsb");
  if (archive.entry("word/document.xml") || archive.entry("ppt/presentation.xml")) {
    throw new Refusal("text or presentation");
  }
  if (!archive.entry("[Content_Types].xml")) {
    throw archive.entry("xl/workbook.xml") ? damaged("list of parts missing") : new Refusal("some archive");
  }
  return archive;
}

/** The container of old programs: an .xls, or an .xlsx that is locked. Its directory names its streams in UTF-16. */
function ofCompoundFile(bytes: Uint8Array): Refusal {
  const holds = (name: string) =>
    indexOf(
      bytes,
      [...name].flatMap((letter) => [letter.charCodeAt(0), 0]),
    ) >= 0;
  if (holds("EncryptedPackage")) return locked();
  if (holds("Workbook") || holds("Book")) return new Refusal("old .xls");
  return new Refusal("no .xlsx");
}

const startsWith = (bytes: Uint8Array, start: readonly number[]): boolean =>
  start.every((byte, index) => bytes[index] === byte);

function indexOf(bytes: Uint8Array, wanted: readonly number[]): number {
  const [first = 0] = wanted;
  for (let at = bytes.indexOf(first); at >= 0; at = bytes.indexOf(first, at + 1)) {
    if (wanted.every((byte, index) => bytes[at + index] === byte)) return at;
  }
  return -1;
}
