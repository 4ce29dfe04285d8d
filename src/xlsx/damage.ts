/** What does not hold together inside a file. */
export type Damage =
  | FixedDamage
  | { readonly kind: DamageOfPart; readonly path: string }
  | { readonly kind: "nested"; readonly path: string; readonly deepest: number }
  | { readonly kind: "sheet missing"; readonly sheet: string };

export type FixedDamage =
  | "end missing"
  | "directory not found"
  | "directory outside"
  | "directory broken off"
  | "senseless length"
  | "list of parts missing";

export type DamageOfPart =
  | "two parts named"
  | "not where it should be"
  | "cut off"
  | "over another"
  | "more than declared"
  | "less than declared"
  | "not what was written"
  | "not unpacked"
  | "missing"
  | "long text"
  | "no XML";
