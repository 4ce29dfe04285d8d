import "../../workbook/zod-under-policy";
import * as z from "zod/mini";
import { weightUnits } from "../../jobs/shown-number";
import { kept } from "../../pane/kept";
import { languageIds } from "../../words/languages";

export const parts = ["jobs", "card", "today", "cautions"] as const;
export type Part = (typeof parts)[number];

const settings = z.object({
  /** Absent: that of the phone. */
  language: z.optional(z.enum(languageIds)),
  part: z.enum(parts),
  /** The job and the charge that are open; absent, their lists are. */
  job: z.optional(z.string()),
  charge: z.optional(z.number()),
  /** The lot that is worked on; absent, one is begun with the first entry. */
  lot: z.optional(z.string()),
  /** Of a lot that is begun. */
  unit: z.enum(weightUnits),
});

export type Settings = z.infer<typeof settings>;

/** What is open, and not what was typed: that is kept as a lot. */
export const keptSettings = kept<Settings>("phone settings", settings, { part: "jobs", unit: "g" });
