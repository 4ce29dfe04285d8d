import { convertWeight, milligramsIn } from "../../core/units/convert-weight";
import { arithmetic } from "../arithmetic";
import { converted } from "../shared-arithmetic";

export const convertWeightArithmetic = arithmetic(convertWeight, converted(milligramsIn));
