/** Refusals in Chinese, beside what cells say in English: `weightNow 必须不小于 85.2（干物质）；得到的是 80`. */
import type { Named } from "../../core/english-refusals";
import type {
  Being,
  Doing,
  Finding,
  FixedBeing,
  FixedDoing,
  Hint,
  LimitName,
  Place,
  Question,
  Reason,
  Refusal,
  Size,
} from "../../core/refusals";
import { isSheetError } from "../../core/sheet-error";
import { quoted, shortened, shown, shownBound, span } from "../../core/shown";

/** Why a cell holds an error. Arguments by their names, or as `named` calls them. */
export function chineseReason(reason: Reason, named: Named = (argument) => argument): string {
  if (typeof reason === "string") return "数字太大或太小，无法计算";
  return "kind" in reason ? `这个答案无法算出（${reason.problem}）` : chineseRefusal(reason, named);
}

export function chineseRefusal(refusal: Refusal, named: Named = (argument) => argument): string {
  const { argument, must, found, hint, place, question } = refusal;
  const behind = [hint && chineseHint(hint), place && placeText(place), question && questions[question]];
  const brackets = behind.filter((text) => text !== undefined).map((text) => `（${text}）`);
  const demand = "be" in must ? `必须${being(must.be, named)}` : doing(must.do, named);
  return `${apart(named(argument))}${demand}；${finding(found, named)}${brackets.join("")}`.trim();
}

/** What an argument must be, as a function's page says that it accepts. */
export const chineseBeing = (what: Being): string => being(what, (argument) => argument);

/** Latin names stand apart from the characters around them; labels in quotation marks do not. */
const apart = (name: string): string => (name.startsWith("“") ? name : ` ${name} `);

const fixedBeings: Readonly<Record<FixedBeing, string>> = {
  "a weight above 0": "是大于 0 的重量",
  "a weight of 0 or more": "是不小于 0 的重量",
  "an area above 0": "是大于 0 的面积",
  "an amount of 0 or more": "是不小于 0 的金额",
  "a number": "是数字",
  "a number of 0 or more": "是不小于 0 的数字",
  "a number above 0": "是大于 0 的数字",
  "a number above 0, such as 3.5": "是大于 0 的数字，如 3.5",
  "a whole number of 0 or more": "是不小于 0 的整数",
  "a whole number of 1 or more": "是不小于 1 的整数",
  "a standard uncertainty of 0 or more": "是不小于 0 的标准不确定度",
  "a time such as 14:30": "是时刻，如 14:30",
  "a time typed with a colon, or a date with a time (type 14:20)": "是带冒号的时刻，或带时刻的日期（请输入 14:20）",
  "a time span above 0, such as 0:30 for half an hour": "是大于 0 的时长，如半小时写作 0:30",
  "a time of day, such as 12:45": "是一天中的时刻，如 12:45",
  "from 0:01 to 12:00 (for twenty minutes type 0:20)": "在 0:01 到 12:00 之间（二十分钟请输入 0:20）",
  "from 0 to 3 days (for five hours type 5:00)": "在 0 到 3 天之间（五小时请输入 5:00）",
  "a whole number from 1 to 20": "是 1 到 20 的整数",
  text: "是文本",
  "text or a number": "是文本或数字",
  "TRUE or FALSE (1 or 0)": "是 TRUE 或 FALSE（1 或 0）",
  "0 or more": "不小于 0",
  "0 or more (300% or 3)": "不小于 0（如 300% 或 3）",
  "from 0 to 25 (300% or 3)": "在 0 到 25 之间（如 300% 或 3）",
  "from 0 up to, not including, 1 (76% or 0.76)": "不小于 0 且小于 1（如 76% 或 0.76）",
  "from 0 up to, not including, 1 (5% or 0.05)": "不小于 0 且小于 1（如 5% 或 0.05）",
  "from 50% up to, not including, 100%": "不小于 50% 且小于 100%",
  "above 0 and at most 1 (21% or 0.21)": "大于 0 且不大于 1（如 21% 或 0.21）",
  "from 0 to 1 (5% or 0.05)": "在 0 到 1 之间（如 5% 或 0.05）",
  "from 0 to 1 (30% or 0.3)": "在 0 到 1 之间（如 30% 或 0.3）",
  "from 0 to 1 (45% or 0.45)": "在 0 到 1 之间（如 45% 或 0.45）",
  "above 0 and below 1 (95% or 0.95)": "大于 0 且小于 1（如 95% 或 0.95）",
  "from 0 to 0.2 (0.5 points is 0.005)": "在 0 到 0.2 之间（0.5 个百分点是 0.005）",
  "above 0 and at most 0.05 (0.3 points is 0.003)": "大于 0 且不大于 0.05（0.3 个百分点是 0.003）",
  "one cell": "是一个单元格",
  "one cell or one column": "是一个单元格或一列",
  "one row or one column": "是一行或一列",
  "a cell or rows of cells": "是一个单元格或几行单元格",
  "at most 3 days (for five hours type 5:00)": "不超过 3 天（五小时请输入 5:00）",
  "at least one minute, 0:01": "不短于一分钟，即 0:01",
  "blank or 0 in the first row, before which nothing was weighed": "在第一行留空或为 0，因为此前没有称过重",
  "blank or 0 up to the first moisture": "在第一个含水率之前（含该行）留空或为 0",
  "filled where leaf was removed and the moisture is blank": "在取出过茶叶而含水率留空的行填写",
  "filled beside each value (0 for an exact one)": "在每个值旁边填写（准确的值填 0）",
  "filled in beside every area": "在每个面积旁边填写",
  "filled in every row": "每一行都填写",
  "wide enough for a million readings at most": "足够宽，使读数不超过一百万个",
  "500 at most": "不超过 500 个",
  "near enough to be reached within ten times the time so far": "足够近，在已过时间的十倍之内达到",
  "few enough for 500 firings in all": "足够少，总共不超过 500 次炒制",
  "typed while the weights do not slow down": "在重量下降尚未变慢时填写",
  given: "给出",
  "a column for each reading": "每个读数一列",
  "one for each reading": "每个读数一个",
};

function being(what: Being, named: Named): string {
  if (typeof what === "string") return fixedBeings[what];
  switch (what.kind) {
    case "word":
      return `是以下各词之一：${what.words.map((word) => `"${word}"`).join("、")}`;
    case "smooth":
      return `是以下各函数之一：${what.ids.join("、")}。它们由单个的数得出一个连续变化的数`;
    case "error of":
      return `${being(what.being, named)}，这是${apart(named(what.name))}的误差`;
    case "at most moisture":
      return `不大于 ${shown(what.moisture)}（叶的含水率）${what.asLossOf === undefined ? "" : `，因为这是按${losses[what.asLossOf]}计的损失`}`;
    case "limit":
      return `${sides[what.is]} ${shownBound(what.limit, what.is)}（${limits[what.what]}）`;
    case "at most steps":
      return `不大于 ${shown(what.weight)}（十亿个 ${shown(what.readability)} 的分度）`;
    case "whole steps":
      return `是 ${shown(what.readability)} 的整数倍，即秤的整数个分度`;
    case "at least":
      return `不小于 ${shown(what.least)}（${named(what.argument)}）`;
    case "at most":
      return `不大于 ${shown(what.most)}（${named(what.argument)}）`;
    case "above dry matter left":
      return `大于其他各行留给 ${quoted(what.stage)} 的干物质 ${shown(what.weight)}`;
    case "few charges":
      return `足够大，使 ${shown(what.weight)}（重量）最多分成 ${what.most} 锅`;
    case "between breaks":
      return `不长于 ${span(what.seconds)}（两次休息之间的时间）`;
    case "few turns":
      return `足够长，使翻动不超过 ${what.most} 次`;
    case "shorter than":
      return `短于时长 ${span(what.seconds)}，才能在结束前翻动一次`;
    case "few stages":
      return `不超过 ${what.most} 个，即一批茶的各次称重`;
    case "few arguments":
      return `不超过 ${what.most} 个，与 ${what.id} 的参数一样多`;
    case "within times":
      return `以干物质计彼此相差不超过 ${what.times} 倍`;
    case "one for all groups":
      return `是各组共用的一个数，或在旁边给出${apart(named(what.names)).trimEnd()}`;
    case "given with":
      return `与${apart(named(what.argument))}一同给出`;
  }
}

const sides = { "at least": "不小于", "at most": "不大于", above: "大于", below: "小于" } as const;

const limits: Readonly<Record<LimitName, string>> = {
  "the dry matter": "干物质",
  "the weight before the oven": "入烘箱前的重量",
  "the weight of the dish alone": "空盘的重量",
  "what fresh leaf without water would give": "鲜叶一点水都没有时也只能得到这么多",
  "the fresh weight": "鲜叶重量",
  "which holds all the dry matter of the fresh leaf": "这么多就含有鲜叶的全部干物质",
  "the target weight": "目标重量",
  "the first weight": "第一个重量",
  "where these readings come to rest": "这些读数最后停住的重量",
  "as many as were weighed": "称过的包数",
};

const losses = { weight: "重量", points: "百分点" } as const;

const fixedDoings: Readonly<Record<FixedDoing, string>> = {
  "have as many rows as the other list": "必须与另一列表的行数相同",
  "hold at least two readings of the same leaf": "必须至少有同一份叶的两个读数",
  "hold at least two packages of a large lot": "必须至少有两包，才能代表一大批",
  "hold a row that comes in, opening or in": "必须至少有一行收进（期初或入）",
  "hold a row that goes out, out or closing": "必须至少有一行付出（出或期末）",
  "hold at least one number above 0": "必须至少有一个大于 0 的数",
  "hold at least one value": "必须至少有一个值",
  "agree where they are exact": "必须在视为准确的地方相符",
  "come near a balance": "必须接近平衡",
  "stay from 0 up to 1 in the fit": "必须在平差后不小于 0 且小于 1",
  "stay above 0 in the fit": "必须在平差后大于 0",
  "name each group once": "必须每组只写一次",
  rise: "必须逐个递增",
  "not rise": "不得上升",
  "still fall at the end": "到最后必须仍在下降",
  "scatter less for an upper end": "必须更集中，才有上限",
};

function doing(what: Doing, named: Named): string {
  if (typeof what === "string") return fixedDoings[what];
  switch (what.kind) {
    case "few arguments":
      return `必须不超过 ${what.most} 个参数`;
    case "rows as":
      return `必须与${apart(named(what.argument))}的行数相同`;
    case "size of":
      return `必须与${apart(named(what.argument))}大小相同`;
    case "lots":
      return `必须至少有 ${what.least} 个已完成的批次`;
    case "area of":
      return `必须有 ${quoted(String(what.group))} 的面积`;
    case "agree within":
      return `必须彼此相差不超过 ${shown(what.limit)}`;
    case "room to change":
      return `必须使${apart(named(what.argument))}至少可以向一侧变动`;
  }
}

function finding(found: Finding, named: Named): string {
  if (typeof found === "string") return fixedFindings[found];
  switch (found.kind) {
    case "value":
      return value(found.value);
    case "value at":
      return `在 ${quoted(found.stage)} 得到 ${shown(found.value)}`;
    case "time":
      return `得到的是 ${span(found.seconds)}`;
    case "turns":
      return `得到 ${span(found.interval)}，在 ${span(found.duration)} 内要翻动 ${found.turns} 次`;
    case "cells":
      return `得到 ${size(found.size)} 个单元格`;
    case "sizes":
      return `得到 ${size(found.one)} 和 ${size(found.other)} 个单元格`;
    case "lengths":
      return `得到 ${found.one} 和 ${found.other}`;
    case "arguments":
      return `得到 ${found.count} 个，写法是 ${found.signature}`;
    case "unlike": {
      const [one, other] = [found.one, found.other];
      return `得到 ${quoted(one.stage)} 为 ${shown(one.error)}，${quoted(other.stage)} 为 ${shown(other.error)}`;
    }
    case "spread":
      return `相差 ${shown(found.spread)}`;
    case "goes":
      return `第 ${found.place} 个从 ${shown(found.from)} 变为 ${shown(found.to)}`;
    case "areas":
      return `得到 ${found.count} 个没有名称的面积`;
    case "lots": {
      const { leftOut, count } = found;
      const because = leftOut && `（未计入 ${leftOut.rows} 行，第一行的原因：${chineseRefusal(leftOut.first, named)}）`;
      return `得到的是 ${count}${because ?? ""}`;
    }
    case "put at":
      return `平衡使 ${quoted(found.stage)} 为 ${shown(found.value)}`;
    case "misfit":
      return `${quoted(found.stage)} 的 ${shown(found.weight)} 与其余各行不合，${shown(found.fitting)} 才合`;
    case "neither":
      return `${quoted(found.stage)} 两者都没有`;
    case "unbalanced":
      return `${quoted(found.stage)} 与它前面视为准确的一行不平衡`;
    case "open balance":
      return `第 ${found.row} 个平衡无法闭合`;
    case "rounds":
      return `${found.rounds} 轮之内没有找到平差结果`;
    case "blank row":
    case "unnamed row":
      return `第 ${found.row} 行空着`;
    case "blank error":
      return `${apart(named(found.argument)).trimStart()}的误差空着`;
    case "twice":
      return `${quoted(found.name)} 写在第 ${found.rows[0]} 行和第 ${found.rows[1]} 行`;
    case "rise":
      return `第 ${found.step} 步从 ${shown(found.from)} 升到 ${shown(found.to)}；叶又受潮时，请另起一张表`;
  }
}

const fixedFindings: Readonly<Record<Extract<Finding, string>, string>> = {
  "got none": "没有找到",
  "got only 0": "得到的全是 0",
  "got a list of another form": "得到的列表形式不对",
};

function value(found: unknown): string {
  if (found === null || found === undefined || found === "") return "得到的是空白";
  if (typeof found === "string") return `得到的是文本“${shortened(found)}”`;
  const isKnown = typeof found === "number" || typeof found === "boolean" || isSheetError(found);
  return isKnown ? `得到的是 ${shown(found)}` : "得到的是另一种类型的值";
}

/** What may be the matter. */
export function chineseHint(hint: Hint): string {
  if (typeof hint === "string") return fixedHints[hint];
  return `最接近的是 ${hint.weights.map(shown).join(" 和 ")}`;
}

const fixedHints: Readonly<Record<Extract<Hint, string>, string>> = {
  "it looks like a number but is stored as text: type it again as a number":
    "看着像数字，其实存为文本：请重新输入为数字",
  "the cell looks empty but holds a space: clear it": "单元格看着是空的，里面有空格：请清除",
  "for twenty minutes type 0:20": "二十分钟请输入 0:20",
  "past midnight type the date with the time": "过了半夜请输入日期加时刻",
  "0 makes a reading exact": "填 0 表示准确",
  "a catty is 500 g on the mainland of China, 600 g in Taiwan and others elsewhere: type 市斤 for 500 g, 公斤 for 1 kg, or the one you mean in g":
    "中国大陆一斤是 500 g，台湾一斤是 600 g，别处还有别的：500 g 请输入“市斤”，1 kg 请输入“公斤”，否则请把所指的斤以 g 输入",
  "a tael is 50 g on the mainland of China, 37.5 g and others elsewhere: type the one you mean in g":
    "中国大陆一两是 50 g，别处有 37.5 g 等：请把所指的两以 g 输入",
  "a ton may be 1000 kg or an American or British one: type t for 1000 kg":
    "ton 可指 1000 kg，也可指美吨或英吨：1000 kg 请输入 t",
  "it may mean moisture or water: write 含水率 or 水": "它既可指含水率也可指水：请写 含水率 或 水",
};

const questions: Readonly<Record<Question, string>> = {
  "are both in the same unit?": "两者单位是否相同？",
  "are both in the same unit, and not swapped?": "两者单位是否相同，有没有填反？",
  "are all in the same unit?": "各行单位是否相同？",
};

const placeText = ({ in: where, number }: Place): string =>
  where === "step" ? `第 ${number} 步` : `列表第 ${number} 个`;

const size = ({ rows, columns }: Size): string => `${rows} × ${columns}`;
