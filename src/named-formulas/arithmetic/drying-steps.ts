import { Phrase } from "../../core/phrases";
import { dryingSteps } from "../../core/targets/drying-steps";
import { arithmetic } from "../arithmetic";
import { literal, said } from "../words";

/** What stands before the number of a step. */
const stepWord = literal(new Phrase({ kind: "step", number: 1 }).toString().slice(0, -1));

const name = `IF(place=1,${said("start")},LET(given,INDEX(names,place-1,1),IF(given="",${stepWord}&(place-1),given)))`;

const rows = `MAKEARRAY(_TEA_ROWS(targets)+1,7,LAMBDA(place,across,LET(scale,INDEX(weights,place,1),water,INDEX(path,place,1),CHOOSE(across,${name},scale,water,scale*water/dry,INDEX(weights,MAX(1,place-1),1)-scale,weight-scale,scale/weight))))`;

export const dryingStepsArithmetic = arithmetic(
  dryingSteps,
  `LET(path,_TEA_PATH(moisture,targets,targetKinds),IF(ISERROR(SUM(path)),#VALUE!,LET(dry,_TEA_DRYMATTER(weight,moisture),weights,MAKEARRAY(_TEA_ROWS(targets)+1,1,LAMBDA(place,across,IF(place=1,weight,REDUCE(weight,SEQUENCE(place-1),LAMBDA(before,step,before*INDEX(path,step+1,2)))))),${rows})))`,
);
