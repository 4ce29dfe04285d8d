import type { Few, FixedNotShown, NotShown, NotShownInAreas, SavingRemark } from "../../xlsx/remarks";

const onSaving: Readonly<Record<SavingRemark, string>> = {
  signature: "文件有签名：对保存后的内容，签名不再有效。",
  charts: "文件有图表：表格程序打开文件之后，图表才显示新的数。",
  "pivot tables": "文件有数据透视表：在表格程序中刷新之前，它们仍是旧的数。",
};

export const chineseSavingRemark = (remark: SavingRemark): string => onSaving[remark];

const fixed: Readonly<Record<FixedNotShown, string>> = {
  macros: "宏",
  "chart sheets": "图表工作表",
  "dialog sheets": "对话框工作表",
  "looks of single words": "单元格中个别字词的不同外观",
  pictures: "图片",
  shapes: "形状",
  "other charts": "其他种类的图表",
  "pivot tables": "数据透视表",
  "slicers and timelines": "切片器和日程表",
  "buttons and boxes": "按钮和选项框",
  "objects of other programs": "其他程序的对象",
  "answers to comments": "对批注的回复",
  "links to other workbooks": "指向其他工作簿的链接",
  "connections to other data": "与其他数据的连接",
  "record of changes": "谁改了什么的记录",
  signature: "签名",
  "cards and pictures in cells": "单元格中的卡片和图片",
  "check boxes in cells": "单元格中的复选框",
  "panes of add-ins": "加载项的面板",
  "views of single people": "个人的视图",
  "drawings by pen": "手写的笔迹",
  "properties and labels": "文件的属性和标签",
  "settings of a printer": "打印机的设置",
  "sounds and films": "声音和影片",
  fonts: "字体",
  filters: "筛选",
  "protection of sheets": "工作表的保护",
  "lines inside cells": "单元格中的迷你图",
  scenarios: "方案",
};

const inAreas: Readonly<Record<NotShownInAreas, string>> = {
  "data validation": "数据验证",
  "conditional formats": "条件格式",
  "tables of inputs": "模拟运算表的计算",
};

/** 文件里有、表格中不显示的内容。 */
export function chineseNotShown(what: NotShown): string {
  if (typeof what === "string") return fixed[what];
  switch (what.kind) {
    case "part":
      return `部分 ${what.path}`;
    case "parts of a type":
      return `${what.type} 类的部分`;
    case "names":
      return `名称 ${chineseFew(what.found)}`;
    case "names worked out":
      return `名称 ${chineseFew(what.found)} 的计算`;
    case "lost table columns":
      return `用到不存在的表格列的公式的计算，在 ${chineseFew(what.found)}`;
    default:
      return `${inAreas[what.kind]}（${chineseFew(what.found)}）`;
  }
}

/** “A1、B2 等 5 个”：总数包括列出的。 */
export const chineseFew = ({ first, more }: Few): string =>
  `${first.join("、")}${more > 0 ? ` 等 ${(first.length + more).toLocaleString("zh")} 个` : ""}`;
