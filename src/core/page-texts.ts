/** The texts of functions' pages to the letter, so that the compiler finds the ones that a language lacks. */
import type { CatalogueEntry } from "./catalogue";
import type { FunctionPage, Step } from "./define";

/**
 * The words by which a formula in words is known: what has none of them is symbols and numbers, which are the same in
 * every language. A test finds formulas whose words are not here.
 */
type FormulaWord =
  | "all"
  | "before"
  | "below"
  | "buds"
  | "charges"
  | "count"
  | "end"
  | "error"
  | "even"
  | "fill"
  | "from"
  | "interval"
  | "leaf"
  | "limit"
  | "load"
  | "median"
  | "minutes"
  | "off"
  | "one"
  | "out"
  | "part"
  | "price"
  | "removed"
  | "row"
  | "share"
  | "steps"
  | "the"
  | "values"
  | "water"
  | "weight";

type InWords<Text extends string> = Text extends `${string}${FormulaWord}${string}` ? Text : never;

type TextOfStep<Shown extends Step> =
  Shown extends Step<infer Says, infer Symbols, infer Numbers> ? Says | InWords<Symbols> | InWords<Numbers> : never;

/** All that a page says in words. */
export type TextOf<Page extends FunctionPage> =
  | Page["summary"]
  | Page["parameters"][keyof Page["parameters"]]
  | InWords<Page["formula"]>
  | Page["guide"][number]
  | Page["examples"][number]["shows"]
  | TextOfStep<ReturnType<Page["working"]>[number]>;

/** What the page of a function says. */
export type TextOfFunction<Id extends CatalogueEntry["spec"]["id"]> = TextOf<
  Extract<CatalogueEntry, { readonly spec: { readonly id: Id } }>["page"]
>;
