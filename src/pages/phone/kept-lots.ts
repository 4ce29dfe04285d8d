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
  const lots = new Map(read.flatMap(({ lot }) => (lot.success ? [[lot.data.id, lot.data]] : [])));
  for (const lot of takeLastMoment()) {
    if (lot.changed < (lots.get(lot.id)?.changed ?? 0)) continue;
    lots.set(lot.id, lot);
    await keepLot(lot);
  }
  return {
    lots: inOrder([...lots.values()]),
    unread: read.flatMap(({ content, lot }) => (lot.success ? [] : [content])),
  };
}

/** What is on its way into the store, which a page that goes does not wait for. */
const onTheWay = new Map<string, Lot>();

/** Rejects where it could not be kept. */
export async function keepLot(lot: Lot): Promise<void> {
  onTheWay.set(lot.id, lot);
  await set(lot.id, lot, store());
  if (onTheWay.get(lot.id) === lot) onTheWay.delete(lot.id);
}

const lastMoment = "tea-mass-balance phone last moment";

/** Keeps what is still on its way, at once, when the page goes: the last key before it was closed counts, too. */
export function keepAtLastMoment(): void {
  if (onTheWay.size === 0) return;
  try {
    localStorage.setItem(lastMoment, JSON.stringify([...onTheWay.values()]));
  } catch {}
}

function takeLastMoment(): Lot[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(lastMoment) ?? "[]");
    localStorage.removeItem(lastMoment);
    return lotsOf(kept);
  } catch {
    return [];
  }
}

const lotsOf = (kept: unknown): Lot[] =>
  Array.isArray(kept) ? kept.flatMap((each) => lotSchema.safeParse(each).data ?? []) : [];
