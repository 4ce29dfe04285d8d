import type { WithoutAddInWords } from "../without-add-in";

const listed = (words: readonly string[]): string => words.join("、");

export const chineseWithoutAddIn: WithoutAddInWords = {
  title: "给手机和没有加载项的人",
  question: "把公式放进这个工作簿本身，也可以再取出来",
  intro:
    "手机上的 Excel，或没有此加载项的 Excel，只显示这些函数上次的结果，不会重新计算。放在工作簿里的公式在那里照样能算：Microsoft 365（手机上也行）和 Excel 2024 都可以。",
  look: "查看整个工作簿",
  reading: "正在读取公式……",
  nothing: "此工作簿中没有公式用到加载项的函数。",
  noneHas: (ids) => `此工作簿用到的函数没有这样的公式，仍由加载项计算：${listed(ids)}。`,
  headings: { "to names": "不用加载项", back: "回到加载项" },
  formulas: {
    "to names": (count, sheets) =>
      `${sheets} 张工作表上的 ${count} 个公式将改用工作簿里的公式：TEA.OUTTURN 改为 TEA_OUTTURN，其余类推。`,
    back: (count, sheets) => `${sheets} 张工作表上的 ${count} 个公式将重新使用加载项的函数。`,
  },
  changedNames: (changed) => `您的这些名称也同样更改：${listed(changed)}。`,
  put: (count) => `工作簿中将加入 ${count} 个以 TEA_ 或 _TEA_ 开头的名称。`,
  takenOut: (count) => `随这些公式加入、届时没有单元格和其他名称再用到的 ${count} 个名称将被取出。`,
  without: (ids) => `${ids.length} 个函数没有这样的公式，仍由加载项计算：${listed(ids)}。`,
  locked: (sheet, count) => `工作表“${sheet}”受保护：那里的 ${count} 个公式保持不变。`,
  taken: (taken) => `这些名称在此工作簿中另有所指，或属于另一个版本，不会改动：${listed(taken)}。`,
  blocked: (ids) => `需要这些名称的函数仍由加载项计算：${listed(ids)}。`,
  unseen: "条件格式和数据验证的规则既不读取，也不更改。",
  copy: "更改的是现在打开的工作簿，Excel 未必能全部撤销。请先把文件另存一份。",
  keepNames: "把名称留在工作簿中",
  keepNamesHelp: "条件格式或数据验证的规则用到它们时请选此项。",
  button: {
    "to names": (count) => `更改 ${count} 个公式`,
    back: (count) => (count === 0 ? "取出这些名称" : `改回 ${count} 个公式`),
  },
  leave: "保持原样",
  progress: (sheet, done, all) => `工作表“${sheet}”：已完成 ${all} 个公式中的 ${done} 个……`,
  done: {
    "to names": (count) => `${count} 个公式现在使用工作簿里的公式。请保存工作簿。`,
    back: (count) => `${count} 个公式重新使用加载项的函数。`,
  },
  namesIn: (count) => `加入了 ${count} 个名称。`,
  namesOut: (count) => `取出了 ${count} 个名称。`,
  sameAnswers: "这些单元格显示的都与之前相同。",
  left: "没有更改的",
  leftSheet: (sheet, why) => `工作表“${sheet}”：${why}`,
  others: "与之前不同的结果",
  othersWhy: "把工作簿交给别人之前，请先看看这些单元格。改回的办法在下面。",
  beforeAndNow: (before, now) => `之前：${before}；现在：${now}`,
  blank: "空白",
  more: (count) => `以及另外 ${count} 处`,
  goTo: (place) => `转到 ${place}`,
  brokenOff: "中途停下了：有些公式可能已经更改。请再查看一次工作簿，然后接着做。",
};
