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

  // DAYPLAN
  "When each charge goes into which pan, round by round, and which rests run over.":
    "每一锅各轮何时下哪口锅，哪些静置会超时。",
  "time of the first firing, such as 9:00, or a date with a time": "第一次炒制的时刻，如 9:00，或日期加时间",
  "number of charges: CHARGECOUNT gives it": "锅数：由 CHARGECOUNT 给出",
  "how long one firing takes, one for each round, with loading and brushing: 0:20 is twenty minutes":
    "每轮一次炒制要多久，每轮一个，下锅和刷锅在内：0:20 是二十分钟",
  "the least wrap or rest after each round, beside it; one for all, or blank for none; the last is not waited for":
    "每轮之后最短的包裹或静置，与各轮并列；一个管全部，空白为没有；最后一轮之后的不等",
  "how many pans can be tended at once; left out, one": "同时照看得过来的锅有几口；省略为一口",
  "time of day at which a daily break begins; left out with breakEnd, there is none":
    "每天休息开始的时刻；与 breakEnd 一起省略则没有休息",
  "time of day at which it ends; the next morning where it is the smaller":
    "休息结束的时刻；若比开始的小，就是第二天早上",
  "Use it in the morning, when you know how many charges the leaf makes: type when the pan is hot, how long a firing of each round takes, and how long the leaf rests after it. The table is the card by the pans: when each charge is due, when it starts and ends, in which pan, and how late it is.":
    "早上知道叶要分几锅时用：填锅何时烧热，每轮炒一次要多久，之后叶要静置多久。这张表就是锅边的卡片：每一锅何时该下，何时开始、何时结束，在哪口锅，晚了多少。",
  "A rest is a minimum. A wrap that grows too long is flagged as overruns, never prevented: take fewer charges, another pan, or another time for the break, and look again. In the first round late is fresh leaf that waits, which is shown and not flagged. Rests run on through breaks.":
    "静置是最短时间。包裹得太久会标为 overruns（超时），但不会加以阻止：请减少锅数、加一口锅，或换个时间休息，再看一次。第一轮的 late 是鲜叶在等，只显示，不标出。休息时静置照样进行。",
  "It is a rule, not the best of all plans: whatever can start first does. Of 150 small days in one pan, tried in every order, it was the shortest in 146 and at worst 7 % longer; now and then (14 of 10,000 days) a shorter rest ends the day later.":
    "这是一条规则，不是最好的安排：谁能最先开始就先炒谁。用一口锅的 150 个小日程把每种次序都试过，它在 146 个里最短，最差的长 7 %；偶尔（10,000 天里有 14 天）静置缩短反而收工更晚。",
  "Pans are those that you can tend at once. Loading and brushing the pan belong to the firing time. A firing may end as the break begins, and begin as it ends; a short one may pass a long one that no longer fits before the break.":
    "锅数是同时照看得过来的锅。下锅和刷锅都算在炒制时间里。炒制可以正好在休息开始时结束，也可以正好在休息结束时开始；休息前排不下长的一锅，短的一锅可以先炒。",
  "The last row has the number of firings, the first start, the last end, and the longest overrun. In one cell, the end of the day: =INDEX(TEA.DAYPLAN(A2,B2,D2:D4,E2:E4,,,,FALSE),B2*3+1,6), with three rounds. Set the formats to hh:mm, and [h]:mm for late; past midnight the clocks count on and show the right hour.":
    "最后一行是炒制次数、最早的开始、最晚的结束和最长的超时。只用一个单元格取收工时刻：=INDEX(TEA.DAYPLAN(A2,B2,D2:D4,E2:E4,,,,FALSE),B2*3+1,6)，这里有三轮。格式设为 hh:mm，late 设为 [h]:mm；过了半夜会接着算，显示的时刻仍然正确。",
  "A blank firstStart or a blank number of charges makes the table wait. Refused: more than 500 firings, a firing under 0:01 or over 12:00, a rest over three days, one end of a break without the other, and a firing longer than the time between two breaks.":
    "firstStart 或锅数空着，表就等待。会拒绝：炒制超过 500 次，一次炒制不到 0:01 或超过 12:00，静置超过三天，休息只填一头，以及比两次休息之间还长的炒制。",
  "two charges from 10:00, 0:30 and then 0:20, with a wrap of 1:00: done at 12:20":
    "10:00 起两锅，先 0:30 后 0:20，中间包裹 1:00：12:20 完成",

  // DRYINGTIME
  "When leaf in drying will reach a weight, from timed weights: early, likely and late.":
    "干燥中的叶何时会降到某个重量，由各时刻的重量推算：最早、大约和最晚。",
  "times of the readings, or dates with times; they rise": "各次称重的时刻，或日期加时间；逐个递增",
  "weights at these times; a row that is not weighed yet is passed over": "这些时刻的重量；还没有称的行跳过",
  "weight to be reached: TARGETWEIGHT gives it": "要达到的重量：由 TARGETWEIGHT 给出",
  "weight at which drying would come to rest, below the target and not below the dry matter; without it, it is sought in the readings":
    "一直烘下去最后停住的重量，小于目标，不小于干物质；省略则由读数推求",
  "Use it in the last drying: type the time and the weight each time you weigh, and read when to look again. Early is the time at the pace of the last two readings, likely the time to expect, late the time if it slows down as far as it may. A card may be ruled ahead: rows without a weight are passed over, and a cell that needs more readings waits.":
    "最后烘干时用：每次称重填上时刻和重量，看什么时候该再去看。early 是按最近两次的速度推算的时刻，likely 是大约的时刻，late 是慢到不能再慢时的时刻。卡片可以先画好：没有重量的行跳过，读数还不够的格子等待。",
  "It is a forecast and no bound. It holds while heat, depth and turning stay as they are. Measured with simulated charges, the moment lay in the range in 99 of 100 where drying slowed in step, in 93 where it slowed more, and in 53 where the dry weight was typed for the end weight. When the fire sinks, leaf comes later: the leaf was ready later than late in 2 of 100 where the fire sank evenly to 85 % of its pace, and in 15 where it sank to 70 %; where it fell to 85 or 70 % at once after the last reading, in 23 and 91. docs/how-sure.md has the rest. While the leaf still warms up, it comes sooner than early: begin the list once the weight falls steadily.":
    "这是预测，不是界限。火力、厚薄和翻动保持不变，它才成立。用模拟的锅次测过：干燥与所剩水分同步变慢时，100 次中有 99 次落在范围内；变慢得更多时有 93 次；用干重代替终点重量时有 53 次。火弱下去，叶就来得晚：火力均匀降到原来速度的 85 % 时，100 次中有 2 次比 late 还晚，降到 70 % 时有 15 次；若最后一次读数之后一下子降到 85 % 或 70 %，则有 23 次和 91 次。其余见 docs/how-sure.md。还在升温时，会比 early 还早：请等重量平稳下降了再开始记。",
  "The end weight decides. TARGETWEIGHT(weight, moisture, 2.5%) gives one, with your own figure for 2.5 %. With the dry weight in its place, likely came 10 % of the whole time too soon, measured likewise.":
    "最后停住的重量最要紧。TARGETWEIGHT(weight, moisture, 2.5%) 可以给出，2.5 % 请换成您自己的数。若填成干重，同样测过，likely 平均早到全部时间的 10 %。",
  "Without an end weight trust early only, unless the weight slowed down from the first reading on. If the end weight that is found lies below DRYMATTER, it is wrong. While the weights do not slow down, likely and end weight are #N/A.":
    "没有填 endWeight 时只可信 early，除非重量从第一次读数起就在变慢。推求出的停住重量若小于 DRYMATTER，那就是错的。重量下降还没有变慢时，likely 和 end weight 为 #N/A。",
  "Likely and late take four readings with an end weight, early two; without one the fit takes four. Weights that rise make the whole answer #N/A, with the place named: leaf takes up no water in a warm dryer, so look at the scale. Two equal weights at the end leave no pace. A time more than ten times as far as the readings reach is #N/A in its cell.":
    "填了 endWeight，likely 要四个读数，early 和 late 两个就够；没有填，推求要四个。重量上升，整个答案为 #N/A，并指出是哪一个：叶在热的烘具里不会吸水，请看看秤。最后两个重量相同，就没有速度可言。比读数所跨时间的十倍还远的时刻，那一格为 #N/A。",
  "The answers are clocks, for cells of the format hh:mm. It is a row of four, and a spill cannot stand inside a worksheet table: there ask for one of them, =INDEX(TEA.DRYINGTIME(A2:A13, B2:B13, E2, E3), 1, 2) is the likely time.":
    "答案是时刻，单元格格式设为 hh:mm。答案是一行四个，而工作表的“表格”里不能有溢出：在那里请只取一个，=INDEX(TEA.DRYINGTIME(A2:A13, B2:B13, E2, E3), 1, 2) 是大约的时刻。",
  "Refused: times that do not rise (past midnight type the date with the time), a target above the first weight, an end weight that is not below the target, and more than 500 readings.":
    "会拒绝：不递增的时刻（过了半夜请输入日期加时刻），大于第一个重量的目标，不小于目标的 endWeight，以及超过 500 个读数。",
  "an invented lot on its way to 166 g: between 14:35 and 15:38, likely at 15:17":
    "一批虚构的茶，要降到 166 克：在 14:35 到 15:38 之间，大约 15:17",
} as const satisfies SomeTwins;
