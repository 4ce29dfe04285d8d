import { lossMeanings, meanings } from "../../core/targets/loss-meanings";
import { arithmetic } from "../arithmetic";
import { rowOf } from "../words";

export const lossMeaningsArithmetic = arithmetic(
  lossMeanings,
  `MAKEARRAY(${meanings.length},5,LAMBDA(place,across,LET(meaning,INDEX(${rowOf(meanings)},1,place),reading,_TEA_FIRINGTARGET(weight,moisture,loss,meaning),after,_TEA_FIRINGMOISTURE(moisture,loss,meaning),CHOOSE(across,meaning,reading,weight-reading,after,after*reading/_TEA_DRYMATTER(weight,moisture)))))`,
);
