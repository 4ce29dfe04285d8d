import { leafCost } from "../../core/yields/leaf-cost";
import { arithmetic } from "../arithmetic";

export const leafCostArithmetic = arithmetic(leafCost, "(leafPrice*freshWeight+otherCost)/finishedWeight");
