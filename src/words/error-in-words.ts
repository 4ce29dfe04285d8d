import type { CellError } from "../cells/values";
import type { Messages } from "./messages";

/** What an error says in the language that is spoken: a reason of ours, else what its host or formula says, or its code. `names`: what to call arguments. */
export const errorInWords = (
  { reason, message, code }: CellError,
  messages: Messages,
  names: Readonly<Record<string, string>> = {},
): string =>
  reason === undefined ? message || code : messages.reason(reason, (argument) => names[argument] ?? argument);
