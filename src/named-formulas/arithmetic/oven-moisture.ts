import { ovenMoisture } from "../../core/moisture/oven-moisture";
import { arithmetic } from "../arithmetic";

export const ovenMoistureArithmetic = arithmetic(
  ovenMoisture,
  "IF(weightAfter>weightBefore,#VALUE!,IF(weightAfter<=dishWeight,#VALUE!,(weightBefore-weightAfter)/(weightBefore-dishWeight)))",
);
