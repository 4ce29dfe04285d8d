import { createContext, useContext } from "react";
import { languageIds, languages } from "../words/languages";
import type { Messages } from "../words/messages";

export const MessagesContext = createContext<Messages>(languages[languageIds[0]].messages);

/** The words of the pane in the language that it speaks now. */
export const useMessages = (): Messages => useContext(MessagesContext);
