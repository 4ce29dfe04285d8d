/** Everything that a phone keeps, as one file that it can read again. */
import * as z from "zod/mini";
import { inOrder, type Lot, lotSchema } from "./lot";

const keptFile = z.object({
  holds: z.literal("tea-mass-balance lots"),
  version: z.literal(1),
  saved: z.number(),
  lots: z.array(lotSchema),
  /** What the phone keeps and this version cannot read: handed on as it is. */
  unread: z.optional(z.array(z.unknown())),
});

export const fileOf = (lots: readonly Lot[], unread: readonly unknown[], now: number): string =>
  `${JSON.stringify({ holds: "tea-mass-balance lots", version: 1, saved: now, lots, ...(unread.length > 0 && { unread }) }, null, 1)}\n`;

export interface Kept {
  readonly lots: readonly Lot[];
  /** What this version cannot read; it stays as it is. */
  readonly unread: readonly unknown[];
}

/** Parts records into lots and what cannot be read. Of two with the same id, the one that changed last counts. */
export function sorted(records: readonly unknown[]): Kept {
  const lots = new Map<string, Lot>();
  const unread: unknown[] = [];
  for (const record of records) {
    const { success, data } = lotSchema.safeParse(record);
    if (!success) unread.push(record);
    else if (data.changed >= (lots.get(data.id)?.changed ?? data.changed)) lots.set(data.id, data);
  }
  return { lots: inOrder([...lots.values()]), unread };
}

/** What a file keeps; undefined where it is no file of ours, or a later one's. */
export function keptIn(text: string): Kept | undefined {
  try {
    const { lots, unread = [] } = keptFile.parse(JSON.parse(text));
    // What the version that wrote the file could not read, this one perhaps can.
    return sorted([...lots, ...unread]);
  } catch {
    return undefined;
  }
}

/** What cannot be read either here or in a file, and is not here yet. */
export function newUnread(there: readonly unknown[], read: readonly unknown[]): unknown[] {
  const known = new Set(there.map((record) => JSON.stringify(record)));
  return read.filter((record) => {
    const written = JSON.stringify(record);
    if (known.has(written)) return false;
    known.add(written);
    return true;
  });
}

/** The lots of a file that are not there yet, or that changed since. */
export const newerLots = (there: readonly Lot[], read: readonly Lot[]): Lot[] => {
  const known = new Map(there.map((lot) => [lot.id, lot]));
  return inOrder(read.filter((lot) => lot.changed > (known.get(lot.id)?.changed ?? Number.NEGATIVE_INFINITY)));
};
