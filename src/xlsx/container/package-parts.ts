/** The parts of a package, what they are, and which refers to which (ECMA-376 part 2). */
import { damaged } from "../refusal";
import type { Archive, Entry } from "./archive";
import { treeOf, type XmlElement } from "./xml-tree";

interface Relation {
  readonly id: string;
  /** The last word of its type, such as `worksheet`. */
  readonly kind: string;
  /** The path of a part, or an address outside. */
  readonly target: string;
  readonly isExternal: boolean;
}

export class PackageParts {
  readonly archive: Archive;
  readonly #byExtension = new Map<string, string>();
  readonly #byPath = new Map<string, string>();

  constructor(archive: Archive) {
    this.archive = archive;
    for (const { name, attributes } of this.tree("[Content_Types].xml")?.children ?? []) {
      const { Extension, PartName, ContentType = "" } = attributes;
      if (name === "Default" && Extension !== undefined) this.#byExtension.set(Extension.toLowerCase(), ContentType);
      if (name === "Override" && PartName !== undefined) this.#byPath.set(keyOf(PartName), ContentType);
    }
  }

  /** Paths of all parts, in the order of the archive. */
  paths(): string[] {
    return this.archive.entries.map(({ path }) => path).filter((path) => !path.endsWith("/"));
  }

  has(path: string): boolean {
    return this.archive.entry(path) !== undefined;
  }

  /** What the package says that a part is. */
  contentType(path: string): string {
    const extension = path.slice(path.lastIndexOf(".") + 1).toLowerCase();
    return this.#byPath.get(keyOf(path)) ?? this.#byExtension.get(extension) ?? "";
  }

  /** The part as a tree; undefined where there is none. */
  tree(path: string): XmlElement | undefined {
    const entry = this.archive.entry(path);
    return entry && treeOf(this.archive, entry);
  }

  entryOf(path: string): Entry {
    const entry = this.archive.entry(path);
    if (!entry) throw damaged({ kind: "missing", path });
    return entry;
  }

  /** What a part refers to; for the empty path, the package itself. */
  relations(path: string): Relation[] {
    return (this.tree(relationsOf(path))?.children ?? []).map(({ attributes }) => {
      const { Id = "", Type = "", Target = "", TargetMode } = attributes;
      const isExternal = TargetMode === "External";
      const kind = Type.slice(Type.lastIndexOf("/") + 1);
      return { id: Id, kind, target: isExternal ? Target : targetFrom(folderOf(path), Target), isExternal };
    });
  }

  /** The first part of a kind that a part refers to. */
  related(path: string, kind: string): string | undefined {
    return this.relations(path).find((relation) => relation.kind === kind && !relation.isExternal)?.target;
  }
}

const keyOf = (path: string): string => path.replace(/^\//, "").toLowerCase();

const folderOf = (path: string): string => path.slice(0, path.lastIndexOf("/") + 1);

/** Where a part keeps what it refers to. */
export const relationsOf = (path: string): string => `${folderOf(path)}_rels/${path.slice(folderOf(path).length)}.rels`;

/** A target is a path from the folder of its part, or from the root of the package. */
function targetFrom(folder: string, target: string): string {
  try {
    return decodeURIComponent(new URL(target.replaceAll("\\", "/"), `file:///${folder}`).pathname.slice(1));
  } catch {
    return target;
  }
}
