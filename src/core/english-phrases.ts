/** What functions say in their answers, in English, as cells show it. */
import { englishRefusal } from "./english-refusals";
import type { Saying } from "./phrases";
import { quoted, shown } from "./shown";

export function englishPhrase(saying: Saying): string {
  if (typeof saying === "string") return saying;
  switch (saying.kind) {
    case "step":
      return `step ${saying.number}`;
    case "grows":
      return `dry matter grows by ${shown(saying.by)}`;
    case "cannot tell": {
      const names = saying.stages.map(quoted);
      const last = names.pop();
      return `does not balance: cannot tell which of ${names.join(", ")} and ${last} is wrong`;
    }
    case "suspect": {
      const { stage, weight, moisture } = saying;
      const remedies = [
        ...(weight === undefined ? [] : [`weight ${shown(weight)} would fit if its moisture is right`]),
        ...(moisture === undefined ? [] : [`moisture ${shown(moisture)} if its weight is right`]),
      ];
      return `does not balance: suspect ${quoted(stage)}${remedies.length === 0 ? "" : `; ${remedies.join(", ")}`}`;
    }
    case "left out":
      return `rows left out: ${saying.rows}, the first because ${englishRefusal(saying.first)}`;
  }
}
