import { convertArea, fifteenthsOfSquareMetreIn } from "../../core/units/convert-area";
import { arithmetic } from "../arithmetic";
import { converted } from "../shared-arithmetic";

export const convertAreaArithmetic = arithmetic(convertArea, converted(fifteenthsOfSquareMetreIn));
