/**
 * How many cells the sheets of a file hold, counted in the bytes as they stream by: nothing is kept of a file that has
 * too many. A tag `<c` inside a comment would be counted as well: no harm.
 */
import type { Archive, Entry } from "../container/archive";
import { Refusal } from "../refusal";
import { mostCells } from "./limits";

const [less, letterC, colon, slash, greater] = [0x3c, 0x63, 0x3a, 0x2f, 0x3e];

/** Refuses more than a million. */
export function countCells(archive: Archive, sheets: readonly Entry[]): number {
  const counter = new CellCounter();
  for (const sheet of sheets) archive.unpack(sheet, (piece) => counter.take(piece));
  return counter.count;
}

/** `<c `, `<c>`, `<c/>` and the same behind a prefix. */
class CellCounter {
  count = 0;
  /** The bytes of the name that is being read, or undefined between tags. */
  #inName = false;
  #nameLength = 0;
  #last = 0;

  take(piece: Uint8Array): void {
    for (let at = 0; at < piece.length; at += 1) {
      if (!this.#inName) {
        at = piece.indexOf(less, at);
        if (at < 0) return;
        this.#inName = true;
        this.#nameLength = 0;
        continue;
      }
      const byte = piece[at] as number;
      if (byte === colon) this.#nameLength = 0;
      else if (byte > 0x20 && byte !== slash && byte !== greater) {
        this.#nameLength += 1;
        this.#last = byte;
      } else {
        this.#inName = false;
        if (this.#nameLength === 1 && this.#last === letterC) this.#add();
      }
    }
  }

  #add(): void {
    this.count += 1;
    if (this.count > mostCells) {
      throw new Refusal("many cells");
    }
  }
}
