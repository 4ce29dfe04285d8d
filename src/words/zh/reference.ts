import type { FunctionSpec, Parameter } from "../../core/define";
import { shownNumber } from "../../core/describe";
import type { Quantity } from "../../core/quantities";
import type { Messages } from "../messages";
import { quantities } from "./functions/quantities";
import { chineseBeing } from "./refusals";

export const chineseReference: Messages["reference"] = {
  search: "搜索名称、摘要和参数",
  none: "没有函数包含所有这些词。请试一个词，例如“重量”。",
  count: (count) => `${count} 个函数`,
  headings: { arguments: "参数", answer: "答案", use: "用法", examples: "示例", cautions: "注意事项" },
  groups: {
    moisture: "含水率",
    targets: "目标",
    charges: "锅次",
    yields: "产出",
    balance: "平衡",
    season: "茶季",
    uncertainty: "不确定度",
    units: "单位",
    time: "时间",
    packing: "包装",
  },
  limits: (parameter) => {
    const { unit, requirement } = parameter.quantity;
    const unitText = unit === "" ? "" : `单位：${quantities[unit] ?? unit}。`;
    return `${shape(parameter)}必须${chineseBeing(requirement)}。${unitText}留空：${whenBlank(parameter)}。`;
  },
  gives,
  column: (name, format, meaning) => `${name}：${meaning}（${format === "text" ? "文本" : format}）`,
  oneCell: "在工作表的“表格”里，请取其中一个单元格：",
  answerOf: (formula) => `${formula} 的答案`,
};

function shape({ takes, oneForAll, gaps, book }: Parameter): string {
  if (takes === "cell") return "";
  if (book) return "一列或一行，也可以是整列；每项";
  if (oneForAll) return "一列或一行，也可以各项共用一个；每项";
  return gaps ? "一列或一行，可有空缺；每项" : "一列或一行；每项";
}

function whenBlank({ optional, blank, fallback }: Parameter): string {
  if (!optional) return blank === "waits" ? "答案等待" : "拒绝";
  if (fallback === undefined) return "可以";
  if (typeof fallback === "boolean") return `按 ${fallback ? "TRUE" : "FALSE"} 计`;
  return `按 ${typeof fallback === "string" ? `"${fallback}"` : shownNumber(fallback)} 计`;
}

const formatOf = ({ holds, format }: Quantity): string => (holds === "number" ? `数字格式 ${format}` : "文本");

function gives({ result }: FunctionSpec): string {
  switch (result.shape) {
    case "cell":
      return `一个值（${formatOf(result.quantity)}）；参数是区域时，每个单元格各得一个。`;
    case "column":
      return `一列，向下溢出（${formatOf(result.quantity)}）。`;
    case "row":
      return "一行，向右溢出；参数是一列时，每个单元格各得一行。";
    case "table":
      return "一张表，向右、向下溢出。";
  }
}
