import { asSentence as sentence } from "../core/describe";
import { languageIds, languages } from "../words/languages";
import { useMessages } from "./use-messages";

/** What the catalogue says, in the language of the pane; marked as English where it stays so. */
export function Said({ text, asSentence }: { readonly text: string; readonly asSentence?: boolean }) {
  const { says } = useMessages();
  const said = says(text);
  return (
    <span lang={said === text ? languages[languageIds[0]].tag : undefined}>{asSentence ? sentence(said) : said}</span>
  );
}
