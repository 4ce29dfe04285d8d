import type { SampleWords } from "../../samples";
import { english } from "../messages";
import { englishBench } from "./bench";
import { englishDay } from "./day";
import { englishOneLot } from "./one-lot";
import { englishParts } from "./parts";
import { englishSeason } from "./season";

export const englishSamples: SampleWords = {
  oneLot: englishOneLot,
  season: englishSeason,
  day: englishDay,
  bench: englishBench,
  parts: englishParts,
  cautions: english.cautions,
  deferral: english.deferral,
  told: english.joined.told,
  units: {},
  choices: english.sheet.choices,
  inCells: undefined,
};
