import type { Messages } from "../messages";
import { chineseTexts } from "./function-texts";
import { chinesePaneWords } from "./pane-words";

export const chinese: Messages = { ...chinesePaneWords, says: (english) => chineseTexts[english] ?? english };
