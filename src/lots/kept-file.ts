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

/** The lots of a file; undefined where it is no file of ours, or a later one's. */
export function lotsInFile(text: string): Lot[] | undefined {
  try {
    return keptFile.parse(JSON.parse(text)).lots;
  } catch {
    return undefined;
  }
}

/** The lots of a file that are not there yet, or that changed since. */
export const newerLots = (there: readonly Lot[], read: readonly Lot[]): Lot[] => {
  const known = new Map(there.map((lot) => [lot.id, lot]));
  return inOrder(read.filter((lot) => lot.changed > (known.get(lot.id)?.changed ?? Number.NEGATIVE_INFINITY)));
};
