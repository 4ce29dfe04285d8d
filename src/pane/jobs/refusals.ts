import type { CellError } from "../../cells/values";
import type { Says } from "../messages/messages";
import type { JobAnswer } from "./job-answer";

/** Why there is no answer, by the labels of the form. */
export const refusalInWords =
  ({ refusal, message, code }: CellError): Says =>
  (messages) => {
    if (refusal) return messages.refusalOf(refusal, (name) => messages.inputs[name]?.label ?? name);
    return message === "" ? messages.answer.cellError(code) : messages.refusal(message);
  };

/** What a function has against a field. */
export interface FieldRefusal {
  readonly says: Says;
  /** Which row of a list it is about, from 1; without, the whole field. */
  readonly item?: number;
}

/** The fields that functions refuse, by name. */
export function refusedFields(answers: readonly JobAnswer[] = []): ReadonlyMap<string, FieldRefusal> {
  const refused = new Map<string, FieldRefusal>();
  for (const { refusal: error } of answers) {
    if (error?.refusal === undefined || refused.has(error.refusal.argument)) continue;
    const { argument, item } = error.refusal;
    refused.set(argument, { says: refusalInWords(error), ...(item !== undefined && { item }) });
  }
  return refused;
}
