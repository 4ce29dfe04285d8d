import type { PartsWords } from "../../samples";

export const chineseParts: PartsWords = {
  invented: "鹪鹩坡是虚构的茶园，这里的数字都是虚构的。请改有底色的单元格。",
  footer: "&L鹪鹩坡，虚构&R第 &P 页，共 &N 页",
  proof: {
    title: "验算",
    says: "只从各表输入的内容出发，用普通公式再算一遍同样的答案，不用任何 TEA 函数。",
    what: "内容",
    told: "用 TEA",
    plain: "用普通公式",
    difference: "差别",
    agrees: "相符",
    lookHere: "请看这里",
    largest: "最大差别，大于 1 的按比例计",
    allAgree: "所有答案到九位小数都相符",
    differs: "请看下面有差别的一行",
  },
};
