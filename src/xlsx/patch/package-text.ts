/** The parts that say what belongs to a file, as they come to be while other parts of it change. */
import { strToU8 } from "fflate";
import { type PackageParts, relationsOf } from "../container/package-parts";
import type { Book } from "../read/book";
import { withoutRelation, withoutType, withRelation, withType } from "./package-patch";

/** The list of parts and the relations of the workbook's part, as they come to be. */
export class PackageText {
  readonly #parts: PackageParts;
  readonly #book: Book;
  readonly #typesPath = "[Content_Types].xml";
  readonly #relationsPath: string;
  #types: string;
  #relations: string;

  constructor(parts: PackageParts, book: Book) {
    this.#parts = parts;
    this.#book = book;
    this.#relationsPath = relationsOf(book.path);
    this.#types = textOf(parts, this.#typesPath);
    this.#relations = textOf(parts, this.#relationsPath);
  }

  /** Puts in a part beside the workbook's; gives its path. */
  add(name: string, type: string, relation: string): string {
    const folder = this.#book.path.slice(0, this.#book.path.lastIndexOf("/") + 1);
    this.#types = withType(this.#types, `${folder}${name}`, type);
    this.#relations = withRelation(this.#relations, relation, name);
    return `${folder}${name}`;
  }

  /** The order in which cells were worked out: programs make it anew. */
  dropCalculationOrder(contents: Map<string, Uint8Array | undefined>): void {
    const path = this.#parts.related(this.#book.path, "calcChain");
    if (path === undefined) return;
    contents.set(path, undefined);
    this.#types = withoutType(this.#types, path);
    this.#relations = withoutRelation(this.#relations, "calcChain");
  }

  writeTo(contents: Map<string, Uint8Array | undefined>): void {
    for (const [path, text] of [
      [this.#typesPath, this.#types],
      [this.#relationsPath, this.#relations],
    ] as const) {
      if (text !== textOf(this.#parts, path)) contents.set(path, strToU8(text));
    }
  }
}

/** A mark at the beginning stays, so that what is not changed comes out as it went in. */
export const textOf = (parts: PackageParts, path: string): string =>
  new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(parts.archive.content(parts.entryOf(path)));
