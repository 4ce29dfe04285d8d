import { createContext, useContext } from "react";
import type { Messages } from "../words/messages";

/** Set by whatever page shows parts of the pane, which knows the language: no words are fetched for another. */
export const MessagesContext = createContext<Messages | undefined>(undefined);

/** The words of the pane in the language that it speaks now. */
export function useMessages(): Messages {
  const messages = useContext(MessagesContext);
  if (messages === undefined) throw new Error("nothing around this says which language is spoken");
  return messages;
}
