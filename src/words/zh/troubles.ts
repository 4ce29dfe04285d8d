import type { FixedTrouble, Trouble } from "../../host/host-problem";

const fixed: Readonly<Record<FixedTrouble, string>> = {
  "no cell selected in the grid": "没有选中单元格：请在表格中选中一个，再试一次。",
  "no cells selected in Excel": "Excel 中没有选中单元格：请选中一个单元格或一块单元格，再试一次。",
  "no workbook open": "没有打开的工作簿。",
  "another workbook in front": "前面是另一个工作簿：请回到这一个，再试一次。",
  "a cell is being typed in": "有单元格正在输入：请在工作表中按 Enter 或 Esc，再试一次。",
  "Excel is busy": "Excel 正忙：请稍后再试。",
  "not worked out yet": "Excel 还没有算完：请稍后再试。",
  "place no longer there": "这个位置已不在工作簿中。",
  "place not in the workbook": "工作簿中没有这个位置。",
  "place or formula not known": "Excel 不认识这个位置，或不接受这个公式。",
  "block does not fit": "从这里写，工作表放不下：请选更靠上或更靠左的单元格。",
  "merged cells": "这里有合并的单元格：请选没有合并单元格的位置。",
  "pivot table": "这里有数据透视表：请选它旁边的位置。",
  "filtered rows": "这里的行经过筛选：请清除筛选，或换一个位置。",
  "too many cells": "单元格太多，Excel 一次给不了：请少选一些。",
  "sheet protected": "工作表受保护：请取消保护，或换一张工作表。",
  "workbook read-only": "工作簿以只读方式打开：请改为可编辑，再试一次。",
  "not allowed by Excel": "Excel 不允许在这里这样做：工作表或工作簿可能受保护。",
  "not allowed by the grid": "表格不允许在这里更改：请换一个位置。",
  "grid draws no charts": "此页面的表格不画图表。",
  "grid saves a copy instead": "这里改为另存一份：菜单中的“保存一份不用加载项的（手机也能用）”。",
  "not in this Excel": "这个 Excel 做不到：需要 Microsoft 365、Excel 2024 或网页版 Excel。",
  "another formula by now": "那里现在已是另一个公式。",
  "formula not taken": "Excel 没有在这里接受新公式。",
};

/** Why the workbook did not do what it was asked. */
export function chineseTrouble(trouble: Trouble): string {
  if (typeof trouble === "string") return fixed[trouble];
  switch (trouble.kind) {
    case "no such place":
      return `此工作簿中没有 ${trouble.address}。`;
    case "no such sheet":
      return `此工作簿中没有工作表“${trouble.sheet}”。`;
    case "sheet gone":
      return `工作表“${trouble.sheet}”已不在此工作簿中。`;
    case "grid cannot work out":
      return `表格无法计算 ${trouble.expression}。`;
    case "only in its own cell":
      return `Excel 只在 ${trouble.expression} 自己的单元格里计算它：请改写单元格的地址。`;
    case "not done":
      return `Excel 未能做到${trouble.code === "" ? "" : `（${trouble.code}）`}。已输入的内容不会丢失，请再试一次。`;
    case "name left":
      return `${chineseTrouble(trouble.after)}隐藏的名称 ${trouble.name} 还留在工作簿中。`;
  }
}
