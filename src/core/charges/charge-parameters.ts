import { optional, setting } from "../define";
import { weight } from "../quantities";

/** What every function about charges is told of the pan and the scale, and how its page explains it. */
export const panLoad = setting("panLoad", weight);
export const maxLoad = optional("maxLoad", weight);
export const readability = optional("readability", weight);

export const panAndScale = {
  panLoad: "weight wanted for one charge",
  maxLoad: "weight that no charge may pass; without it there is no such limit",
  readability: "smallest step the scale shows; without it charges are equal parts and nothing is rounded",
} as const;
