import type { ReleasedTwins } from "../function-texts";
import { balance } from "./functions/balance";
import { charges } from "./functions/charges";
import { formulas } from "./functions/formulas";
import { moisture } from "./functions/moisture";
import { packing } from "./functions/packing";
import { quantities } from "./functions/quantities";
import { season } from "./functions/season";
import { steps } from "./functions/steps";
import { targets } from "./functions/targets";
import { time } from "./functions/time";
import { uncertainty } from "./functions/uncertainty";
import { units } from "./functions/units";
import { yields } from "./functions/yields";

/** What the pages and workings of functions say, by what they say in English. */
const pages = {
  ...steps,
  ...formulas,
  ...moisture,
  ...targets,
  ...charges,
  ...yields,
  ...packing,
  ...balance,
  ...season,
  ...uncertainty,
  ...units,
  ...time,
} satisfies ReleasedTwins;

/** A text without a twin here stays English. */
export const chineseTexts: Readonly<Record<string, string>> = { ...quantities, ...pages };
