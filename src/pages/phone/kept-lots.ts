import { createStore, set, type UseStore, values } from "idb-keyval";
import { inOrder, type Lot, lotSchema } from "../../lots/lot";

/** Opened at the first use, so that a browser that forbids storage refuses there. */
let opened: UseStore | undefined;
function store(): UseStore {
  opened ??= createStore("tea-mass-balance phone", "lots");
  return opened;
}

export interface KeptLots {
  readonly lots: readonly Lot[];
  /** What this version cannot read; it stays where it is. */
  readonly unread: readonly unknown[];
}

/** Rejects where the browser forbids storage. */
export async function readLots(): Promise<KeptLots> {
  const read = (await values<unknown>(store())).map((content) => ({ content, lot: lotSchema.safeParse(content) }));
  return {
    lots: inOrder(read.flatMap(({ lot }) => (lot.success ? [lot.data] : []))),
    unread: read.flatMap(({ content, lot }) => (lot.success ? [] : [content])),
  };
}

/** Rejects where it could not be kept. */
export const keepLot = (lot: Lot): Promise<void> => set(lot.id, lot, store());
