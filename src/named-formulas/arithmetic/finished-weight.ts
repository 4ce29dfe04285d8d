import { finishedWeight } from "../../core/yields/finished-weight";
import { arithmetic } from "../arithmetic";

export const finishedWeightArithmetic = arithmetic(
  finishedWeight,
  "_TEA_TARGETWEIGHT(freshWeight,freshMoisture,finishedMoisture)*(1-dryLoss)",
);
