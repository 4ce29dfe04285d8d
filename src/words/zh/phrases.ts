/** What functions say in their answers, in Chinese: the pane shows it beside what cells say in English. */
import type { FixedSaying, Saying } from "../../core/phrases";
import { quoted, shown } from "../../core/shown";
import { chineseRefusal } from "./refusals";

const fixed: Readonly<Record<FixedSaying, string>> = {
  start: "起始",
  total: "合计",
  result: "结果",
  water: "水",
  weight: "重量",
  points: "百分点",
  agrees: "相符",
  "more dry matter out than came in": "出来的干物质比进来的多",
  "less lost than expected": "损耗比预期少",
  "more lost than expected": "损耗比预期多",
  "more in than out": "进多于出",
  "more out than in": "出多于进",
  "not judged: no errors given": "未作判断：没有给出误差",
  opening: "期初",
  in: "入",
  out: "出",
  closing: "期末",
  "left over": "余下",
  "a package short by more than twice the tolerance": "有一件短缺超过允差的两倍",
  "mean below the limit": "平均值低于限值",
  "too many short by more than the tolerance": "短缺超过允差的件数太多",
  overruns: "超时",
  "nothing to balance yet": "还没有可平衡的数据",
  "does not balance: no single row stands out": "不平衡：没有哪一行特别突出",
  "no moisture: the balance starts at the first row with one": "没有含水率：从第一个有含水率的行开始平衡",
  "no moisture: the next row with one covers this stage": "没有含水率：由下一个有含水率的行一并计算",
  "no moisture: the balance ends at the last row with one": "没有含水率：平衡到最后一个有含水率的行为止",
};

export function chinesePhrase(saying: Saying): string {
  if (typeof saying === "string") return fixed[saying];
  switch (saying.kind) {
    case "step":
      return `第 ${saying.number} 步`;
    case "grows":
      return `干物质增加了 ${shown(saying.by)}`;
    case "cannot tell":
      return `不平衡：无法判断以下各行中哪一行有误：${saying.stages.map(quoted).join("、")}`;
    case "suspect": {
      const { stage, weight, moisture } = saying;
      const remedies = [
        ...(weight === undefined ? [] : [`若含水率无误，重量应为 ${shown(weight)}`]),
        ...(moisture === undefined ? [] : [`若重量无误，含水率应为 ${shown(moisture)}`]),
      ];
      return [`不平衡：可疑的是 ${quoted(stage)}`, ...remedies].join("；");
    }
    case "left out":
      return `未计入的行：${saying.rows}；第一行的原因：${chineseRefusal(saying.first)}`;
  }
}
