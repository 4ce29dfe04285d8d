/** The notes on the cells of a sheet. */
import type { PackageParts } from "../container/package-parts";
import { childrenAt, elementsNamed } from "../container/xml-tree";
import { type Place, placeIn } from "./cell-address";
import { unescaped } from "./escaped-text";

export interface Note extends Place {
  readonly text: string;
}

export function readNotes(parts: PackageParts, sheetPath: string): Note[] {
  return parts.relations(sheetPath).flatMap(({ kind, target }) =>
    kind !== "comments"
      ? []
      : childrenAt(parts.tree(target), "commentList").map((comment) => ({
          ...placeIn(comment.attributes.ref ?? "A1"),
          text: unescaped(
            elementsNamed("t", comment)
              .map(({ text }) => text)
              .join(""),
          ),
        })),
  );
}
