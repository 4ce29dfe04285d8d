import type { Parameter } from "../core/define";

/** What a cell holds, as far as the rules ask. */
export type Role =
  | "fresh weight"
  | "finished weight"
  | "weight"
  | "aired weight"
  | "fresh moisture"
  | "finished moisture"
  | "moisture"
  | "dry-basis moisture"
  | "outturn"
  | "readability"
  | "usual loss"
  | "least loss"
  | "largest loss"
  | "time span"
  | "stage"
  | "lot";

export const isMoisture = (role: Role | undefined): boolean =>
  role === "fresh moisture" || role === "finished moisture" || role === "moisture";

export const isWeight = (role: Role | undefined): boolean =>
  role === "fresh weight" || role === "aired weight" || role === "finished weight" || role === "weight";

/** What is read from a scale or a meter for each lot, and waited for; what is set once may stay blank. */
export const isReading = (role: Role | undefined): boolean =>
  isWeight(role) || isMoisture(role) || role === "dry-basis moisture";

const words = {
  fresh: /\b(fresh|green leaf|plucked|raw leaf)\b|鲜叶|鲜重|青叶|茶青/i,
  finished: /\b(finished|made tea|dry tea|tea packed|packed tea|final (weight|tea|moisture))\b|成品|成茶|干茶|毛茶/i,
  /** Alone it may be the day of packing. */
  packed: /\bpacked\b/i,
  aired: /\b(after (the )?(airing|withering|spreading)|aired|withered)\b|(摊[放青晾凉]|萎凋)后|萎凋叶/i,
  /** Alone they may be hours, or how far the work is. */
  airedLeaf: /\b(after|leaf)\b|后|叶/i,
  /** Parts of a lot on its way to the pan. */
  partOfLot: /\bsift[- ]?(outs?|ings)\b|\bfor the pan\b|筛[出下]|下锅/i,
  loss: /\b(loss|losses|lost)\b|损[失耗]/i,
  usual: /\busual(ly)?\b|通常|一般|平常/i,
  least: /\b(least|lowest|smallest)\b|最少|最小|最低/i,
  largest: /\b(most|largest|highest|greatest)\b|最多|最大|最高/i,
  moisture: /\b(moistures?|water content)\b|含水|水分/i,
  dryBasis: /\b(dry[ -]basis|d\.?b\.?)(?!\p{L})|干基/iu,
  weight: /\b(weights?|weighed|wt|grams?|g|kg|kilograms?|jin|liang)\b|重|克|公斤|斤|两/i,
  outturn: /\b(outturn|out-turn|yield)\b|出茶率|成茶率|制成率|得率/i,
  readability:
    /\b(readability|scale step|smallest step|step of the scale|(scale )?reads (in steps of|to)|division)\b|分度|最小刻度/i,
  stage: /^\s*(stages?|steps?|firings?|rounds?)\s*$|^\s*(阶段|工序|步骤)\s*$/i,
  lot: /^\s*(lots?|batch|batches|lot (no|number|name)\.?)\s*$|^\s*(批次|批号|批)\s*$/i,
  /** Columns about lots that hold something else than a weight or a moisture. */
  other:
    /\b(date|day|days|time|hours?|price|cost|error|ratio|loss|lost|note|remark|target|who|by|on|share|area|per|forecast|flag|check|scores?|grades?|ratings?|quality|temperature|temp|bags?|baskets?|pickers|device|number|wanted|needed|expected|dry matter)\b|±|\buncertainty\b|不确定|\bno\.|(g|克|斤)\s*[/每]|日期|时间|小时|价|成本|误差|损|备注|目标|比例|面积|标记|评分|得分|等级|温度|袋数|人数|编号|仪|需要|想要|预计|期望|干物/i,
  /** Numbers that are names. */
  name: /^\s*(no|nr|#|code|id|phone|tel)\.?\s*$|\b(lots?|batch|no\.|number|id|code|phone|name)(?!\p{L})|编号|序号|批|号|电话/iu,
};

/** What a heading or a label says of its cells; undefined where it says nothing that is asked. */
export type RoleOf = (heading: string) => Role | undefined;

/** Whether a text speaks of a weight, and not only of leaf or tea. */
export const saysWeight = (text: string): boolean => words.weight.test(text);

/** Whether a column of this heading holds names, be they made of digits. */
export const isOfNames = (heading: string): boolean => words.name.test(heading) || words.lot.test(heading);

/** What the word over a column, or at the left of a cell, says; undefined where it says nothing that a rule asks. */
export function roleOfHeading(heading: string): Role | undefined {
  if (heading.length > 60) return undefined;
  const is = (word: keyof typeof words) => words[word].test(heading);
  if (is("stage")) return "stage";
  if (is("lot")) return "lot";
  if (is("readability")) return "readability";
  if (is("loss")) return roleOfLoss(is);
  if (is("other")) return undefined;
  if (is("dryBasis")) return "dry-basis moisture";
  if (is("moisture")) return is("fresh") ? "fresh moisture" : is("finished") ? "finished moisture" : "moisture";
  if (is("outturn")) return "outturn";
  if (is("aired") && (is("airedLeaf") || is("weight"))) return "aired weight";
  if (is("fresh")) return "fresh weight";
  if (is("finished") || (is("packed") && is("weight"))) return "finished weight";
  return is("weight") || is("partOfLot") ? "weight" : undefined;
}

const roleOfLoss = (is: (word: keyof typeof words) => boolean): Role | undefined => {
  if (is("usual")) return "usual loss";
  if (is("least")) return "least loss";
  return is("largest") ? "largest loss" : undefined;
};

const rolesOfParameters: Readonly<Record<string, Role>> = {
  freshWeight: "fresh weight",
  finishedWeight: "finished weight",
  freshWeights: "fresh weight",
  finishedWeights: "finished weight",
  freshMoisture: "fresh moisture",
  finishedMoisture: "finished moisture",
  readability: "readability",
  dryLoss: "usual loss",
  lowLoss: "least loss",
  highLoss: "largest loss",
};

/** What a function takes in this place. */
export function roleOfParameter({ name, quantity }: Parameter): Role | undefined {
  const role = rolesOfParameters[name];
  if (role !== undefined) return role;
  switch (quantity.kind) {
    case "moisture":
    case "dry-basis moisture":
    case "weight":
      return quantity.kind;
    case "span":
      return "time span";
    default:
      return undefined;
  }
}
