/** Arithmetic that several functions have in common, as names of a workbook, and formulas that two of them share. */
import { rounding, speck } from "../core/balance/stage-balance";
import { mostSteps, wholeWithin } from "../core/charges/whole-steps";
import { shareTolerance } from "../core/comparison";
import { mostMoisture } from "../core/quantities";
import { coverage } from "../core/yields/finished-limits";
import type { Helpers } from "./helpers";
import { literal, rowOf } from "./words";

/** Fifteen digits cannot say it. */
const allButAllWater = `1-2^${Math.log2(1 - mostMoisture)}`;

/** A number of so many significant digits. */
const toDigits = (digits: number, number: string): string =>
  `IF(${number}=0,0,ROUND(${number},${digits - 1}-INT(LOG10(ABS(${number})))))`;

const nextOnPath =
  'IF(kind="moisture",IF(_TEA_ABOVE(target,before),HSTACK(#VALUE!,#VALUE!),LET(after,MIN(target,before),HSTACK(after,(1-before)/(1-after)))),IF(_TEA_IMPOSSIBLE(before,target,kind),HSTACK(#VALUE!,#VALUE!),HSTACK(_TEA_MOISTURELEFT(before,target,kind),_TEA_SHARELEFT(before,target,kind))))';

export const sharedArithmetic: Helpers = {
  _TEA_ABOVE: `LAMBDA(share,limit,share>limit+${literal(shareTolerance)})`,
  // Whether one is above the other, where either may have been left out.
  _TEA_OVER: 'LAMBDA(part,whole,IF(part="",FALSE,IF(whole="",FALSE,_TEA_ABOVE(part/whole,1))))',
  _TEA_LARGER: "LAMBDA(part,whole,IF(whole=0,TRUE,_TEA_ABOVE(part/whole,1)))",
  _TEA_IMPOSSIBLE: 'LAMBDA(moisture,loss,meant,IF(meant="water",FALSE,_TEA_ABOVE(loss,moisture)))',
  _TEA_SHARELEFT:
    'LAMBDA(moisture,loss,meant,IF(meant="water",1-moisture*loss,LET(taken,MIN(loss,moisture),IF(meant="weight",1-taken,(1-moisture)/(1-moisture+taken)))))',
  _TEA_MOISTURELEFT:
    'LAMBDA(moisture,loss,meant,IF(meant="water",(moisture*(1-loss))/(1-moisture*loss),LET(taken,MIN(loss,moisture),IF(meant="weight",(moisture-taken)/(1-taken),moisture-taken))))',
  // Nearly all water rounds to all water, which is no moisture of leaf.
  _TEA_MOISTUREOFDRY: `LAMBDA(dryShare,MIN(MAX(0,1-dryShare),${allButAllWater}))`,
  _TEA_STEPS: `LAMBDA(weight,readability,LET(steps,weight/readability,whole,ROUND(steps,0),IF(steps>${literal(mostSteps)},#VALUE!,IF((whole>=1)*(ABS(steps-whole)<=${literal(wholeWithin)}),whole,#VALUE!))))`,
  _TEA_STEPSWITHIN: `LAMBDA(load,readability,INT(load/readability+${literal(wholeWithin)}))`,
  _TEA_WEIGHTOFSTEPS: `LAMBDA(steps,readability,LET(raw,steps*readability,${toDigits(15, "raw")}))`,
  // The moisture after each target and the share of the weight that stays, below those of the start.
  _TEA_PATH: `LAMBDA(moisture,targets,kinds,REDUCE(HSTACK(moisture,1),SEQUENCE(_TEA_ROWS(targets)),LAMBDA(path,place,LET(before,INDEX(path,place,1),target,INDEX(targets,place,1),kind,INDEX(kinds,place,1),VSTACK(path,${nextOnPath})))))`,
  // What rounding drops from the sum is kept beside it.
  _TEA_SUM: `LAMBDA(list,SUM(REDUCE(${rowOf([0, 0])},list,LAMBDA(kept,term,LET(before,INDEX(kept,1,1),next,before+term,HSTACK(next,INDEX(kept,1,2)+IF(ABS(before)>=ABS(term),(before-next)+term,(term-next)+before)))))))`,
  _TEA_MEAN: "LAMBDA(list,_TEA_SUM(list)/_TEA_ROWS(list))",
  _TEA_SCATTER:
    "LAMBDA(list,LET(readings,_TEA_ROWS(list),mean,_TEA_MEAN(list),IF(readings<2,0,SQRT(_TEA_SUM(MAP(list,LAMBDA(reading,(reading-mean)^2)))/(readings-1)))))",
  _TEA_MARGIN: "LAMBDA(error,confidence,readings,IF(error=0,0,T.INV.2T(1-confidence,readings-1)*error))",
  _TEA_SPECKLESS: `LAMBDA(difference,whole,IF(ABS(difference)<=${literal(speck)}*whole,0,difference))`,
  _TEA_GROWS: `LAMBDA(unaccounted,start,unaccounted<-${literal(rounding)}*start)`,
  // As words of an answer hold a number.
  _TEA_SHOWN: `LAMBDA(number,${toDigits(10, "number")}&"")`,
};

/** From the size of both units; always by the ratio above 1. `from` and `to` are words of these units. */
export function converted(sizes: Readonly<Record<string, number>>): string {
  const words = rowOf(Object.keys(sizes));
  const size = (unit: string): string => `INDEX(${rowOf(Object.values(sizes))},1,XMATCH(${unit},${words}))`;
  return `LET(given,${size("from")},wanted,${size("to")},IF(given>=wanted,value*(given/wanted),value/(wanted/given)))`;
}

/** Between which finished weights the readings agree: `answer` is a formula of atNoLoss, up and down. */
export function limitsOf(answer: string): string {
  const error = [
    'SQRT((dryShare*weightError)^2+IF(removed=0,0,removedDryShare*weightError)^2+(IF(removedMoisture="",freshWeight-removed,freshWeight)*freshMoistureError)^2)',
    "SQRT((dryMatterError/dryMatter)^2+(finishedMoistureError/(1-finishedMoisture))^2+(weightError/atNoLoss)^2)",
  ];
  const limits = `LET(atNoLoss,dryMatter/(1-finishedMoisture),dryMatterError,${error[0]},relativeError,${error[1]},up,1+${coverage}*relativeError,down,MAX(0,1-${coverage}*relativeError),${answer})`;
  return `IF(IF(highLoss="",FALSE,_TEA_ABOVE(lowLoss,highLoss)),#VALUE!,LET(dryShare,1-freshMoisture,removedDryShare,1-IF(removedMoisture="",freshMoisture,removedMoisture),dryMatter,freshWeight*dryShare-removed*removedDryShare,IF(dryMatter<=0,#VALUE!,${limits})))`;
}
