import { targetWeight } from "../../core/targets/target-weight";
import { arithmetic } from "../arithmetic";

export const targetWeightArithmetic = arithmetic(targetWeight, "_TEA_DRYMATTER(weight,moisture)/(1-targetMoisture)");
