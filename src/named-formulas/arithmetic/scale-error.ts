import { averagedOut, scaleError } from "../../core/uncertainty/scale-error";
import { arithmetic } from "../arithmetic";

const roundingLeft = `readability^2/12*MAX(0,1-${averagedOut}*(repeatability/readability)^2)^2`;

export const scaleErrorArithmetic = arithmetic(
  scaleError,
  `SQRT(IF(tared,2,1)*(${roundingLeft}+repeatability^2/readings)+accuracy^2/3)`,
);
