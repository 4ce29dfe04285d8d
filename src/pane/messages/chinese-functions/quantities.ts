import type { Translations } from "./translations";

/** The units of quantities, by what they say in English. */
export const quantities: Translations = {
  "grams, or any weight unit kept through the whole call": "克，或任何一种在整个公式中保持不变的重量单位",
  "share of the whole weight that is water (wet basis)": "水占总重的比例（湿基）",
  "water as a share of the dry matter (dry basis)": "水与干物质之比（干基）",
  "share of one": "占整体的比例",
  "share of one, of what lossOf names": "比例，所占的整体由 lossOf 指明",
  "any, kept the same in the answer": "任意单位，答案的单位与之相同",
  "any currency kept through the whole call": "任何一种在整个公式中保持不变的货币",
  "any area unit kept through the whole call": "任何一种在整个公式中保持不变的面积单位",
  pieces: "个",
  "none: usual distances from the usual": "无：偏离寻常的程度，以常见距离计",
  "one standard uncertainty, in the unit of its weight": "一个标准不确定度，单位与重量相同",
  "one standard uncertainty, as a share (one point is 0.01)": "一个标准不确定度，以比例计（一个百分点是 0.01）",
  "one standard uncertainty, in the unit of its quantity": "一个标准不确定度，单位与该量相同",
  "spreadsheet time (1 is a day)": "电子表格的时间（1 是一天）",
  "spreadsheet time (1 is a day; 5:00 is five hours)": "电子表格的时间（1 是一天；5:00 是五小时）",
  "as the function says": "由函数规定",
  "as the function named says": "由指明的函数规定",
};
