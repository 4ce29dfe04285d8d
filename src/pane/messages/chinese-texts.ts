import { balance } from "./chinese-functions/balance";
import { charges } from "./chinese-functions/charges";
import { formulas } from "./chinese-functions/formulas";
import { moisture } from "./chinese-functions/moisture";
import { quantities } from "./chinese-functions/quantities";
import { season } from "./chinese-functions/season";
import { steps } from "./chinese-functions/steps";
import { targets } from "./chinese-functions/targets";
import { time } from "./chinese-functions/time";
import type { Translations } from "./chinese-functions/translations";
import { uncertainty } from "./chinese-functions/uncertainty";
import { units } from "./chinese-functions/units";
import { yields } from "./chinese-functions/yields";

/** What the pages of the catalogue say, by what they say in English. A text without a twin here stays English. */
export const chineseTexts: Translations = {
  ...quantities,
  ...steps,
  ...formulas,
  ...moisture,
  ...targets,
  ...charges,
  ...yields,
  ...balance,
  ...season,
  ...uncertainty,
  ...units,
  ...time,
};
