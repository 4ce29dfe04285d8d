import { type Patterns, rewritten } from "./patterns";

/** What an argument must be. Also what a function's page says that it accepts. */
const requirements: Patterns = [
  [/^a weight above 0$/, "是大于 0 的重量"],
  [/^a weight of 0 or more$/, "是不小于 0 的重量"],
  [/^an area above 0$/, "是大于 0 的面积"],
  [/^an amount of 0 or more$/, "是不小于 0 的金额"],
  [/^a number$/, "是数字"],
  [/^a number of 0 or more$/, "是不小于 0 的数字"],
  [/^a number above 0, such as (\S+)$/, "是大于 0 的数字，如 $1"],
  [/^a whole number of ([01]) or more$/, "是不小于 $1 的整数"],
  [/^a standard uncertainty of 0 or more$/, "是不小于 0 的标准不确定度"],
  [/^a time such as (\S+)$/, "是时刻，如 $1"],
  [/^a time span above 0, such as (\S+) for half an hour$/, "是大于 0 的时长，如半小时写作 $1"],
  [/^text$/, "是文本"],
  [/^text or a number$/, "是文本或数字"],
  [/^TRUE or FALSE \(1 or 0\)$/, "是 TRUE 或 FALSE（1 或 0）"],
  [/^0 or more$/, "不小于 0"],
  [/^0 or more \((.+) or (.+)\)$/, "不小于 0（如 $1 或 $2）"],
  [/^from 0 up to, not including, 1 \((.+) or (.+)\)$/, "不小于 0 且小于 1（如 $1 或 $2）"],
  [/^from 0 to 25 \((.+) or (.+)\)$/, "在 0 到 25 之间（如 $1 或 $2）"],
  [/^from 0 to 1 \((.+) or (.+)\)$/, "在 0 到 1 之间（如 $1 或 $2）"],
  [/^above 0 and below 1 \((.+) or (.+)\)$/, "大于 0 且小于 1（如 $1 或 $2）"],
  [/^above 0 and at most (\S+) \((\S+) points is (\S+)\)$/, "大于 0 且不大于 $1（$2 个百分点是 $3）"],
  [/^from 0 to (\S+) \((\S+) points is (\S+)\)$/, "在 0 到 $1 之间（$2 个百分点是 $3）"],
  [/^from 0 to (\S+) \((\S+) points is (\S+)\) for (\S+)$/, "在 0 到 $1 之间（$2 个百分点是 $3），这是 $4 的误差"],
  [/^one of ((?:"\w+", )*"\w+")$/, "是以下各词之一：$1"],
  [
    /^one of ([A-Z, ]+), whose result is one smooth number of single numbers$/,
    "是以下各函数之一：$1。它们由单个的数得出一个连续变化的数",
  ],
  [/^one cell$/, "是一个单元格"],
  [/^one cell or one column$/, "是一个单元格或一列"],
  [/^one row or one column$/, "是一行或一列"],
  [/^a cell or rows of cells$/, "是一个单元格或几行单元格"],
  [/^one number for all groups, or have areaNames beside them$/, "是各组共用的一个数，或在旁边给出 areaNames"],
  [/^at most (\S+), the moisture of the leaf, as a loss of weight$/, "不大于 $1（叶的含水率），因为这是按重量计的损失"],
  [
    /^at most (\S+), the moisture of the leaf, as a loss of points$/,
    "不大于 $1（叶的含水率），因为这是按百分点计的损失",
  ],
  [/^at most (\S+), the moisture of the leaf$/, "不大于 $1（叶的含水率）"],
  [/^at most (\S+), the weight before the oven$/, "不大于 $1（入烘箱前的重量）"],
  [/^above (\S+), the weight of the dish alone$/, "大于 $1（空盘的重量）"],
  [/^at least (\S+), the dry matter$/, "不小于 $1（干物质）"],
  [/^at most (\S+), what fresh leaf without water would give$/, "不大于 $1（鲜叶一点水都没有时也只能得到这么多）"],
  [/^at most (\S+), a thousand million steps of (\S+)$/, "不大于 $1（十亿个 $2 的分度）"],
  [/^a whole number of steps of (\S+)$/, "是 $1 的整数倍，即秤的整数个分度"],
  [/^at least (\S+), the readability$/, "不小于 $1（秤的最小分度）"],
  [/^at least (\S+), the (panLoad|lowLoss)$/, "不小于 $1（$2）"],
  [/^at most (\S+), the freshWeight$/, "不大于 $1（freshWeight，鲜叶重量）"],
  [/^at most (\S+), the fresh weight$/, "不大于 $1（鲜叶重量）"],
  [/^below (\S+), which holds all the dry matter of the fresh leaf$/, "小于 $1（这么多就含有鲜叶的全部干物质）"],
  [/^above the dry matter that the other rows leave for (".*"), (\S+)$/, "大于其他各行留给 $1 的干物质 $2"],
  [/^large enough to make (\d+) charges at most of (\S+), the weight$/, "足够大，使 $2（重量）最多分成 $1 锅"],
  [/^at most 3 days \(for five hours type 5:00\)$/, "不超过 3 天（五小时请输入 5:00）"],
  [
    /^a time typed with a colon, or a date with a time \(type 14:20\)$/,
    "是带冒号的时刻，或带时刻的日期（请输入 14:20）",
  ],
  [/^at least one minute, 0:01$/, "不短于一分钟，即 0:01"],
  [/^long enough for (\d+) turns at most$/, "足够长，使翻动不超过 $1 次"],
  [/^shorter than the duration, (\S+), for a turn before the end$/, "短于时长 $1，才能在结束前翻动一次"],
  [/^(\d+) at most, those of one lot$/, "不超过 $1 个，即一批茶的各次称重"],
  [/^(\d+) at most, as many as (\w+) takes$/, "不超过 $1 个，与 $2 的参数一样多"],
  [/^blank or 0 in the first row, before which nothing was weighed$/, "在第一行留空或为 0，因为此前没有称过重"],
  [/^blank or 0 up to the first moisture$/, "在第一个含水率之前（含该行）留空或为 0"],
  [/^filled where leaf was removed and the moisture is blank$/, "在取出过茶叶而含水率留空的行填写"],
  [/^filled beside each value \(0 for an exact one\)$/, "在每个值旁边填写（准确的值填 0）"],
  [/^filled in beside every area$/, "在每个面积旁边填写"],
  [/^filled in every row$/, "每一行都填写"],
  [/^within (\d+) times of each other in dry matter$/, "以干物质计彼此相差不超过 $1 倍"],
  [/^given where areaNames are$/, "与 areaNames 一同给出"],
  [/^given$/, "给出"],
];

/** What an argument must do, other than be something. */
const otherVerbs: Patterns = [
  [/^have at most (\d+) arguments$/, "不超过 $1 个参数"],
  [/^have as many rows as (\w+)$/, "与 $1 的行数相同"],
  [/^have the size of (\w+)$/, "与 $1 大小相同"],
  [/^hold at least two readings of the same leaf$/, "至少有同一份叶的两个读数"],
  [/^hold at least one number above 0$/, "至少有一个大于 0 的数"],
  [/^hold at least one value$/, "至少有一个值"],
  [/^hold at least (\d+) finished lots$/, "至少有 $1 个已完成的批次"],
  [/^hold an area of (".*")$/, "有 $1 的面积"],
  [/^agree within (\S+)$/, "彼此相差不超过 $1"],
  [/^agree where they are exact$/, "在视为准确的地方相符"],
  [/^come near a balance$/, "接近平衡"],
  [/^stay from 0 up to 1 in the fit$/, "在平差后不小于 0 且小于 1"],
  [/^stay above 0 in the fit$/, "在平差后大于 0"],
  [/^name each group once$/, "每组只写一次"],
  [/^leave (\w+) room to change, on one side at least$/, "使 $1 至少可以向一侧变动"],
];

/** What there was instead. */
const happenings: Patterns = [
  [/^got a blank$/, "得到的是空白"],
  [/^got none$/, "没有找到"],
  [/^got only 0$/, "得到的全是 0"],
  [/^got a value of another type$/, "得到的是另一种类型的值"],
  [/^got a list of another form$/, "得到的列表形式不对"],
  [/^got the text "(.*)"$/s, "得到的是文本“$1”"],
  [/^got a spread of (\S+)$/, "相差 $1"],
  [/^got (\d+) areas without names$/, "得到 $1 个没有名称的面积"],
  [/^got (\d+ × \d+|\d+) and (\d+ × \d+|\d+) cells$/, "得到 $1 和 $2 个单元格"],
  [/^got (\d+ × \d+) cells$/, "得到 $1 个单元格"],
  [/^got (\d+) and (\d+)$/, "得到 $1 和 $2"],
  [/^got (\d+) in (TEA\.\w+\(.*\))$/, "得到 $1 个，写法是 $2"],
  [/^got (".*") at (\S+) and (".*") at (\S+)$/, "得到 $1 为 $2，$3 为 $4"],
  [/^got (\S+) at (".*")$/, "在 $2 得到 $1"],
  [/^got (\S+), which makes (\d+) in (\S+)$/, "得到 $1，在 $3 内要翻动 $2 次"],
  [/^got (\S+)$/, "得到的是 $1"],
  [/^row (\d+) is (?:blank|not)$/, "第 $1 行空着"],
  [/^the one of (\w+) is blank$/, "$1 的误差空着"],
  [
    /^step (\d+) goes from (\S+) to (\S+), begin a new table for leaf that was wetted$/,
    "第 $1 步从 $2 升到 $3；叶又受潮时，请另起一张表",
  ],
  [/^(".*") stands in rows (\d+) and (\d+)$/, "$1 写在第 $2 行和第 $3 行"],
  [/^(".*") has neither$/, "$1 两者都没有"],
  [/^(".*") and an exact row before it do not balance$/, "$1 与它前面视为准确的一行不平衡"],
  [/^the balance puts (".*") at (\S+)$/, "平衡使 $1 为 $2"],
  [/^no fit was found in (\d+) rounds$/, "$1 轮之内没有找到平差结果"],
];

/** In brackets behind what there was: what may be the matter. */
const hints: Patterns = [
  [
    /^it looks like a number but is stored as text: type it again as a number$/,
    "看着像数字，其实存为文本：请重新输入为数字",
  ],
  [/^the cell looks empty but holds a space: clear it$/, "单元格看着是空的，里面有空格：请清除"],
  [/^are both in the same unit, and not swapped\?$/, "两者单位是否相同，有没有填反？"],
  [/^are both in the same unit\?$/, "两者单位是否相同？"],
  [/^the nearest are (\S+) and (\S+)$/, "最接近的是 $1 和 $2"],
  [/^the nearest is (\S+)$/, "最接近的是 $1"],
  [/^0 makes a reading exact$/, "填 0 表示准确"],
  [/^for twenty minutes type 0:20$/, "二十分钟请输入 0:20"],
  [
    /^a catty is 500 g on the mainland of China, 600 g in Taiwan and others elsewhere: type 市斤 for 500 g, 公斤 for 1 kg, or the one you mean in g$/,
    "中国大陆一斤是 500 g，台湾一斤是 600 g，别处还有别的：500 g 请输入“市斤”，1 kg 请输入“公斤”，否则请把所指的斤以 g 输入",
  ],
  [
    /^a tael is 50 g on the mainland of China, 37.5 g and others elsewhere: type the one you mean in g$/,
    "中国大陆一两是 50 g，别处有 37.5 g 等：请把所指的两以 g 输入",
  ],
  [
    /^a ton may be 1000 kg or an American or British one: type t for 1000 kg$/,
    "ton 可指 1000 kg，也可指美吨或英吨：1000 kg 请输入 t",
  ],
  [/^it may mean moisture or water: write 含水率 or 水$/, "它既可指含水率也可指水：请写 含水率 或 水"],
];

/** What may be the matter, or as it is where it is not known. */
export const chineseHint = (hint: string): string => rewritten(hint, hints) ?? hint;

const wholeMessages: Patterns = [
  [/^the numbers are too large or too small to calculate with$/, "数字太大或太小，无法计算"],
  [/^this answer could not be worked out \((.*)\)$/s, "这个答案无法算出（$1）"],
];

/** What an argument has to be, as a function's page says that it accepts; undefined where it is not known. */
export const chineseRequirement = (requirement: string): string | undefined => rewritten(requirement, requirements);

/**
 * `weightNow must be at least 85.2, the dry matter; got 80` in Chinese. Messages of functions never change with
 * language; this is for reading beside them. Undefined where a message is not known.
 */
export function chineseRefusal(message: string): string | undefined {
  const whole = rewritten(message, wholeMessages);
  if (whole !== undefined) return whole;
  const [, argument, said = ""] = /^(\S+) (must .*)$/s.exec(message) ?? [];
  const translated = chineseDemand(said);
  return translated === undefined ? undefined : `${argument} ${translated}`;
}

/** What a refusal says of its argument. */
export function chineseDemand(said: string): string | undefined {
  if (!said.startsWith(must)) return undefined;
  const rest = said.slice(must.length);
  // A label inside the message may hold the same mark as stands between its parts.
  for (let mark = rest.indexOf("; "); mark !== -1; mark = rest.indexOf("; ", mark + 1)) {
    const asked = demand(rest.slice(0, mark));
    const found = happening(rest.slice(mark + 2));
    if (asked !== undefined && found !== undefined) return `${asked}；${found}`;
  }
  return undefined;
}

const must = "must ";

/** The message in Chinese, or as it is where it is not known. */
export const inChinese = (message: string): string => chineseRefusal(message) ?? message;

function demand(text: string): string | undefined {
  if (text === "not rise") return "不得上升";
  const required = text.startsWith("be ") ? rewritten(text.slice(3), requirements) : rewritten(text, otherVerbs);
  return required === undefined ? undefined : `必须${required}`;
}

const placed: Patterns = [
  [/^.* in place (\d+) of the list$/s, "列表第 $1 个"],
  [/^.* in step (\d+)$/s, "第 $1 步"],
];

/** What there was, with its place and what may be the matter, in whatever order they stand behind it. */
function happening(text: string): string | undefined {
  const [, before, leftOut, because] = /^(.*?) \(rows left out: (\d+), the first because (.*)\)$/s.exec(text) ?? [];
  if (before !== undefined && because !== undefined) {
    return behind(happening(before), `未计入 ${leftOut} 行，第一行的原因：${chineseRefusal(because) ?? because}`);
  }
  const place = rewritten(text, placed);
  if (place !== undefined) return behind(happening(text.replace(/ in (?:place \d+ of the list|step \d+)$/, "")), place);
  const [, hinted, bracket] = /^(.*) \(([^()]*)\)$/s.exec(text) ?? [];
  const hint = bracket === undefined ? undefined : rewritten(bracket, hints);
  if (hint !== undefined) return behind(happening(hinted as string), hint);
  return rewritten(text, happenings);
}

const behind = (text: string | undefined, more: string): string | undefined =>
  text === undefined ? undefined : `${text}（${more}）`;
