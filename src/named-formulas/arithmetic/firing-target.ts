import { firingTarget } from "../../core/targets/firing-target";
import { arithmetic } from "../arithmetic";

export const firingTargetArithmetic = arithmetic(
  firingTarget,
  "IF(_TEA_IMPOSSIBLE(moisture,loss,lossOf),#VALUE!,weight*_TEA_SHARELEFT(moisture,loss,lossOf))",
);
