import { mostReadings, rounding, sampleMean } from "../../core/uncertainty/sample-mean";
import { arithmetic } from "../arithmetic";
import { literal } from "../words";

const isEnough = (readings: string): string =>
  `_TEA_MARGIN(scatter,confidence,${readings})<=halfWidth*SQRT(${readings})*(1+${literal(rounding)})`;

/** Halved as often as it takes: the place between what is too few and what is enough. */
const halvings = Math.ceil(Math.log2(mostReadings));
const search = `INDEX(REDUCE({2,${mostReadings}},SEQUENCE(${halvings}),LAMBDA(found,turn,LET(few,INDEX(found,1,1),enough,INDEX(found,1,2),middle,INT((few+enough)/2),IF(enough-few<=1,found,IF(${isEnough("middle")},HSTACK(few,middle),HSTACK(middle,enough)))))),1,2)`;

const needed = `IF(halfWidth="","",IF(${isEnough("2")},2,IF(${isEnough(String(mostReadings))},${search},#N/A)))`;

export const sampleMeanArithmetic = arithmetic(
  sampleMean,
  `LET(readings,_TEA_ROWS(repeats),mean,_TEA_MEAN(repeats),IF(readings<2,CHOOSE(column,mean,"","","","",readings,""),LET(scatter,_TEA_SCATTER(repeats),error,scatter/SQRT(readings),margin,_TEA_MARGIN(error,confidence,readings),CHOOSE(column,mean,mean-margin,mean+margin,error,scatter,readings,${needed}))))`,
);
