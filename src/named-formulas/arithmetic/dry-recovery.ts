import { dryRecovery } from "../../core/yields/dry-recovery";
import { arithmetic } from "../arithmetic";

export const dryRecoveryArithmetic = arithmetic(
  dryRecovery,
  'LET(wentOn,_TEA_DRYMATTER(freshWeight,freshMoisture)-removed*(1-IF(removedMoisture="",freshMoisture,removedMoisture)),IF(wentOn>0,_TEA_DRYMATTER(finishedWeight,finishedMoisture)/wentOn,#VALUE!))',
);
