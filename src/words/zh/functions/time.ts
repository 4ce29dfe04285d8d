import type { SomeTwins } from "../../function-texts";

/** The pages of the functions of time, by what they say in English. */
export const time = {
  // TURNTIMES
  "The times at which wrapped or resting leaf is turned.": "包裹或静置的茶叶该在哪些时刻翻动。",
  "time at which the rest begins, such as 14:20, or a date with a time": "静置开始的时刻，如 14:20，或日期加时间",
  "how long it lasts, typed as a time: 3:00 is three hours": "持续多久，按时间输入：3:00 是三小时",
  "time between two turns, typed as a time: 0:20 is twenty minutes": "两次翻动的间隔，按时间输入：0:20 是二十分钟",
  "Type the time at which the leaf went into the wrap, and write the answers on the card beside it. At the end itself there is no turn: there the leaf comes out.":
    "输入茶叶包好的时刻，把答案抄在茶旁的卡片上。结束的那一刻不翻：那时就该拆包了。",
  "A spreadsheet counts a day as 1, so a bare 5 is five days. Three hours are 3:00, or =3/24; twenty minutes are 0:20. Set the format of the answers to hh:mm; past midnight they count on into the next day and show the right hour.":
    "电子表格把一天算作 1，所以只写 5 就是五天。三小时写 3:00，或 =3/24；二十分钟写 0:20。把答案的数字格式设为 hh:mm；过了半夜会接着算到第二天，显示的时刻仍然正确。",
  "The answer is a column, and a spill cannot stand inside a worksheet table. Put it beside the table, or ask for one turn in one cell: =INDEX(TEA.TURNTIMES(A2, B2, C2), 1) is the first.":
    "答案是一列，而工作表的“表格”里不能有溢出。请放在“表格”旁边，或在一个单元格里只取一次翻动：=INDEX(TEA.TURNTIMES(A2, B2, C2), 1) 是第一次。",
  "Refused: a start such as 14.2, which is neither a time, below 1, nor a date of our days, above 20000: type 14:20. Also a duration above three days, an interval under one minute, and more than 500 turns. Where the interval is as long as the duration, no turn comes before the end, and the answer is #N/A.":
    "会拒绝：14.2 这样的开始时刻，它既不是时刻（小于 1），也不是现今的日期（大于 20000）：请输入 14:20。还有：时长超过三天、间隔不到一分钟、翻动超过 500 次。间隔与时长一样长，结束之前就一次也不翻，答案为 #N/A。",
  "from 13:00 for 2:00, turned every 0:40: at 13:40 and 14:20":
    "从 13:00 开始，共 2:00，每 0:40 翻一次：13:40 和 14:20",
} as const satisfies SomeTwins;
