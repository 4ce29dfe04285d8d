import { finishedCheck } from "../../core/yields/finished-check";
import { arithmetic } from "../arithmetic";
import { limitsOf } from "../shared-arithmetic";
import { said } from "../words";

const less = `IF(_TEA_ABOVE(atNoLoss*(1-highLoss)*down/finishedWeight,1),${said("more lost than expected")},${said("agrees")})`;

export const finishedCheckArithmetic = arithmetic(
  finishedCheck,
  limitsOf(
    `IF(_TEA_ABOVE(finishedWeight/(atNoLoss*up),1),${said("more dry matter out than came in")},IF(_TEA_LARGER(finishedWeight,atNoLoss*(1-lowLoss)*up),${said("less lost than expected")},IF(highLoss="",${said("agrees")},${less})))`,
  ),
);
