import { outturn } from "../../core/yields/outturn";
import { arithmetic } from "../arithmetic";

export const outturnArithmetic = arithmetic(
  outturn,
  "IF(finishedWeight>freshWeight,#VALUE!,finishedWeight/freshWeight)",
);
