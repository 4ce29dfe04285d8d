import { waterToRemove } from "../../core/targets/water-to-remove";
import { arithmetic } from "../arithmetic";

export const waterToRemoveArithmetic = arithmetic(
  waterToRemove,
  "IF(_TEA_ABOVE(targetMoisture,moisture),#VALUE!,weight*MAX(0,moisture-targetMoisture)/(1-targetMoisture))",
);
