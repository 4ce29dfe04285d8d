import type { CellError } from "../cells/values";
import type { Reason } from "../core/refusals";
import { errorInWords } from "../words/error-in-words";
import type { Says } from "../words/messages";
import type { JobAnswer } from "./job-answer";

/** Why there is no answer, by the labels of the form. */
export const refusalInWords =
  (error: CellError): Says =>
  (messages) => {
    const labelled = (argument: string) => `“${messages.inputs[argument]?.label ?? argument}”`;
    if (error.reason) return messages.reason(error.reason, labelled);
    return error.message === "" ? messages.answer.cellError(error.code) : errorInWords(error, messages);
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
    const { reason } = error ?? {};
    if (error === undefined || typeof reason !== "object" || !("argument" in reason)) continue;
    if (refused.has(reason.argument)) continue;
    const item = itemOf(reason);
    refused.set(reason.argument, { says: refusalInWords(error), ...(item !== undefined && { item }) });
  }
  return refused;
}

/** Which item of a list a refusal is about, from 1; undefined where it is about all of it, or about no list. */
function itemOf({ must, found, place }: Extract<Reason, { argument: string }>): number | undefined {
  if (place !== undefined) return place.number;
  if ("be" in must && must.be === "blank or 0 in the first row, before which nothing was weighed") return 1;
  if (typeof found === "string") return undefined;
  switch (found.kind) {
    case "blank row":
    case "unnamed row":
      return found.row;
    case "twice":
      return found.rows[1];
    case "goes":
      return found.place;
    case "rise":
      return found.step;
    default:
      return undefined;
  }
}
