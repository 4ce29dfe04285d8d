import { finishedBand } from "../../core/yields/finished-band";
import { arithmetic } from "../arithmetic";
import { limitsOf } from "../shared-arithmetic";

export const finishedBandArithmetic = arithmetic(
  finishedBand,
  limitsOf('CHOOSE(column,IF(highLoss="","",atNoLoss*(1-highLoss)*down),atNoLoss,atNoLoss*(1-lowLoss)*up)'),
);
