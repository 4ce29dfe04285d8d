import { balanceFitStudy } from "./studies/balance-fit";
import { budCountStudy } from "./studies/bud-count";
import { dryingTimeStudy } from "./studies/drying-time";
import { finishedCheckStudy } from "./studies/finished-check";
import { finishedForecastStudy } from "./studies/finished-forecast";
import { lotFlagsStudy } from "./studies/lot-flags";
import { ovenMeanStudy } from "./studies/oven-mean";
import { packCheckStudy } from "./studies/pack-check";
import { packPlanStudy } from "./studies/pack-plan";
import { sampleMeanStudy } from "./studies/sample-mean";
import { scaleErrorStudy } from "./studies/scale-error";
import { uncertaintyStudy } from "./studies/uncertainty";
import type { Study } from "./study";

/** Every study by its file in studies/, in the order of the page. */
export const studies: Readonly<Record<string, Study>> = {
  "finished-check": finishedCheckStudy,
  "balance-fit": balanceFitStudy,
  "oven-mean": ovenMeanStudy,
  "finished-forecast": finishedForecastStudy,
  "lot-flags": lotFlagsStudy,
  "scale-error": scaleErrorStudy,
  uncertainty: uncertaintyStudy,
  "sample-mean": sampleMeanStudy,
  "pack-plan": packPlanStudy,
  "pack-check": packCheckStudy,
  "bud-count": budCountStudy,
  "drying-time": dryingTimeStudy,
};
