import "../workbook/zod-under-policy";
import * as z from "zod/mini";
import { weightUnits } from "../jobs/shown-number";
import { languageIds } from "../words/languages";
import { kept } from "./kept";

export const tabs = ["jobs", "working", "check", "functions", "cautions"] as const;
export type Tab = (typeof tabs)[number];

const settings = z.object({
  /** Absent: that of the host. */
  language: z.optional(z.enum(languageIds)),
  tab: z.enum(tabs),
  /** The job that is open; absent, the list of them is. */
  job: z.optional(z.string()),
  unit: z.enum(weightUnits),
});

export type Settings = z.infer<typeof settings>;

export const keptSettings = kept<Settings>("pane settings", settings, { tab: "jobs", unit: "g" });
