import { strToU8 } from "fflate";
import type { PackageParts } from "../container/package-parts";
import type { Book } from "../read/book";
import { type PackageText, textOf } from "./package-text";
import { type SpillMetadata, spillMetadata } from "./spill-metadata";

const metadataType = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml";
const metadataRelation = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/sheetMetadata";

/** The part of a file that formulas need which spill. It is read only when a formula is to. */
export class SpillsPatch {
  readonly #parts: PackageParts;
  readonly #path: string | undefined;
  #found: SpillMetadata | undefined;

  constructor(parts: PackageParts, book: Book) {
    this.#parts = parts;
    this.#path = parts.related(book.path, "sheetMetadata");
  }

  /** What the cell of such a formula says in `cm`. */
  readonly number = (): number => {
    this.#found ??= spillMetadata(this.#path === undefined ? undefined : textOf(this.#parts, this.#path));
    return this.#found.number;
  };

  writeTo(package_: PackageText, contents: Map<string, Uint8Array | undefined>): void {
    if (this.#found?.changed === undefined) return;
    const path = this.#path ?? package_.add("metadata.xml", metadataType, metadataRelation);
    contents.set(path, strToU8(this.#found.changed));
  }
}
