import { moistureNow } from "../../core/moisture/moisture-now";
import { arithmetic } from "../arithmetic";

export const moistureNowArithmetic = arithmetic(
  moistureNow,
  "LET(dryShare,_TEA_DRYMATTER(startWeight,startMoisture)*(1-dryLoss)/weightNow,IF(_TEA_ABOVE(dryShare,1),#VALUE!,_TEA_MOISTUREOFDRY(dryShare)))",
);
