import { restateContent } from "../../core/moisture/restate-content";
import { arithmetic } from "../arithmetic";

export const restateContentArithmetic = arithmetic(restateContent, "(content*(1-toMoisture))/(1-fromMoisture)");
