import type { SomeTwins } from "../../function-texts";

/** The pages of the functions of season, by what they say in English. */
export const season = {
  // SEASONTABLE
  "A season by plots, flushes or any groups: lots, weights, outturn, tea per area, shares.":
    "按地块、茶季或任意分组汇总一季：批数、重量、制成率、单位面积产茶量、份额。",
  "what each lot belongs to: a plot, a flush, a picker; whole columns may be given, with their heading":
    "每批属于哪一组：地块、茶季、采工；可以给整列，连标题一起",
  "fresh weight of each lot": "每批的鲜叶重量",
  "finished weight of each lot; blank while the lot is not finished": "每批的成茶重量；未完成的批次留空",
  "the groups again, each once, in a list of its own beside the areas":
    "再列一遍各组，每组一次，单独成列，放在面积旁边",
  "the area of each of areaNames; or one number, without areaNames, for land that all groups share":
    "areaNames 中每一组的面积；若各组共用一块地，不填 areaNames，只填一个数",
  "Use it at the end of a week or a season, over the book of lots, to see what each plot gave. Give it the whole columns, heading and all, and it keeps up as lots are written below: =TEA.SEASONTABLE(A:A,B:B,C:C). Put it on another sheet or beside those columns, never in them.":
    "一周或一季结束时，用它汇总批次账，看每个地块出了多少茶。把整列连标题一起给它，往下记新的批次，它会自动跟上：=TEA.SEASONTABLE(A:A,B:B,C:C)。把它放在另一张工作表上，或放在这些列的旁边，绝不要放在这些列里。",
  "Read a row so: lots are the finished ones, and fresh and finished are their weights alone. Open lots have a fresh weight and no finished weight yet; they are counted and stay out of every other number until they are finished. Left out are rows that cannot be right: text among the weights, a finished weight without a fresh one or above it, a weight below 0, an error, a lot without a group. The line under the total names the first of them, with its row counted from the first row you gave. Mend it and the next one shows. Rows without any weight are passed over, so groups may be filled in ahead.":
    "一行这样读：“批数”（lots）只数已完成的批次，“鲜叶”（fresh）和“成茶”（finished）也只是这些批次的重量。“未完成”（open）的批次有鲜叶重量，还没有成茶重量；它们只计批数，完成之前不进入其他任何数字。“未计入”（left out）的是不可能正确的行：该填重量处写了文字、有成茶重量却没有鲜叶重量、成茶比鲜叶重、重量低于 0、有错误值、批次没有写分组。合计下面的一行指出其中第一处，行号从所给区域的第一行数起。改好它，就会显示下一处。没有任何重量的行会跳过，所以分组可以预先填好。",
  "The outturn of a group is the sum of its tea over the sum of its leaf, so that a large lot counts for more than a small one. The mean of the lots' outturns is another number and says nothing about the season's leaf.":
    "一组的制成率，是成茶总重除以鲜叶总重，所以大批的分量比小批重。各批制成率的平均值是另一个数，说明不了全季鲜叶的情况。",
  "Groups that differ only in capital letters or in spaces around them are one group, as in SUMIFS, under the spelling that comes first.":
    "组名若只是大小写不同，或前后多了空格，算同一组，与 SUMIFS 一样；名称按最先出现的写法。",
  "For tea per area give the areas in a small table of their own: areaNames beside areas. A group that is missing there, or spelled another way, shows #N/A where its area is needed, and so does the total; where it is named and its area is still blank, these cells wait. Where the groups are flushes or pickers on the same land, give one number as areas and no areaNames: it is the area of each, and of the total. Tea per area is in your own units, such as kilograms for each hectare when the weights are in kilograms.":
    "要算单位面积产茶量，请把面积单独列成一个小表：areaNames 挨着 areas。小表里没有的组，或写法不同的组，凡要用到面积处都显示 #N/A，合计也一样；组已列出而面积还空着时，这些单元格先空着等待。若各组是同一块地上的茶季或采工，areas 只填一个数，不填 areaNames：它既是每一组的面积，也是合计的面积。单位面积产茶量用自己的单位，例如重量以公斤计、面积以公顷计，就是每公顷多少公斤。",
  "A group of open lots alone has no outturn yet, and its cells stay empty. Lots are all there once the number of open ones is 0.":
    "只有未完成批次的组还没有制成率，相应的单元格留空。未完成的批数为 0，各批就都齐了。",
  "Inside a worksheet table, where nothing can spill, ask for one cell: =INDEX(TEA.SEASONTABLE(A:A,B:B,C:C),2,7) is the outturn of the first group, since row 1 holds the headings.":
    "工作表的“表格”里不能有溢出，请只取一个单元格：=INDEX(TEA.SEASONTABLE(A:A,B:B,C:C),2,7) 是第一组的制成率，因为第 1 行是标题。",
  "Refused: lists of different lengths, a group named twice in areaNames, and several areas without names.":
    "会拒绝：几列长短不一、areaNames 中同一组写了两次、有几个面积却没有名称。",
  "two plots of an invented farm, with the headings of the book, one lot still open, and areas in acres":
    "虚构茶园的两个地块，连账上的标题一起，有一批未完成，面积以英亩计",
  "two flushes of the same half acre: one area for all, and for the total":
    "同一块半英亩地的两个茶季：各组和合计都用这一个面积",

  // FINISHEDFORECAST
  "What today's leaf will make, with the range to expect, from your own past lots.":
    "今天的鲜叶能做多少茶，预计在什么范围，由自己以往的批次算出。",
  "fresh weight of today's lot": "今天这批的鲜叶重量",
  "fresh weights of lots made before; whole columns may be given, with their heading":
    "以往各批的鲜叶重量；可以给整列，连标题一起",
  "their finished weights; a lot without one is left out": "它们的成茶重量；没有成茶重量的批次不计入",
  "how often a lot should fall inside the range; 95 % is 95 lots of 100":
    "一批落在范围之内的机会有多大；95 % 就是 100 批中有 95 批",
  "Use it on the morning when the leaf has come in, to plan packing or to promise tea: three cells, the least to expect, the weight to expect, and the most. It needs no moisture, only your own book; the expected weight is today's leaf at the outturn of the whole season.":
    "早上鲜叶收进来，要安排包装或答应交茶，就用它：三个单元格，依次是预计最少、预计重量、预计最多。它不需要含水率，只要自己的账；预计重量是今天的鲜叶按全季制成率算出的重量。",
  "The range is for this one lot, and a confidence of 95 % means to hold it in 95 of 100 when nothing is wrong. A lot outside it is worth a look at the weights, and at what was different that day: rain on the leaf, another plot, coarser plucking. It widens for a larger lot, and narrows as you write more lots down.":
    "这个范围只针对这一批；按 95 % 计，一切正常时应有 100 批中的 95 批落在里面。落在外面的批次，值得看看重量，也看看那天有什么不同：鲜叶带雨水、换了地块、采得粗。批越大，范围越宽；记下的批次越多，范围越窄。",
  "Measured with simulated lots that scatter normally, in either way. From 8 past lots on, for leaf within their size, it held 94.8 to 98.9 of 100 lots. With 3 to 6 it held 94.6 to 97.4 of 100, and for a lot of one and a half times or twice the largest 94.8 to 99.9. It pays for that with its width: with three past lots it is 2.3 to 2.5 times as wide as it would have to be if outturn and scatter were known, with eight 1.3 to 1.4 times, with forty 1.1 to 1.2 times.":
    "用模拟的批次测得，批次按正态散开，两种方式都试过。以往有 8 批或更多、鲜叶重量在以往批次之内时，100 批中有 94.8 到 98.9 批落在范围里。以往有 3 到 6 批时，有 94.6 到 97.4 批；比最大的一批大一半或大一倍时，有 94.8 到 99.9 批。代价是范围宽：与制成率和散开的程度都已知时相比，以往三批时宽到 2.3 到 2.5 倍，八批时 1.3 到 1.4 倍，四十批时 1.1 到 1.2 倍。",
  "It takes for granted that today's leaf is like the leaf of the past lots, and that lots scatter by chance: all by the same percent, or large ones by less. The range is wide enough for either. Give it the lots of the same kind of leaf: a first flush says little about a third.":
    "它假定今天的鲜叶与以往各批相像，也假定各批的散开出于偶然：或者各批百分比一样，或者大批的百分比小些。范围足够宽，两种情况都顾到。请给它同一类鲜叶的批次：第一个茶季的批次，对第三个茶季参考不大。",
  "Lots still open, empty rows and headings are passed over. Rows that cannot be right (text, a finished weight above the fresh one, an error) are left out without a word, so look at the column of those left out in SEASONTABLE. Lots that are merely unlikely are kept: find them with LOTFLAGS, and mend them first.":
    "未完成的批次、空行和标题会跳过。不可能正确的行（文字、成茶比鲜叶重、错误值）不计入，也不提示，请到 SEASONTABLE 的“未计入”（left out）一列查看。只是不太像的批次会照用：先用 LOTFLAGS 找出来，改好再算。",
  "Fewer than three finished lots give #N/A, for there is no telling how far two of them scatter. Lots that are all exactly alike give a range of no width, which says more about the book than about the leaf.":
    "已完成的批次不足三批，答案为 #N/A，因为只有两批，看不出会散开多远。各批完全一样，范围的宽度就是零，这多半说明账有问题，而不是茶叶真的如此。",
  "The answer is a row of three. Inside a worksheet table ask for one of them: =INDEX(TEA.FINISHEDFORECAST(D2,B:B,C:C),1,2) is the weight to expect.":
    "答案是一行三个数。在工作表的“表格”里请只取其中一个：=INDEX(TEA.FINISHEDFORECAST(D2,B:B,C:C),1,2) 是预计重量。",
  "700 g of fresh leaf on an invented farm with four lots finished and one still open":
    "虚构茶园的 700 克鲜叶，以往四批已完成，一批未完成",

  // LOTFLAG
  "Flags one lot whose outturn is unusual among your lots; fits into one cell of a table.":
    "一批的制成率与自己的其他批次相比不寻常时，把它标出；只占工作表的“表格”中一个单元格。",
  "fresh weight of the lot": "这批的鲜叶重量",
  "finished weight of the lot; the answer waits until it is there": "这批的成茶重量；填上之前，答案等待",
  "fresh weights of the lots to compare with; the whole column, this lot among them, is fine":
    "用来比较的各批的鲜叶重量；可以给整列，这一批在其中也无妨",
  "how many usual distances from the usual outturn are too many; left out, as many as the size of the book asks for":
    "离通常的制成率多少个常见距离算太远；省略则按账上批次的多少而定",
  "Use it as one more column of the book of lots: each new lot is compared with all the others the moment its finished weight is written down, while the tea and the scale are still there to weigh again. It gives one cell, so it works inside a worksheet table, where LOTFLAGS cannot spill.":
    "在批次账里加一列用它：新的一批刚写下成茶重量，就与其他各批比较，这时茶和秤都还在手边，可以重称。它只给一个单元格，所以能用在工作表的“表格”里，而 LOTFLAGS 在那里不能有溢出。",
  'The flag is one of three, or nothing. "high": more tea than the leaf usually makes; "low": less; "more out than in": the finished weight is above the fresh weight, as when the two were swapped or one was read in another unit. Nothing means as usual, or not finished yet.':
    '标记有三种，也可能没有。"high"（偏高）：出的茶比这些鲜叶通常做出的多；"low"（偏低）：比通常的少；"more out than in"（出多于进）：成茶比鲜叶重，例如两个数填反了，或有一个用了别的单位。没有标记，就是与通常一样，或还没有完成。',
  "A flag says look, and not wrong. First look at the two weights: a slip of the pen, a dish left on the scale, grams for kilograms. Then at the day: rain on the leaf gives a low outturn that is true, and so does a basket of coarse leaf that was sifted hard.":
    "标记是说“看一看”，不是说“错了”。先看两个重量：是不是笔误、盘子留在秤上、该写公斤却写了克。再想想那一天：鲜叶带雨水，制成率低是真实的；一筐粗老叶筛得狠，也是这样。",
  "Usual means the middle lot, and the usual distance is the middle of the distances from it, so that a few gross mistakes in the book move neither. When more than half of the lots are alike the mean distance takes its place; when all are alike there is nothing to measure with, and only more out than in is flagged.":
    '“通常”指排在正中的那一批，“常见距离”是各批与它的距离中排在正中的那个，所以账里有几个大错，两者都不受影响。半数以上的批次一样时，改用平均距离；全部一样时，没有尺度可量，只标出"more out than in"（出多于进）。',
  "Leave the limit out, and it follows the number of past lots, so that of a hundred good new lots about one is flagged: it is 14.6 with five past lots, 4.9 with ten, 3.5 with twenty, and near 2.6 with hundreds. With few lots only a gross mistake can be told. A limit that you type, such as the 3.5 that is often advised, counts for books of every size; of a hundred good lots it flags 12 beside five past ones, 3 beside ten, 1 beside twenty.":
    "限值省略时按以往批次的多少而定，使一百批好的新批次中约有一批被标出：以往有五批时是 14.6，十批 4.9，二十批 3.5，几百批时接近 2.6。批次少时，只看得出很大的错。自己填的限值（例如常见建议的 3.5）对大小账都一样；一百批好的批次中，以往只有五批时它标出 12 批，十批时 3 批，二十批时 1 批。",
  "Measured with simulated lots whose outturns scatter by 3 %: a lot that is 20 % too low was flagged in 29 of 100 beside five past lots, in 92 beside ten and in over 99 beside twenty. What counts is the mistake against that scatter; docs/how-sure.md has more sizes.":
    "用模拟的批次测得，制成率散开 3 %：偏低 20 % 的一批，以往有五批时 100 次中有 29 次被标出，十批时 92 次，二十批时超过 99 次。要紧的是错误与这种离散相比有多大；docs/how-sure.md 里还有别的大小。",
  "Open lots, empty rows, headings and mistakes in the past lists are passed over. Fewer than five finished lots give #N/A.":
    "以往批次中未完成的、空行、标题和有错的会跳过。已完成的批次不足五批，答案为 #N/A。",
  "150 g from 900 g, on an invented farm whose lots come out at 21 to 22 %":
    "900 克做出 150 克，而这个虚构茶园各批的制成率在 21 到 22 %",
  "192 g from the same leaf is as usual, and nothing is flagged": "同样的鲜叶做出 192 克，与通常一样，不标记",

  // LOTFLAGS
  "Every lot of a book: its outturn, how unusual it is, and a flag where it should be looked at.":
    "账上的每一批：制成率、有多不寻常，该看一看的加上标记。",
  "fresh weights of the lots; whole columns may be given, with their heading": "各批的鲜叶重量；可以给整列，连标题一起",
  "their finished weights; blank while a lot is not finished": "它们的成茶重量；未完成的批次留空",
  "Use it before you trust a season's numbers, to find the lots that were weighed or written down wrong. It gives a row for every row of the book, in the same order, so put it beside the book: in the row of the headings when the lists begin there or just below, and in the row of the first lot with FALSE for headers.":
    "采信一季的数字之前，先用它找出称错或记错的批次。账上有几行，它就给几行，次序相同，所以请放在账的旁边：所给的列从标题行或紧接其下开始，就放在标题那一行；headers 填 FALSE，就放在第一批那一行。",
  'The flag is "high" (more tea than the leaf usually makes), "low" (less), "more out than in" (finished above fresh, which is flagged here and refused elsewhere), or nothing. z says how far: of the lots of a good book of twenty 69 in 100 lie within 1; in the tens, look first for a slip of the pen.':
    '标记为 "high"（偏高，茶比鲜叶通常做出的多）、"low"（偏低，比通常的少）、"more out than in"（出多于进，成茶比鲜叶重；这里标出，别处会拒绝），或没有。z 说明相差多远：二十批的好账里，100 批中有 69 批在 1 以内；到了几十，请先看是不是笔误。',
  "Leave the limit out, and it follows the number of lots, so that of twenty clean books about one has a flag: it is 8 for five lots, 4.6 for ten, 3.8 for forty. A limit that you type counts for books of every size. The 3.5 that is often advised flags a lot in 20 of a hundred clean books of five lots, in 13 of those of ten, and in 9 of those of forty.":
    "限值省略时按批次的多少而定，使二十本没有错的账中约有一本出现标记：五批时是 8，十批 4.6，四十批 3.8。自己填的限值对大小账都一样。常见建议的 3.5，在一百本没有错的五批账中有 20 本会出现标记，十批的有 13 本，四十批的有 9 本。",
  "Measured with simulated lots whose outturns scatter by 3 %: a lot that is 20 % too low was flagged in 88 of 100 books of ten lots and in over 99 of those of forty. What counts is the mistake against that scatter; docs/how-sure.md has more sizes.":
    "用模拟的批次测得，制成率散开 3 %：偏低 20 % 的一批，在 100 本十批的账中有 88 本被标出，四十批的账中超过 99 本。要紧的是错误与这种离散相比有多大；docs/how-sure.md 里还有别的大小。",
  "A flag says look, and not wrong: leaf that came in wet from rain has a low outturn that is true. Compare flagged lots by their dry matter with DRYRECOVERY when the moistures are known.":
    "标记是说“看一看”，不是说“错了”：淋了雨收进来的湿叶，制成率低是真实的。知道含水率时，用 DRYRECOVERY 按干物质比较标出的批次。",
  "The comparison is by ratio: twice the usual outturn and half of it are equally far away. Usual means the middle lot, so a few gross mistakes do not hide each other. When more than half of the lots are alike the mean distance takes the place of the middle one; then the limit is 3.5, whatever the size; when all are alike z is 0.":
    "比较按倍数：通常制成率的两倍与一半，算同样远。“通常”指排在正中的那一批，所以几个大错不会互相掩盖。半数以上的批次一样时，以平均距离代替正中的距离，限值则一律是 3.5；全部一样时 z 为 0。",
  "A lot that is still open and an empty row give empty cells. A row with a mistake in it holds the error and says which cell it is. Fewer than five finished lots give #N/A.":
    "未完成的批次和空行给出空单元格。有错的行显示错误值，并说明是哪个单元格。已完成的批次不足五批，答案为 #N/A。",
  "A spill cannot stand inside a worksheet table. There, use LOTFLAG, which gives the flag of one lot in one cell.":
    "工作表的“表格”里不能有溢出。那里请用 LOTFLAG，它在一个单元格中给出一批的标记。",
  "seven lots of an invented farm, the sixth far below the others and the last still open":
    "虚构茶园的七批：第六批远低于其他各批，最后一批未完成",
} as const satisfies SomeTwins;
