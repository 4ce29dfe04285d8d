import { createContext, useContext } from "react";
import { languageIds } from "../words/languages";
import type { Messages } from "../words/messages";
import { messagesIn } from "../words/messages-in";

export const MessagesContext = createContext<Messages>(messagesIn[languageIds[0]]);

/** The words of the pane in the language that it speaks now. */
export const useMessages = (): Messages => useContext(MessagesContext);
