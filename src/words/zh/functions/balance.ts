import type { SomeTwins } from "../../function-texts";

/** The pages of the functions of balance, by what they say in English. */
export const balance = {
  // STAGEBALANCE
  "Where the grams of a lot went: water, leaf taken out, and what no weighing explains.":
    "一批茶的每一克去了哪里：水、取出的茶叶，以及哪次称重都说明不了的部分。",
  "what each weighing is called, in the order of the work": "每次称重的名称，按工序先后",
  "weight on the scale when the stage closed": "这一阶段结束时秤上的重量",
  "moisture of the leaf at that weighing, wet basis; blank where none was measured":
    "那次称重时茶叶的含水率，湿基；没有测的留空",
  "leaf weight taken out (sift-outs, samples) just before that weighing; blank or 0 in the first row":
    "就在那次称重之前取出的茶叶重量（筛出物、样品）；第一行留空或填 0",
  "moisture of the leaf taken out; left out, it is the moisture of its row":
    "取出茶叶的含水率；省略时，等于所在行的含水率",
  "Use it when a lot is finished, or half way, to close its book. Every gram of the first weight stands in one of four places: still on the scale, gone as water, taken out by hand, or unaccounted. The total row adds them up: the weight at the first moisture is the weight at the last one, with water off, leaf removed (as it was weighed, the last column) and unaccounted. The dry matter adds up as well: that of the first is that of the last, with dry matter removed and unaccounted.":
    "一批做完了，或做到一半，用它来结账。最初重量里的每一克，都归到四处之一：还在秤上、作为水走掉、用手取出，或去向不明。合计行把它们加在一起：第一个有含水率的重量，等于最后一个有含水率的重量，加上去水、取出茶叶（最后一列，按称得的重量）和去向不明。干物质也对得上：最初的干物质，等于最后的干物质，加上取出干物和去向不明。",
  "Unaccounted is what to read first. A small positive number is dust, leaf left in the pan, and the little that live leaf loses by breathing. A large one is leaf that was taken out and not written down, or a wrong reading.":
    "先看“去向不明”（unaccounted）。小的正数，是碎末、留在锅里的茶叶，以及鲜活的叶呼吸损失的那一点。数大，就是取出了茶叶却没有记下，或有一个读数错了。",
  "A negative number means more dry matter after a stage than before it. Leaf makes none while it dries, so a weight or a moisture of that row or of the row before it is off, and the note says by how much the dry matter grows. It is never hidden in another column. When moistures are known to about one point, a growth of some percent at the wet end is no more than that: BALANCEFIT weighs the readings by their errors.":
    "负数表示这一阶段之后的干物质比之前还多。茶叶在干燥中生不出干物质，所以本行或上一行有一个重量或含水率不准；备注会写明干物质增加了多少。负数绝不会藏进别的列里。含水率若只准到一个百分点左右，在湿的那一头，干物质增加百分之几也不过是这点误差：BALANCEFIT 会按各读数的误差来权衡。",
  "Kept is the share of the first dry matter that is still there. Its last value is the lot's own recovery.":
    "“保留”（kept）是最初的干物质中还在的比例。这一列最后的数，就是这一批自己的干物质收得率。",
  "A blank moisture does not stop the table: the row shows its weight, and the next row with a moisture accounts for both stages. Leaf taken out in such a row needs its own moisture in removedMoistures. The balance starts at the first row that has a moisture and ends at the last one.":
    "含水率留空，表照样往下算：那一行只显示重量，由下一个有含水率的行把两个阶段一并算清。这样的行若取出过茶叶，要在 removedMoistures 中填上取出茶叶自己的含水率。平衡从第一个有含水率的行开始，到最后一个有含水率的行为止。",
  "The answer spills: a heading, a row for each stage and a total. Inside a worksheet table, where nothing can spill, ask for one cell: INDEX(TEA.STAGEBALANCE(A2:A5, B2:B5, C2:C5, , , FALSE), 5, 7) is the unaccounted weight of a lot of four weighings.":
    "答案会溢出：一行标题，每个阶段一行，再加一行合计。工作表的“表格”里不能有溢出，请只取一个单元格：INDEX(TEA.STAGEBALANCE(A2:A5, B2:B5, C2:C5, , , FALSE), 5, 7) 是称重四次的一批中去向不明的重量。",
  "600 g of an invented lot: 442.2 g of water off, 6 g taken out, 1.8 g unaccounted, 150 g of tea":
    "一批虚构的茶，600 克：去水 442.2 克，取出 6 克，去向不明 1.8 克，得茶 150 克",
  "no moisture for the withered leaf: the last row accounts for both stages":
    "摊放叶没有含水率：由最后一行把两个阶段一并算清",

  // BALANCEFIT
  "A lot's weights and moistures fitted so that they balance, and which row to suspect.":
    "把一批的重量和含水率平差到相互平衡，并指出哪一行可疑。",
  "standard uncertainty of each weight, or one for all; 0 for an exact weight":
    "每个重量的误差（一个标准不确定度），或各行共用一个；准确的重量填 0",
  "standard uncertainty of each moisture, or one for all (one point is 0.01); 0 for an exact one":
    "每个含水率的误差（一个标准不确定度），或各行共用一个（一个百分点填 0.01）；准确的填 0",
  "leaf weight taken out just before that weighing, taken as exact; blank or 0 in the first row":
    "就在那次称重之前取出的茶叶重量，视为准确；第一行留空或填 0",
  "moisture of the leaf taken out, taken as exact; left out, it is the fitted moisture of its row":
    "取出茶叶的含水率，视为准确；省略时，等于所在行平差后的含水率",
  "share of the dry matter lost since the row before, taken as exact, or one for all; left out, 0":
    "自上一行以来损失的干物质比例，视为准确，或各行共用一个；省略时为 0",
  "how sure the test should be before it speaks up": "检验要多有把握才提出",
  "Use it when STAGEBALANCE shows dry matter that comes or goes and you ask whether that is only the scale and the moisture guess, or a wrong reading. You say how good each reading is; the answer is the lot's most likely book, with every balance closed.":
    "STAGEBALANCE 显示干物质多了或少了，想知道这只是秤和估计的含水率不够准，还是有读数错了，就用它。写明每个读数有多准，答案就是这一批最可能的账，每一步都是平的。",
  'Read the last row first. "agrees" means that the errors you stated explain the differences: use the fitted weights and moistures. p is the probability that honest readings would differ by as much or more. Below 1 − confidence the readings do not balance, and the row to suspect is named when one stands out.':
    '先看最后一行。"agrees"（相符）表示所填的误差足以解释这些差异：用平差后的重量和含水率就行。p 是如实的读数也会相差这么多或更多的概率。p 低于 1 − confidence，读数就不平衡；若有一行特别突出，会写明可疑的是它。',
  "z says how far a row had to move, in units of what it should move. A weight and a moisture of the same row move together: the balance sees only their dry matter, so it can name the row, never which of the two readings is wrong. It gives both cures: the weight that would fit if the moisture is right, and the moisture that would fit if the weight is right, worked out from the other rows alone. Look at the scale's note and at the leaf, and decide.":
    "z 说明一行移动了多远，以它本应移动的量为单位。同一行的重量和含水率一起移动：平衡只看得到它们的干物质，所以能指出是哪一行，却分不出两个读数中哪个错了。两种改法都会给出：若含水率无误，重量应是多少；若重量无误，含水率应是多少，都只由其他各行算出。看一看称重的记录和茶叶，再作决定。",
  "Measured with simulated lots: of four honest rows 5 of 100 lots are said not to balance; a weight 20 % too high has its row named in 92 to 100 of 100 lots, by the place of the row, one 5 % too high in 8 to 62 of 100. What counts is the mistake against the errors that you state; docs/how-sure.md has more of them.":
    "用模拟的批次测得：四行读数都老实时，100 批中有 5 批被说成不平衡；一个重量偏高 20 %，100 批中有 92 到 100 批指出的正是那一行，视行的位置而定，偏高 5 % 时有 8 到 62 批。要紧的是错误与所填误差相比有多大；docs/how-sure.md 里还有别的情形。",
  "Two rows alone always move alike, so with two rows no answer can tell which is wrong. A third weighing with a moisture is what tells them apart.":
    "只有两行时，两行总是移动得一样多，所以怎么算也看不出哪一行错了。要分清，得有第三次带含水率的称重。",
  "An error is one standard uncertainty: SCALEERROR gives it for a scale. For a moisture taken from a table or guessed by hand, one to three points is honest. An error of 0 says that a reading is exact: it does not move, and its z is blank when both readings of the row are exact. Two exact rows that contradict each other have no fit, and the answer is #N/A. Refused: errors more than 100000 times apart in dry matter; type 0 for a reading that is as good as exact beside the others.":
    "误差是一个标准不确定度：秤的误差由 SCALEERROR 给出。含水率若是查表或凭手感估计的，填一到三个百分点才算实在。误差为 0 表示读数准确：它不移动；一行的两个读数都准确时，z 为空白。两行都准确却互相矛盾，就无法平差，答案为 #N/A。会拒绝：各行误差以干物质计相差超过 100000 倍；与其他读数相比可算准确的，请填 0。",
  "A blank moisture is worked out: the row takes no part in the fit, its weight stays as read, and its fitted moisture follows from the rows around it.":
    "留空的含水率会算出来：这一行不参与平差，重量照读数不变，平差含水率由前后各行得出。",
  "Where leaf was taken out at the row's own moisture, the z of its weight and of its moisture differ a little, and the larger one is shown.":
    "取出的茶叶按所在行的含水率计算时，该行重量的 z 与含水率的 z 略有不同，显示较大的一个。",
  "When a fit would need a moisture below 0 or of 1 and more, or does not settle, the answer is #N/A. It names the row that does not belong, the one without which the others fit best, with the weight that would fit: look for kilograms among grams or a slipped decimal. With two rows, or when two readings are wrong, there may be no such row. A lot has at most 500 rows; only in one of at most 50 is such a row looked for.":
    "若平差要求含水率低于 0 或达到 1 及以上，或算不出稳定的结果，答案为 #N/A，并指出与其余各行不合的那一行，也就是去掉它以后其余各行最相符的一行，以及合适的重量：请看是不是把千克写进了克，或小数点点错了位。只有两行，或有两个读数错了时，可能找不到这样的一行。一批最多 500 行；不超过 50 行的批次才会去找。",
  "The last row holds, from the left: the verdict, γ, the degrees of freedom, and p. The answer spills; inside a worksheet table ask for one cell: INDEX(TEA.BALANCEFIT(A2:A5, B2:B5, C2:C5, 0.5, 0.01, , , , , FALSE), 5, 1) is the verdict on a lot of four weighings.":
    "最后一行从左起依次是：结论、γ、自由度和 p。答案会溢出；在工作表的“表格”里请只取一个单元格：INDEX(TEA.BALANCEFIT(A2:A5, B2:B5, C2:C5, 0.5, 0.01, , , , , FALSE), 5, 1) 是称重四次的一批的结论。",
  "the same dry tea on three scales, each good to 1 g: the fit is their mean, and they agree":
    "同一份干茶用三台秤称，每台的误差为 1 克：平差结果是三个读数的平均值，读数相符",

  // STOCKBALANCE
  "A book of stock: what came in against what went out and is left, with the error of the difference.":
    "库存账：收进的与付出和剩下的相比，附差额的误差。",
  "what each row is: opening stock, a month's making, a buyer": "每一行是什么：期初库存、某月所制、某位买家",
  '"opening", "in", "out" or "closing", one for each row':
    '每行一个："opening"（期初）、"in"（入）、"out"（出）或 "closing"（期末）',
  "weight of each row, in one unit; 0 is 0, and a blank one makes the whole balance wait":
    "各行的重量，单位相同；0 就是 0，空着则整个平衡等待",
  "tea from one unit of this row's weight: 1 for tea, and your own figure for leaf; one for all, or beside the rows; a blank is 1":
    "这一行每一份重量合多少茶：茶为 1，叶填您自己的数；一个管全部，或与各行并列；空白为 1",
  "error of each weight, one standard uncertainty; one for all, or beside the rows; a blank is 0":
    "各重量的误差，一个标准不确定度；一个管全部，或与各行并列；空白为 0",
  "error of each outturn, one standard uncertainty; one for all, or beside the rows; a blank is 0":
    "各制成率的误差，一个标准不确定度；一个管全部，或与各行并列；空白为 0",
  "how often a true book should agree; 95 % is 95 of 100": "真实的账应有多大把握相符；95 % 即 100 本中有 95 本",
  "Use it at the end of the year, or when someone asks how your sales fit your making: a row for the opening stock, what was made, each buyer, what was given away, and the closing stock. The last row says what is unaccounted for, its error, and a verdict.":
    "年终用，或有人问您卖的与制的是否对得上时用：期初库存、所制、每位买家、送出的、期末库存，各占一行。最后一行给出对不上的数、它的误差和结论。",
  'The verdict is "agrees", "more in than out" or "more out than in". Without any errors it is "not judged: no errors given": a difference says little until you know how large it may be by chance. SCALEERROR gives the error of one weighing; the error of a total of n like weighings is √n of it.':
    '结论是 "agrees"（相符）、"more in than out"（收多于付）或 "more out than in"（付多于收）。没有填任何误差时是 "not judged: no errors given"（未填误差，不作判断）：不知道碰巧能差多少，差额说明不了什么。SCALEERROR 给出一次称重的误差；n 次同样称重的总和，误差是它的 √n 倍。',
  "An agreement is only as sharp as its error. With leaf at an outturn that is known to a hundredth, anything within 2 % of the season agrees: it then shows that the tea can come from the leaf, never that it did. The share of variance shows which row the sharpness hangs on.":
    "相符有多准，全看误差有多小。叶的制成率只知道到百分之一时，全季的 2 % 以内都算相符：那只说明茶可以出自这些叶，绝不说明确实出自它们。方差份额显示准不准取决于哪一行。",
  "Errors count as independent of each other: a scale that reads 1 % high throughout is not seen, for it does so on both sides. Stocks take up moisture: restate them to one moisture with TARGETWEIGHT first.":
    "各误差视为互不相关：秤一直偏高 1 % 是看不出来的，因为收付两边都偏高。库存会吸潮：请先用 TARGETWEIGHT 换算到同一含水率。",
  "No tolerance of any auditor is known to us, and none is built in. A book that agrees may still be wrong in two places, and one that does not may be honest: look for a row that is missing or written twice.":
    "我们不知道任何审核方的允差，也没有内置。相符的账可能有两处错，不相符的账也可能是诚实的：请看看有没有漏写或重写的行。",
  "A stock that is not counted yet makes the whole balance wait; 0 is a stock that has run out. The answer is a table, and a spill cannot stand inside a worksheet table: there ask for one cell, =INDEX(TEA.STOCKBALANCE(A2:A6, B2:B6, C2:C6, , D2:D6, , , FALSE), 6, 1) is the verdict of five rows.":
    "还没有盘点的库存使整个平衡等待；0 是已经用完的库存。答案是一张表，而工作表的“表格”里不能有溢出：在那里请只取一个单元格，=INDEX(TEA.STOCKBALANCE(A2:A6, B2:B6, C2:C6, , D2:D6, , , FALSE), 6, 1) 是五行账的结论。",
  "Refused: a book without a row that comes in (opening or in) or without one that goes out (out or closing), a row without a name or a direction, and an outturn above 1.":
    "会拒绝：没有收进的行（期初或入）或没有付出的行（出或期末）的账，没有名称或方向的行，以及大于 1 的制成率。",
  "an invented farm's year: 10 g unaccounted for, with an error of 13 g":
    "某个虚构茶园的一年：10 克对不上，误差为 13 克",
} as const satisfies SomeTwins;
