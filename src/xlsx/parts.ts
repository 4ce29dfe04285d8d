import JSZip from "jszip";
import { parseXml, type XmlElement } from "./xml";

/** The parts of a file, and which part another refers to. */
export class Parts {
  readonly #bytes: Uint8Array;
  readonly #file: JSZip;

  private constructor(bytes: Uint8Array, file: JSZip) {
    this.#bytes = bytes;
    this.#file = file;
  }

  static async of(bytes: Uint8Array): Promise<Parts> {
    return new Parts(bytes, await JSZip.loadAsync(bytes));
  }

  /** The paths that match, in the order of the file. */
  paths(pattern: RegExp): string[] {
    return this.#file.file(pattern).map(({ name }) => name);
  }

  has(pattern: RegExp): boolean {
    return this.paths(pattern).length > 0;
  }

  async text(path: string): Promise<string | undefined> {
    return this.#file.file(path)?.async("string");
  }

  async read(path: string): Promise<XmlElement | undefined> {
    const content = await this.text(path);
    return content === undefined ? undefined : parseXml(content);
  }

  /** Paths of the parts that a part names, by the ids that it names them with. */
  async related(path: string): Promise<ReadonlyMap<string, string>> {
    const folder = folderOf(path);
    const links = await this.read(linksOf(path));
    return new Map(
      (links?.children ?? []).map(({ attributes: { Id = "", Target = "" } }) => [Id, targetFrom(folder, Target)]),
    );
  }

  /** A copy of the file with other content in some parts. It is not packed: it is read at once and thrown away. */
  async with(changed: ReadonlyMap<string, string>): Promise<Uint8Array> {
    const copy = await JSZip.loadAsync(this.#bytes);
    for (const [path, content] of changed) copy.file(path, content);
    return copy.generateAsync({ type: "uint8array", compression: "STORE" });
  }
}

export const folderOf = (path: string): string => path.slice(0, path.lastIndexOf("/") + 1);

/** Where a part keeps what it refers to. */
export const linksOf = (path: string): string => `${folderOf(path)}_rels/${path.slice(folderOf(path).length)}.rels`;

/** A target is a path from the folder of its part, or from the root of the file. */
export const targetFrom = (folder: string, target: string): string =>
  decodeURIComponent(new URL(target, `file:///${folder}`).pathname.slice(1));
