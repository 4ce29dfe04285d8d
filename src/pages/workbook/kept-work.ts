import { createStore, del, get, set, type UseStore, update } from "idb-keyval";
import { z } from "zod";
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

// The page's security policy forbids code made from text, which the library would try otherwise.
z.config({ jitless: true });

const area = z.object({ row: z.int(), column: z.int(), rows: z.int(), columns: z.int() });

const cell = z.object({
  row: z.int(),
  column: z.int(),
  value: z.union([z.number(), z.string(), z.boolean()]).exactOptional(),
  isText: z.literal(true).exactOptional(),
  formula: z.string().exactOptional(),
  spill: z.object({ rows: z.int(), columns: z.int() }).exactOptional(),
  style: z
    .object({
      format: z.string().exactOptional(),
      bold: z.boolean().exactOptional(),
      italic: z.boolean().exactOptional(),
      size: z.number().exactOptional(),
      color: z.string().exactOptional(),
      fill: z.string().exactOptional(),
      align: z.enum(["left", "center", "right"]).exactOptional(),
      wrap: z.boolean().exactOptional(),
      border: z.enum(["thin", "bottom"]).exactOptional(),
    })
    .exactOptional(),
  note: z.string().exactOptional(),
});

const axis = z.object({
  title: z.string(),
  format: z.string().exactOptional(),
  least: z.number().exactOptional(),
  most: z.number().exactOptional(),
});

const chart = z.object({
  kind: z.enum(["columns", "dots"]),
  title: z.string(),
  description: z.string(),
  area,
  series: z.array(z.object({ name: z.string(), across: z.string(), up: z.string(), color: z.string() })),
  across: axis,
  up: axis,
});

const sizes = z.record(z.string(), z.number());

const keptWork = z.object({
  version: z.literal(1),
  savedAt: z.date(),
  workbook: z.object({
    name: z.string(),
    names: z
      .array(z.object({ name: z.string(), formula: z.string(), sheet: z.string().exactOptional() }))
      .exactOptional(),
    sheets: z.array(
      z.object({
        name: z.string(),
        cells: z.array(cell),
        columnWidths: sizes,
        rowHeights: sizes,
        merges: z.array(area),
        isHidden: z.literal(true).exactOptional(),
        hiddenRows: z.array(z.int()).exactOptional(),
        hiddenColumns: z.array(z.int()).exactOptional(),
        frozenRows: z.int().exactOptional(),
        page: z
          .object({
            paper: z.enum(["A4", "A5"]),
            landscape: z.boolean(),
            fitToOnePageWide: z.boolean(),
            footer: z.string().exactOptional(),
            printArea: area.exactOptional(),
            repeatedRow: z.int().exactOptional(),
          })
          .exactOptional(),
        tables: z.array(z.object({ name: z.string(), area })).exactOptional(),
        charts: z.array(chart).exactOptional(),
      }),
    ),
  }),
});

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

const asideKey = (key: string): string => `${key}/set-aside`;

/** Moves what cannot be read out of the way, to be downloaded. */
export async function setAside(key: string, content: unknown): Promise<void> {
  await update<unknown[]>(asideKey(key), (contents = []) => [...contents, content], store());
  await forget(key);
}

export async function readSetAside(key: string): Promise<unknown[]> {
  return (await get<unknown[]>(asideKey(key), store())) ?? [];
}
