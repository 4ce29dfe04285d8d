/** THE ordered list of every function. Whatever else knows about functions is derived from it. */
import { entry } from "./entry";
import { dryMatter, dryMatterPage } from "./moisture/dry-matter";
import { targetWeight, targetWeightPage } from "./targets/target-weight";

export const catalogue = [entry(dryMatter, dryMatterPage), entry(targetWeight, targetWeightPage)];
