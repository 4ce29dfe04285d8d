import { firingMoisture } from "../../core/targets/firing-moisture";
import { arithmetic } from "../arithmetic";

export const firingMoistureArithmetic = arithmetic(
  firingMoisture,
  "IF(_TEA_IMPOSSIBLE(moisture,loss,lossOf),#VALUE!,_TEA_MOISTURELEFT(moisture,loss,lossOf))",
);
