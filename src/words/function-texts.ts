/**
 * What the pages of the functions say, to the letter, and how other languages say it: by the English, so that an English
 * text that changed is seen to lack its twin.
 */
import type { CatalogueEntry } from "../core/catalogue";
import type { FunctionPage } from "../core/define";
import type { TextOf, TextOfFunction } from "../core/page-texts";
import type { Released } from "./released";

type Twins<Text extends string> = string extends Text
  ? "a text of a released function is put together as it runs, and no language can have its twin"
  : Readonly<Record<Text, string>>;

/** All that pages and workings of released functions say: a language that lacks one does not compile. */
export type ReleasedTwins = Twins<TextOfFunction<Released>>;

/** What a page says whose texts are all to the letter. */
type TextOfEntry<Entry> = Entry extends { readonly page: infer Page extends FunctionPage }
  ? string extends TextOf<Page>
    ? never
    : TextOf<Page>
  : never;

/** Some of what pages say, also of functions that are not released yet; a text that no page says does not compile. */
export type SomeTwins = Readonly<Partial<Record<TextOfEntry<CatalogueEntry>, string>>>;
