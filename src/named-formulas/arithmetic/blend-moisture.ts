import { blendMoisture } from "../../core/moisture/blend-moisture";
import { arithmetic } from "../arithmetic";

export const blendMoistureArithmetic = arithmetic(
  blendMoisture,
  "SUM(MAP(weights,moistures,LAMBDA(weight,moisture,_TEA_WATER(weight,moisture))))/SUM(weights)",
);
