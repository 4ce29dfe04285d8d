/** The functions that have a named formula, in the order of the catalogue. */
import type { Arithmetic } from "./arithmetic";
import { blendMoistureArithmetic } from "./arithmetic/blend-moisture";
import { budCountArithmetic } from "./arithmetic/bud-count";
import { chargeCountArithmetic } from "./arithmetic/charge-count";
import { chargePlanArithmetic } from "./arithmetic/charge-plan";
import { chargeSplitArithmetic } from "./arithmetic/charge-split";
import { convertAreaArithmetic } from "./arithmetic/convert-area";
import { convertWeightArithmetic } from "./arithmetic/convert-weight";
import { dryBasisArithmetic } from "./arithmetic/dry-basis";
import { dryMatterArithmetic } from "./arithmetic/dry-matter";
import { dryRecoveryArithmetic } from "./arithmetic/dry-recovery";
import { dryingStepsArithmetic } from "./arithmetic/drying-steps";
import { finishedBandArithmetic } from "./arithmetic/finished-band";
import { finishedCheckArithmetic } from "./arithmetic/finished-check";
import { finishedWeightArithmetic } from "./arithmetic/finished-weight";
import { firingMoistureArithmetic } from "./arithmetic/firing-moisture";
import { firingTargetArithmetic } from "./arithmetic/firing-target";
import { freshMoistureArithmetic } from "./arithmetic/fresh-moisture";
import { freshNeededArithmetic } from "./arithmetic/fresh-needed";
import { leafCostArithmetic } from "./arithmetic/leaf-cost";
import { leafRatioArithmetic } from "./arithmetic/leaf-ratio";
import { lossMeaningsArithmetic } from "./arithmetic/loss-meanings";
import { moistureNowArithmetic } from "./arithmetic/moisture-now";
import { outturnArithmetic } from "./arithmetic/outturn";
import { ovenMeanArithmetic } from "./arithmetic/oven-mean";
import { ovenMoistureArithmetic } from "./arithmetic/oven-moisture";
import { packCheckArithmetic } from "./arithmetic/pack-check";
import { restateContentArithmetic } from "./arithmetic/restate-content";
import { sampleMeanArithmetic } from "./arithmetic/sample-mean";
import { scaleErrorArithmetic } from "./arithmetic/scale-error";
import { splitWeightArithmetic } from "./arithmetic/split-weight";
import { stageBalanceArithmetic } from "./arithmetic/stage-balance";
import { targetWeightArithmetic } from "./arithmetic/target-weight";
import { turnTimesArithmetic } from "./arithmetic/turn-times";
import { waterArithmetic } from "./arithmetic/water";
import { waterToRemoveArithmetic } from "./arithmetic/water-to-remove";
import { wetBasisArithmetic } from "./arithmetic/wet-basis";

export const arithmetics: readonly Arithmetic[] = [
  dryBasisArithmetic,
  wetBasisArithmetic,
  ovenMoistureArithmetic,
  ovenMeanArithmetic,
  moistureNowArithmetic,
  freshMoistureArithmetic,
  blendMoistureArithmetic,
  dryMatterArithmetic,
  waterArithmetic,
  restateContentArithmetic,
  targetWeightArithmetic,
  firingTargetArithmetic,
  firingMoistureArithmetic,
  lossMeaningsArithmetic,
  waterToRemoveArithmetic,
  dryingStepsArithmetic,
  chargeCountArithmetic,
  chargeSplitArithmetic,
  chargePlanArithmetic,
  splitWeightArithmetic,
  outturnArithmetic,
  leafRatioArithmetic,
  dryRecoveryArithmetic,
  finishedWeightArithmetic,
  freshNeededArithmetic,
  finishedBandArithmetic,
  finishedCheckArithmetic,
  leafCostArithmetic,
  budCountArithmetic,
  packCheckArithmetic,
  stageBalanceArithmetic,
  scaleErrorArithmetic,
  sampleMeanArithmetic,
  convertWeightArithmetic,
  convertAreaArithmetic,
  turnTimesArithmetic,
];
