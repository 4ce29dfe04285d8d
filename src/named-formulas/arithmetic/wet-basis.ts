import { wetBasis } from "../../core/moisture/wet-basis";
import { arithmetic } from "../arithmetic";

export const wetBasisArithmetic = arithmetic(wetBasis, "dryBasis/(1+dryBasis)");
