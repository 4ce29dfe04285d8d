import { noise, noiseOfStep, splitWeight } from "../../core/charges/split-weight";
import { arithmetic } from "../arithmetic";
import { literal } from "../words";

/** A part gets one of the steps left over when fewer parts than there are such steps stand before it. */
const before =
  "SUM(MAP(remainders,places,LAMBDA(other,seat,IF(ABS(other-own)<=tied,IF(seat<place,1,0),IF(other>own,1,0)))))";

const parts = `LET(shares,MAP(relative,LAMBDA(portion,steps*portion/total)),wholes,MAP(shares,LAMBDA(share,INT(share))),remainders,MAP(shares,LAMBDA(share,share-INT(share))),places,SEQUENCE(_TEA_ROWS(portions)),leftOver,steps-SUM(wholes),tied,MAX(${literal(noiseOfStep)},2^${Math.log2(noise)}*steps),MAP(wholes,remainders,places,LAMBDA(whole,own,place,_TEA_WEIGHTOFSTEPS(IF(${before}<leftOver,whole+1,whole),readability))))`;

export const splitWeightArithmetic = arithmetic(
  splitWeight,
  `LET(steps,_TEA_STEPS(weight,readability),largest,MAX(portions),IF(ISERROR(steps),steps,IF(largest=0,#VALUE!,LET(relative,MAP(portions,LAMBDA(portion,portion/largest)),total,SUM(relative),${parts}))))`,
);
