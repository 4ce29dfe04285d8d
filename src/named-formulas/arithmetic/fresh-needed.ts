import { freshNeeded } from "../../core/yields/fresh-needed";
import { arithmetic } from "../arithmetic";

export const freshNeededArithmetic = arithmetic(
  freshNeeded,
  "finishedWeight/_TEA_FINISHEDWEIGHT(1,freshMoisture,finishedMoisture,dryLoss)",
);
