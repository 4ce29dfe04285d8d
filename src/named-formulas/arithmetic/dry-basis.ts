import { dryBasis } from "../../core/moisture/dry-basis";
import { arithmetic } from "../arithmetic";

export const dryBasisArithmetic = arithmetic(dryBasis, "moisture/(1-moisture)");
