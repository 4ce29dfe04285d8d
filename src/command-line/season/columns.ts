/** Which headings say what a column holds: those that are usual, and those that are named on the command line. */
import { type Role, type RoleOf, roleOfHeading } from "../../sheet-check/roles";
import type { Taken } from "../../words/commands";

const taken: readonly Taken[] = ["lot", "date", "plot", "fresh", "finished"];

/** The headings that are meant, by what they hold; in small letters and without spaces around them. */
export type NamedColumns = Readonly<Partial<Record<Taken, readonly string[]>>>;

const usual: Readonly<Record<"lot" | "date" | "plot", RegExp>> = {
  lot: /^\s*(lots?|batch(es)?|(lot |batch )?(no|nr|number|name)\.?|#)\s*$|批次|批号|编号|序号|^\s*批\s*$/i,
  date: /\b(date|day|picked|plucked|harvested)\b(?!.*\bby\b)|日期|采摘日/i,
  plot: /\b(plots?|fields?|gardens?|terraces?|parcels?|blocks?|slopes?)\b|地块|茶园|地名/i,
};

const roles: Readonly<Partial<Record<Taken, Role>>> = {
  lot: "lot",
  fresh: "fresh weight",
  finished: "finished weight",
};

const plain = (heading: string): string => heading.trim().replace(/\s+/g, " ").toLowerCase();

/** `fresh=Leaf kg, finished=Tea g|Made tea`: with semicolons between, headings may have commas. Or what is wrong with it. */
export function columnsIn(text: string): NamedColumns | string {
  const named: Partial<Record<Taken, readonly string[]>> = {};
  for (const part of text.split(text.includes(";") ? ";" : ",")) {
    if (part.trim() === "") continue;
    const at = part.indexOf("=");
    const key = taken.find((each) => each === plain(part.slice(0, Math.max(at, 0))));
    const headings = part
      .slice(at + 1)
      .split("|")
      .map(plain);
    if (key === undefined || headings.some((heading) => heading === "")) {
      return `--columns must be written as "fresh=Leaf kg, finished=Tea g", with ${taken.join(", ")} before the equals signs; got "${part.trim()}"`;
    }
    named[key] = [...(named[key] ?? []), ...headings];
  }
  return named;
}

/** What the columns of one sheet are: of what it has a named heading for, that one counts and no other. */
export class SheetColumns {
  readonly #named: NamedColumns;

  constructor(named: NamedColumns, texts: ReadonlySet<string>) {
    const there = taken.flatMap((key) => {
      const headings = named[key]?.filter((heading) => texts.has(heading)) ?? [];
      return headings.length > 0 ? [[key, headings] as const] : [];
    });
    this.#named = Object.fromEntries(there);
  }

  /** For the reading of headings. */
  readonly roleOf: RoleOf = (heading) => {
    const key = this.#keyOf(heading);
    if (key !== undefined) return roles[key];
    const role = roleOfHeading(heading);
    const isTaken = taken.some((each) => roles[each] === role && this.#named[each] !== undefined);
    return isTaken ? undefined : role;
  };

  /** Whether a heading stands over names, days or plots. */
  holds(heading: string, key: "lot" | "date" | "plot"): boolean {
    const named = this.#keyOf(heading);
    if (named !== undefined) return named === key;
    return this.#named[key] === undefined && usual[key].test(heading) && roleOfHeading(heading) !== "fresh weight";
  }

  #keyOf(heading: string): Taken | undefined {
    const word = plain(heading);
    return taken.find((key) => this.#named[key]?.includes(word));
  }
}

/** Every text of a sheet as headings are compared. */
export const textsIn = (values: readonly (readonly unknown[])[]): Set<string> =>
  new Set(values.flatMap((row) => row.flatMap((value) => (typeof value === "string" ? [plain(value)] : []))));
