import { checkedArguments } from "../cells/checked-arguments";
import type { Step } from "../core/define";
import { meaning } from "../core/describe";
import type { Entry } from "../core/entry";
import type { Messages } from "./messages";

/** What the pane shows of a function and of its workings, in English. */
export function textsOf(entry: Entry): readonly string[] {
  const { spec, page } = entry;
  return [
    page.summary,
    page.formula,
    ...spec.parameters.flatMap((parameter) => [meaning(parameter, page.parameters), parameter.quantity.unit]),
    ...page.guide,
    ...page.examples.map(({ shows }) => shows),
    ...stepsOf(entry).flatMap(({ says, symbols, numbers }) => [says, symbols, numbers]),
  ].filter((text) => words.test(text));
}

/** English beside symbols, numbers and what is called the same in every language. */
const words = /(?<![\p{L}"])(?!(?:low|high|lowLoss|highLoss)(?!\p{L}))[a-z]{3}/u;

/** Texts of these functions that the pane would show in English to a reader of another language, which says them so. */
export const untranslated = (entries: readonly Entry[], { says }: Pick<Messages, "says">): readonly string[] =>
  entries.flatMap(textsOf).filter((text) => says(text) === text);

/** The steps to every worked-out call of a page. */
const stepsOf = ({ spec, page }: Entry): readonly Step[] =>
  [...page.examples, ...page.checks].flatMap(({ given }) => {
    const checked = checkedArguments(spec, given);
    if (!("values" in checked)) return [];
    try {
      return page.working(...checked.values);
    } catch {
      // A refusal has no steps.
      return [];
    }
  });
