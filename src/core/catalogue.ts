/** THE ordered list of every function. Whatever else knows about functions is derived from it. */

import { balanceFit, balanceFitPage } from "./balance/balance-fit";
import { stageBalance, stageBalancePage } from "./balance/stage-balance";
import { stockBalance, stockBalancePage } from "./balance/stock-balance";
import { chargeCount, chargeCountPage } from "./charges/charge-count";
import { chargePlan, chargePlanPage } from "./charges/charge-plan";
import { chargeSplit, chargeSplitPage } from "./charges/charge-split";
import { splitWeight, splitWeightPage } from "./charges/split-weight";
import { type Entry, entry } from "./entry";
import { blendMoisture, blendMoisturePage } from "./moisture/blend-moisture";
import { dryBasis, dryBasisPage } from "./moisture/dry-basis";
import { dryMatter, dryMatterPage } from "./moisture/dry-matter";
import { freshMoisture, freshMoisturePage } from "./moisture/fresh-moisture";
import { moistureNow, moistureNowPage } from "./moisture/moisture-now";
import { ovenMean, ovenMeanPage } from "./moisture/oven-mean";
import { ovenMoisture, ovenMoisturePage } from "./moisture/oven-moisture";
import { restateContent, restateContentPage } from "./moisture/restate-content";
import { water, waterPage } from "./moisture/water";
import { wetBasis, wetBasisPage } from "./moisture/wet-basis";
import { packCheck, packCheckPage } from "./packing/pack-check";
import { packPlan, packPlanPage } from "./packing/pack-plan";
import { finishedForecast, finishedForecastPage } from "./season/finished-forecast";
import { lotFlag, lotFlagPage } from "./season/lot-flag";
import { lotFlags, lotFlagsPage } from "./season/lot-flags";
import { seasonTable, seasonTablePage } from "./season/season-table";
import { dryingSteps, dryingStepsPage } from "./targets/drying-steps";
import { firingMoisture, firingMoisturePage } from "./targets/firing-moisture";
import { firingTarget, firingTargetPage } from "./targets/firing-target";
import { lossMeanings, lossMeaningsPage } from "./targets/loss-meanings";
import { targetWeight, targetWeightPage } from "./targets/target-weight";
import { waterToRemove, waterToRemovePage } from "./targets/water-to-remove";
import { dayPlan, dayPlanPage } from "./time/day-plan";
import { dryingTime, dryingTimePage } from "./time/drying-time";
import { turnTimes, turnTimesPage } from "./time/turn-times";
import { sampleMean, sampleMeanPage } from "./uncertainty/sample-mean";
import { scaleError, scaleErrorPage } from "./uncertainty/scale-error";
import { uncertaintyOf, uncertaintyPage } from "./uncertainty/uncertainty";
import { convertArea, convertAreaPage } from "./units/convert-area";
import { convertWeight, convertWeightPage } from "./units/convert-weight";
import { budCount, budCountPage } from "./yields/bud-count";
import { dryRecovery, dryRecoveryPage } from "./yields/dry-recovery";
import { finishedBand, finishedBandPage } from "./yields/finished-band";
import { finishedCheck, finishedCheckPage } from "./yields/finished-check";
import { finishedWeight, finishedWeightPage } from "./yields/finished-weight";
import { freshNeeded, freshNeededPage } from "./yields/fresh-needed";
import { leafCost, leafCostPage } from "./yields/leaf-cost";
import { leafRatio, leafRatioPage } from "./yields/leaf-ratio";
import { outturn, outturnPage } from "./yields/outturn";

const uncertainty = uncertaintyOf(() => catalogue.map(({ spec }) => spec));

const entries = [
  entry(dryBasis, dryBasisPage),
  entry(wetBasis, wetBasisPage),
  entry(ovenMoisture, ovenMoisturePage),
  entry(ovenMean, ovenMeanPage),
  entry(moistureNow, moistureNowPage),
  entry(freshMoisture, freshMoisturePage),
  entry(blendMoisture, blendMoisturePage),
  entry(dryMatter, dryMatterPage),
  entry(water, waterPage),
  entry(restateContent, restateContentPage),
  entry(targetWeight, targetWeightPage),
  entry(firingTarget, firingTargetPage),
  entry(firingMoisture, firingMoisturePage),
  entry(lossMeanings, lossMeaningsPage),
  entry(waterToRemove, waterToRemovePage),
  entry(dryingSteps, dryingStepsPage),
  entry(chargeCount, chargeCountPage),
  entry(chargeSplit, chargeSplitPage),
  entry(chargePlan, chargePlanPage),
  entry(splitWeight, splitWeightPage),
  entry(outturn, outturnPage),
  entry(leafRatio, leafRatioPage),
  entry(dryRecovery, dryRecoveryPage),
  entry(finishedWeight, finishedWeightPage),
  entry(freshNeeded, freshNeededPage),
  entry(finishedBand, finishedBandPage),
  entry(finishedCheck, finishedCheckPage),
  entry(leafCost, leafCostPage),
  entry(budCount, budCountPage),
  entry(packPlan, packPlanPage),
  entry(packCheck, packCheckPage),
  entry(stageBalance, stageBalancePage),
  entry(balanceFit, balanceFitPage),
  entry(stockBalance, stockBalancePage),
  entry(seasonTable, seasonTablePage),
  entry(finishedForecast, finishedForecastPage),
  entry(lotFlag, lotFlagPage),
  entry(lotFlags, lotFlagsPage),
  entry(scaleError, scaleErrorPage),
  // Marked as pure, so that the minifier may drop it from the functions script like every other page.
  entry(uncertainty, /* @__PURE__ */ uncertaintyPage(uncertainty)),
  entry(sampleMean, sampleMeanPage),
  entry(convertWeight, convertWeightPage),
  entry(convertArea, convertAreaPage),
  entry(turnTimes, turnTimesPage),
  entry(dayPlan, dayPlanPage),
  entry(dryingTime, dryingTimePage),
];

export const catalogue: readonly Entry[] = entries;

/** A line of the catalogue with its texts to the letter, for languages that have to have a twin of each. */
export type CatalogueEntry = (typeof entries)[number];
