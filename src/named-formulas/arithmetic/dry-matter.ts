import { dryMatter } from "../../core/moisture/dry-matter";
import { arithmetic } from "../arithmetic";

export const dryMatterArithmetic = arithmetic(dryMatter, "weight*(1-moisture)");
