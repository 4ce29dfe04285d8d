import { asSentence as sentence } from "../core/describe";
import { useMessages } from "./use-messages";

/** What the catalogue says, in the language of the pane; marked as English where it stays so. */
export function Said({ text, asSentence }: { readonly text: string; readonly asSentence?: boolean }) {
  const { says } = useMessages();
  const said = says(text);
  return <span lang={said === text ? "en" : undefined}>{asSentence ? sentence(said) : said}</span>;
}
