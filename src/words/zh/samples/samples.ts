import type { SampleWords } from "../../samples";
import { chinesePaneWords } from "../pane-words";
import { chineseBench } from "./bench";
import { chineseDay } from "./day";
import { chineseOneLot } from "./one-lot";
import { chineseParts } from "./parts";
import { chineseSeason } from "./season";

export const chineseSamples: SampleWords = {
  oneLot: chineseOneLot,
  season: chineseSeason,
  day: chineseDay,
  bench: chineseBench,
  parts: chineseParts,
  cautions: chinesePaneWords.cautions,
  deferral: chinesePaneWords.deferral,
  told: chinesePaneWords.joined.told,
  units: {
    g: "克",
    kg: "公斤",
    jin: "斤",
    liang: "两",
    kan: "贯",
    oz: "盎司",
    lb: "磅",
    ha: "公顷",
    mu: "亩",
    m2: "平方米",
    acre: "英亩",
  },
  choices: chinesePaneWords.sheet.choices,
  inCells: {
    columns: chinesePaneWords.columns,
    flags: chinesePaneWords.picture.flags,
    phrase: chinesePaneWords.phrase,
  },
};
