import { leafRatio } from "../../core/yields/leaf-ratio";
import { arithmetic } from "../arithmetic";

export const leafRatioArithmetic = arithmetic(
  leafRatio,
  "IF(finishedWeight>freshWeight,#VALUE!,freshWeight/finishedWeight)",
);
