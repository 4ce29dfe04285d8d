import { chargePlan } from "../../core/charges/charge-plan";
import { arithmetic } from "../arithmetic";
import { said } from "../words";

/** Step by step, as the leaf goes: each reading from the one before. */
const reading = "REDUCE(load,SEQUENCE(across-2),LAMBDA(before,step,before*INDEX(path,step+1,2)))";

const rows = `MAKEARRAY(charges+1,2+_TEA_ROWS(targets),LAMBDA(place,across,LET(load,IF(place>charges,total,INDEX(loads,place,1)),IF(across=1,IF(place>charges,${said("total")},place),IF(across=2,load,${reading})))))`;

export const chargePlanArithmetic = arithmetic(
  chargePlan,
  `LET(loads,_TEA_CHARGESPLIT(weight,panLoad,maxLoad,readability),path,_TEA_PATH(moisture,targets,targetKinds),IF(ISERROR(SUM(loads)),#VALUE!,IF(ISERROR(SUM(path)),#VALUE!,LET(charges,_TEA_ROWS(loads),total,IF(readability="",weight,_TEA_WEIGHTOFSTEPS(_TEA_STEPS(weight,readability),readability)),${rows}))))`,
);
