import type { Entry } from "../core/entry";
import type { ReadArea } from "../host/workbook-host";
import type { Area } from "../workbook/workbook";
import { type Finding, type Rule, rules } from "./finding";
import { type KnownSheet, knownSheet } from "./known-sheet";
import { dryBasisLarge } from "./rules/dry-basis-large";
import { dryMatterGone } from "./rules/dry-matter-gone";
import { dryMatterGrows } from "./rules/dry-matter-grows";
import { finishedAboveFresh } from "./rules/finished-above-fresh";
import { formulaAstray } from "./rules/formula-astray";
import { lossOrder } from "./rules/loss-order";
import { lotGetsHeavier } from "./rules/lot-gets-heavier";
import { mixedBasis } from "./rules/mixed-basis";
import { mixedWeights } from "./rules/mixed-weights";
import { moistureAsNumber } from "./rules/moisture-as-number";
import { moistureTenfold } from "./rules/moisture-tenfold";
import { offTheScale } from "./rules/off-the-scale";
import { outturnFar } from "./rules/outturn-far";
import { overwrittenFormula } from "./rules/overwritten-formula";
import { spanAsNumber } from "./rules/span-as-number";
import { teaError } from "./rules/tea-error";
import { textNumber } from "./rules/text-number";
import { waitsForWeight } from "./rules/waits-for-weight";
import { spillsOn } from "./spills";

const look: Readonly<Record<Rule, (sheet: KnownSheet) => Finding[]>> = {
  "a TEA function with an error": teaError,
  "text that looks like a number": textNumber,
  "moisture typed as a number of percent": moistureAsNumber,
  "wet and dry basis mixed": mixedBasis,
  "a moisture ten times off": moistureTenfold,
  "a dry basis above 500 %": dryBasisLarge,
  "a time typed as a number": spanAsNumber,
  "kilograms among grams": mixedWeights,
  "heavier after than before": lotGetsHeavier,
  "usual loss outside its limits": lossOrder,
  "a formula that reads another row": formulaAstray,
  "finished above fresh": finishedAboveFresh,
  "more dry matter out than in": dryMatterGrows,
  "most of the dry matter gone": dryMatterGone,
  "outturn far from the others": outturnFar,
  "not a step of the scale": offTheScale,
  "a number among formulas": overwrittenFormula,
  "waits for a weight": waitsForWeight,
};

/** Everything on a sheet that deserves another look, by rules and then by rows. Changes nothing. Spills are those of the host where it says. */
export function findingsOf(
  area: ReadArea,
  catalogue: readonly Entry[],
  spills: readonly Area[] = spillsOn(area, catalogue),
): Finding[] {
  const sheet = knownSheet(area, catalogue, spills);
  return rules.flatMap((rule) =>
    look[rule](sheet).sort((one, other) => one.row - other.row || one.column - other.column),
  );
}
