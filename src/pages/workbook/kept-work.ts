import { createStore, del, get, set, type UseStore, update } from "idb-keyval";
import { z } from "zod";
import { workbook } from "../../workbook/schema";
import type { Workbook } from "../../workbook/workbook";
import { atLastMoment, dropLastMoment } from "./last-moment";

/** What a maker has made of a workbook, as this browser keeps it between visits. */
export interface KeptWork {
  readonly version: 1;
  readonly savedAt: Date;
  readonly workbook: Workbook;
}

/** What was kept under a key: nothing, work, or something that this version of the page cannot read. */
export type Kept =
  | { readonly is: "nothing" }
  | { readonly is: "work"; readonly work: KeptWork }
  | { readonly is: "unreadable"; readonly content: unknown };

const keptWork = z.object({ version: z.literal(1), savedAt: z.date(), workbook });

/** Opened at the first use, so that a browser that forbids storage refuses there. */
let opened: UseStore | undefined;
function store(): UseStore {
  opened ??= createStore("tea-mass-balance", "work");
  return opened;
}

/** Rejects where the browser forbids storage. */
export async function readKept(key: string): Promise<Kept> {
  const content: unknown = await get(key, store());
  const last = keptWork.safeParse(atLastMoment(key));
  if (content === undefined) return last.success ? { is: "work", work: last.data } : { is: "nothing" };
  const read = keptWork.safeParse(content);
  if (last.success && read.success && last.data.savedAt > read.data.savedAt) return { is: "work", work: last.data };
  return read.success ? { is: "work", work: read.data } : { is: "unreadable", content };
}

export async function keep(key: string, workbook: Workbook): Promise<KeptWork> {
  const work: KeptWork = { version: 1, savedAt: new Date(), workbook };
  await set(key, work, store());
  dropLastMoment(key, work.savedAt);
  return work;
}

export async function forget(key: string): Promise<void> {
  await del(key, store());
  dropLastMoment(key);
}

/** The file that a workbook of the maker's own came from. */
export interface Original {
  readonly fileName: string;
  /** As they came: a save changes cells in them, and nothing else. */
  readonly bytes: Uint8Array;
  /** The workbook when the engine had first worked it out: what differs from it was changed since. */
  readonly asOpened?: Workbook;
}

const originalKey = (key: string): string => `${key}/original`;

export const keepOriginal = (key: string, original: Original): Promise<void> =>
  set(originalKey(key), original, store());

/** undefined for work that came from no file, or was kept before files were. */
export const readOriginal = (key: string): Promise<Original | undefined> => get<Original>(originalKey(key), store());

const asideKey = (key: string): string => `${key}/set-aside`;

/** Moves what cannot be read out of the way, to be downloaded. */
export async function setAside(key: string, content: unknown): Promise<void> {
  await update<unknown[]>(asideKey(key), (contents = []) => [...contents, content], store());
  await forget(key);
}

export async function readSetAside(key: string): Promise<unknown[]> {
  return (await get<unknown[]>(asideKey(key), store())) ?? [];
}
