import { createStore, set, setMany, type UseStore, values } from "idb-keyval";
import { type Kept, sorted } from "../../lots/kept-file";
import type { Lot } from "../../lots/lot";

/** Opened at the first use, so that a browser that forbids storage refuses there. */
let opened: UseStore | undefined;
function store(): UseStore {
  opened ??= createStore("tea-mass-balance phone", "lots");
  return opened;
}

/** Rejects where the browser forbids storage. */
export async function readLots(): Promise<Kept> {
  const stored = await values<unknown>(store());
  const late = sorted(atLastMoment());
  const kept = sorted([...stored, ...late.lots]);
  const ids = new Set(late.lots.map(({ id }) => id));
  await Promise.all(kept.lots.filter(({ id }) => ids.has(id)).map(keepLot));
  localStorage.removeItem(lastMoment);
  return kept;
}

/** Keeps what this version cannot read, for one that can: under keys of its own, beside what may have the same id. */
export const keepUnread = (records: readonly unknown[]): Promise<void> =>
  setMany(
    records.map((record): [string, unknown] => [crypto.randomUUID(), record]),
    store(),
  );

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

function atLastMoment(): unknown[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(lastMoment) ?? "[]");
    return Array.isArray(kept) ? kept : [];
  } catch {
    return [];
  }
}
