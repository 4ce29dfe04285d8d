import { chargeSplit } from "../../core/charges/charge-split";
import { arithmetic } from "../arithmetic";

const inSteps =
  "LET(steps,_TEA_STEPS(weight,readability),heavier,MOD(steps,charges),each,(steps-heavier)/charges,MAKEARRAY(charges,1,LAMBDA(place,across,_TEA_WEIGHTOFSTEPS(IF(place<=heavier,each+1,each),readability))))";

export const chargeSplitArithmetic = arithmetic(
  chargeSplit,
  `LET(charges,_TEA_CHARGECOUNT(weight,panLoad,maxLoad,readability),IF(ISERROR(charges),charges,IF(readability="",MAKEARRAY(charges,1,LAMBDA(place,across,weight/charges)),${inSteps})))`,
);
