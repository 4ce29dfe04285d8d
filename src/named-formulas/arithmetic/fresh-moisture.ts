import { freshMoisture } from "../../core/moisture/fresh-moisture";
import { arithmetic } from "../arithmetic";

export const freshMoistureArithmetic = arithmetic(
  freshMoisture,
  "LET(dryShare,_TEA_DRYMATTER(finishedWeight,finishedMoisture)/(freshWeight*(1-dryLoss)),IF(_TEA_ABOVE(dryShare,1),#VALUE!,_TEA_MOISTUREOFDRY(dryShare)))",
);
