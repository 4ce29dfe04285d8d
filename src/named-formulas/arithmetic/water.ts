import { water } from "../../core/moisture/water";
import { arithmetic } from "../arithmetic";

export const waterArithmetic = arithmetic(water, "weight*moisture");
