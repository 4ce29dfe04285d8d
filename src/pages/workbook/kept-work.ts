import { createStore, delMany, get, getMany, keys, set, setMany, type UseStore, update } from "idb-keyval";
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
type Kept =
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
  const about: About = { name: workbook.name, changedAt: work.savedAt };
  const entries: [string, unknown][] = [[key, work]];
  if (isOwn(key)) entries.push([aboutKey(key), about]);
  // All of it or nothing.
  await setMany(entries, store());
  dropLastMoment(key, work.savedAt);
  return work;
}

/** Work, what is said of it, and the file that it came from; not what was set aside. */
export async function forget(key: string): Promise<void> {
  await delMany([key, aboutKey(key), originalKey(key)], store());
  dropLastMoment(key);
}

/** Under this key, and those that begin with it, files of the maker's own are kept. The bare one is the oldest page's. */
const ownKey = "own-file";
export const isOwn = (key: string): boolean => key === ownKey || /^own-file-[a-z0-9]+$/.test(key);

/** A key for one more. */
export async function nextOwnKey(): Promise<string> {
  const taken = new Set(await keys(store()));
  let moment = Date.now();
  while (taken.has(`${ownKey}-${moment.toString(36)}`)) moment += 1;
  return `${ownKey}-${moment.toString(36)}`;
}

interface About {
  readonly name: string;
  readonly changedAt: Date;
}

const about = z.object({ name: z.string(), changedAt: z.date() });
const aboutKey = (key: string): string => `${key}/about`;

export interface OwnWork extends About {
  readonly key: string;
}

/** Files of the maker's own, the last changed first. */
export async function readOwnWorks(): Promise<OwnWork[]> {
  const own = (await keys(store())).filter((key) => typeof key === "string" && isOwn(key)) as string[];
  const known = await getMany<unknown>(own.map(aboutKey), store());
  const works = await Promise.all(
    own.map(async (key, index): Promise<OwnWork | undefined> => {
      const read = about.safeParse(known[index]);
      if (read.success) return { key, ...read.data };
      // Kept by a page that kept one file alone.
      const kept = await readKept(key);
      if (kept.is !== "work") return undefined;
      return { key, name: kept.work.workbook.name, changedAt: kept.work.savedAt };
    }),
  );
  return works
    .filter((work) => work !== undefined)
    .sort((one, other) => other.changedAt.getTime() - one.changedAt.getTime());
}

/** The file that a workbook of the maker's own came from. */
export interface Original {
  readonly fileName: string;
  /** As they came: a save changes cells in them, and nothing else. */
  readonly bytes: Uint8Array;
  /** The workbook when the engine had first worked it out: what differs from it was changed since. */
  readonly asOpened?: Workbook;
  /** The way back into the very file, where the browser gave one. */
  readonly handle?: FileSystemFileHandle;
  /** The checksum of what was last saved into it. */
  readonly onDisk?: string;
}

const originalKey = (key: string): string => `${key}/original`;

/** A browser that can't keep the way back to a file keeps the rest. */
export async function keepOriginal(key: string, original: Original): Promise<void> {
  try {
    await set(originalKey(key), original, store());
  } catch (problem) {
    const isHandle = problem instanceof DOMException && problem.name === "DataCloneError" && original.handle;
    if (!isHandle) throw problem;
    const { handle: _, ...rest } = original;
    await set(originalKey(key), rest, store());
  }
}

/** undefined for work that came from no file, or was kept before files were. */
export const readOriginal = (key: string): Promise<Original | undefined> => get<Original>(originalKey(key), store());

const asideKey = (key: string): string => `${key}/set-aside`;

/** Moves what cannot be read out of the way, to be downloaded. */
export async function setAside(key: string, content: unknown): Promise<void> {
  await update<unknown[]>(asideKey(key), (contents = []) => [...contents, content], store());
  await delMany([key, aboutKey(key)], store());
  dropLastMoment(key);
}

/** What was set aside of this work, and of files of the maker's own, which have no page any more. */
export async function readSetAside(key: string): Promise<unknown[]> {
  const aside = (await keys(store())).filter(
    (each): each is string =>
      typeof each === "string" &&
      (each === asideKey(key) || (isOwn(each.replace(/\/set-aside$/, "")) && each.endsWith("/set-aside"))),
  );
  return (await getMany<unknown[]>(aside, store())).flatMap((contents) => contents ?? []);
}
