import type {
  CommandWords,
  FixedWhyNotCounted,
  SeasonCommandWords,
  SeasonCounts,
  Taken,
  TakenHeading,
  Weighed,
  WhyNotCounted,
} from "../commands";
import { chineseFileRefusal } from "./file-refusals";
import { chineseFew } from "./file-remarks";
import { chinesePaneWords } from "./pane-words";

const number = (value: number): string => value.toLocaleString("zh");

const fixedWhys: Readonly<Record<FixedWhyNotCounted, string>> = {
  "far apart": "单元格相隔太远",
  hidden: "工作表是隐藏的",
  "own season": "是这个命令写的全季",
  "no headings": "里面没有找到鲜叶重量和成茶重量的标题",
  "no unit": "标题没有写重量单位：请写上，或用 --unnamed g（或 kg 等）指明",
};

const weights: Readonly<Record<Weighed, string>> = { fresh: "鲜叶重量", finished: "成茶重量" };

function why(of: WhyNotCounted): string {
  if (typeof of === "string") return fixedWhys[of];
  switch (of.kind) {
    case "same file":
      return `与 ${of.as} 是同一个文件`;
    case "refused":
      return chineseFileRefusal(of.why);
    case "not read":
      return `无法读取：${of.problem}`;
    case "rows of others":
      return `有 ${number(of.rows)} 行由别的单元格算出，那些已经计入`;
    case "more tea than leaf":
      return `茶比鲜叶还重：${of.fresh} 鲜叶出了 ${of.finished} 成茶`;
    case "no weight":
      return `没有${weights[of.which]}`;
    case "error":
      return `${weights[of.which]}是错误 ${of.code}`;
    case "text":
      return `${weights[of.which]}是文本“${of.text}”：请输入数字`;
    case "not above 0":
      return `${weights[of.which]}是 ${of.value}：必须大于 0`;
  }
}

const takens: Readonly<Record<Taken, string>> = {
  lot: "批号",
  date: "日期",
  plot: "地块",
  fresh: "鲜叶",
  finished: "成茶",
};

function takenFrom({ as, heading, unit, instead }: TakenHeading): string {
  const among = instead
    ? `；也可能是${instead.map((each) => `“${each}”`).join("、")}：请用 --columns ${as}=… 指明`
    : "";
  return `${takens[as]}取自“${heading}”${unit === undefined ? "" : `（${unit}）`}${among}`;
}

const summary = ({ lots, books, files, open, unit }: SeasonCounts): string =>
  [
    `${number(books)} 个工作簿的 ${number(lots)} 批（读了 ${number(files)} 个文件）`,
    unit === undefined ? "重量照原样，因为没有标题写出单位" : `单位 ${unit}${unit === "jin" ? "（每斤 500 g）" : ""}`,
    open === 0 ? "全部完成" : `${number(open)} 批未完成`,
  ].join("，");

const season: SeasonCommandWords = {
  why,
  readSoFar: (read, files) => `已读 ${read} 个文件，共 ${files} 个`,
  unknownHeading: (heading, as, alike) =>
    `没有工作簿有标题“${heading}”（--columns ${as}）${alike.first.length > 0 ? `；有的是 ${chineseFew(alike)}` : ""}`,
  tooMany: (lots) => `${number(lots)} 批，一张工作表放不下：请少取一些工作簿`,
  nothingWritten: "没有写任何文件：--out season.xlsx 写出带公式的工作簿，--csv season.csv 写出各批。",
  written: (file, lots) => (lots === undefined ? `已写入 ${file}` : `已写入 ${file}，共 ${number(lots)} 批`),
  notWritten: (problem) => `无法写入：${problem}`,
  noLots: (files) =>
    `在 ${number(files)} 个文件里没有找到任何一批。若工作簿里有，请指明标题：--columns "fresh=鲜叶（公斤）, finished=成茶（公斤）"`,
  summary,
  taken: "取自这些标题",
  notCounted: "未计入",
  countedTwice: "重复计入？",
  alike: (file, lots, as) => `${file}：有 ${number(lots)} 批与 ${as} 相同`,
  takenFrom: (files, headings) => `${chineseFew(files)}：${headings.map(takenFrom).join("，")}`,
  places: (where, named, because) => {
    const places = [
      ...(where ? [where.file, where.sheet] : []),
      ...(named.first.length > 0 ? [chineseFew(named)] : []),
    ];
    return `${places.join("，")}：${because}`;
  },
  more: (lines) => `还有 ${number(lines)} 行：--out 和 --json 给出全部`,
  noPlot: "未写地块",
  table: {
    heading: (name) => chinesePaneWords.columns[name] ?? name,
    total: chinesePaneWords.phrase("total"),
  },
  workbook: {
    title: "多个工作簿的一季",
    sheets: { byPlot: "按地块", byBook: "按工作簿", lots: "批次", leftOut: "未计入", headings: "标题" },
    byPlots: "按地块汇总全季（total 一行是合计）",
    byBooks: "按工作簿汇总全季（total 一行是合计）",
    remark: (unit) =>
      `重量${unit === undefined ? "用各工作簿的单位" : `单位 ${unit}`}。全都来自工作表“批次”，那里的重量一变，这里随之而变。`,
    columns: { ...takens, file: "文件", sheet: "工作表", row: "行", outturn: "制成率" },
    weight: (which, unit) => `${takens[which]}（${unit}）`,
    closing: "各批到这里为止：要加行，请插在这一行上面。",
    leftOut: { cell: "单元格", why: "为什么未计入" },
    headings: { as: "取作", heading: "工作簿里的标题", unit: "单位", instead: "也可能是" },
    listed: (headings) => headings.join("；"),
    footer: "&R&A，第 &P 页，共 &N 页",
  },
};

export const chineseCommands: CommandWords = {
  refused: chineseFileRefusal,
  check: {
    notLookedThrough: (file, because) => `${file}：没有查看。${because}`,
    passedOver: (sheet) => `${sheet}：没有查看，单元格相隔太远`,
    found: (file, cells, things) =>
      `${file}：${number(cells)} 个单元格，${things === 0 ? "没有突出之处" : `${number(things)} 处突出`}`,
    inAll: (files, things) => `${number(files)} 个文件，${number(things)} 处突出`,
    thing: (place, title, words) => `${place}  ${title}：${words}`,
  },
  season,
};
