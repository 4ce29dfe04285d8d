import type { SomeTwins } from "../../function-texts";

/** The pages of the functions of packing, by what they say in English. */
export const packing = {
  // PACKPLAN
  "What to fill into each package, how many packages the tea makes, and what is left over.":
    "每包装多少，这些茶能装多少包，还剩多少。",
  "weight of the tea that is to be packed": "要包装的茶的重量",
  "weights that the packages state, a row or a column": "包装上标明的重量，一行或一列",
  "how many packages of each size are wanted, beside the sizes; blank for as many as fit":
    "每种规格想要几包，与规格并列；空白则能装多少装多少",
  "moisture of the tea when it is filled, wet basis; left out with driestMoisture, nothing is added":
    "装包时茶的含水率（湿基）；与 driestMoisture 一起省略，就不另加",
  "lowest moisture that the tea may fall to in the package before it is sold, wet basis":
    "售出之前，茶在包里最低会降到的含水率（湿基）",
  "standard deviation of one fill, as your filling scatters; left out, 0":
    "一次装填的标准差，即您装包的离散程度；省略为 0",
  "share of the packages that should hold the nominal weight, where fills scatter; 50 % adds nothing":
    "装填有离散时，应有多少比例的包达到标明重量；50 % 则不另加",
  "smallest step the scale shows: fills are raised to a whole step; without it nothing is rounded":
    "秤的最小分度：装填量向上取到整分度；省略则不取整",
  "Use it before the tins come out: what to fill into each, how many the lot makes, and what stays in the tray. Type the sizes under each other, and beside each how many you want of it; a blank takes as many as fit. The sizes with a number come first, in their order, then the others in theirs.":
    "取出茶罐之前用：每罐装多少，这批能装几罐，盘里剩多少。规格逐行往下填，旁边填想要几包；空白则能装多少装多少。先装填了数目的规格，再装其余的，各按所列的次序。",
  "Finished tea is drier than the air and takes up water in a tin that leaks, so leave both moistures blank unless you know that yours dries out. A gain is no reason to fill less. With both, so much more goes in that the nominal weight is still there at the driest.":
    "成茶比空气干，罐子漏气时会吸潮，所以除非确知您的茶会变干，两个含水率都请空着。会增重并不是少装的理由。两个都填，就多装一些，使最干的时候仍有标明重量。",
  "No filling hits the same weight twice. Weigh ten fills, take their scatter from SAMPLEMEAN, and type it: the fill is raised until the share of packages that you ask for, 95 % when you ask for none, holds the nominal weight, if your fills scatter like a bell around it and their scatter is known. Measured with simulated fills: where 95 % was asked for, 91 of 100 packages held it with the scatter of five fills, 93 with that of ten and 95 with that of fifty; docs/how-sure.md has more. That margin is your choice, not a rule of law.":
    "没有两次装得一样重。称十次装填，用 SAMPLEMEAN 求离散，填在这里：装填量便往上加，直到您要求的比例（不填为 95 %）的包达到标明重量，前提是装填量按钟形分布，而且离散已知。用模拟的装填测过：要求 95 % 时，用五次装填的离散，100 包中有 91 包达到；用十次的有 93 包，用五十次的有 95 包；更多见 docs/how-sure.md。这个余量由您自己决定，不是法律的规定。",
  "Type readability, and the fill is a weight that your scale can show, the next step up. Missing counts packages that were wanted and that the tea did not reach for. Above nominal is what goes into the packages beyond what they state. No packages at all is an answer too.":
    "填了 readability，装填量就是秤显示得出的重量，取上面一个分度。missing 是想要而茶不够装的包数。above nominal 是装进包里而超出标明重量的部分。一包也装不成也是答案。",
  "Trade advice for goods that dry out, as New Zealand's Trading Standards gives it: set filled packages aside for seven days, weigh them again, and add what is missing to the fill. What a package must hold is the law of the place where it is sold; nothing here rules on it.":
    "对会变干的货品，新西兰 Trading Standards 的建议是：把装好的包放上七天，再称一次，缺多少就在装填量上加多少。一包必须有多重，由销售地的法律规定；这里不作任何裁定。",
  "The answer is a table, and a spill cannot stand inside a worksheet table: there ask for one cell, =INDEX(TEA.PACKPLAN(B2, A5:A6, , , , , , , FALSE), 1, 2) is the fill of the first size.":
    "答案是一张表，而工作表的“表格”里不能有溢出：在那里请只取一个单元格，=INDEX(TEA.PACKPLAN(B2, A5:A6, , , , , , , FALSE), 1, 2) 是第一种规格的装填量。",
  "Refused: one of the two moistures without the other, a driestMoisture above finishedMoisture, and a confidence below 50 %.":
    "会拒绝：两个含水率只填一个，driestMoisture 高于 finishedMoisture，以及 confidence 低于 50 %。",
  "960 g of an invented farm: six large tins, and the rest in small ones":
    "某个虚构茶园的 960 克：六个大罐，其余装小罐",
  "fills that scatter by 0.2 g are raised to 50.4 g": "离散 0.2 克的装填，提高到 50.4 克",

  // PACKCHECK
  "Net weights of filled packages against the nominal weight and the tolerance you type.":
    "装好的包的净重，与标明重量和您填的允差相比。",
  "net weights of the packages weighed, one for each; blank cells are passed over":
    "称过的各包的净重，每包一个；空白单元格跳过",
  "weight that the packages state": "包装上标明的重量",
  "how much a single package may be short, in the unit of the weights: look it up where you sell":
    "单独一包可以短少多少，单位与重量相同：请查销售地的规定",
  "how many packages the whole lot has; left out, those weighed are all": "整批有多少包；省略则称过的就是全部",
  "share of the packages that may be short by more than the tolerance; left out, 2.5 %":
    "短少超过允差的包所占比例的上限；省略为 2.5 %",
  'Use it when the tins are filled: weigh them net, type what they state and the tolerance of the law where you sell, and read the verdict, the first of these that holds: "a package short by more than twice the tolerance", "mean below the limit", "too many short by more than the tolerance", "agrees".':
    '茶罐装好之后用：称净重，填标明重量和销售地法律的允差，再读结论，即以下各条中最先成立的一条："a package short by more than twice the tolerance"（有一包短少超过两倍允差），"mean below the limit"（平均值低于限值），"too many short by more than the tolerance"（短少超过允差的包太多），"agrees"（相符）。',
  "It is your own check on your own scale, never a ruling, and agreeing says nothing about what may be sold. The law differs by country, and some ask that no package be short at all: then type 0% for shortShare and the smallest tolerance. Inspectors use a plan of their own and a verified scale.":
    "这是您用自己的秤做的自查，不是裁定，相符也不说明这些茶能不能卖。各国法律不同，有的要求一包都不得短少：那就把 shortShare 填为 0%，并填最小的允差。检查人员另有抽样办法，用的是检定过的秤。",
  "The tolerance is always yours to type. In the United Kingdom it is 9 % for 5 to 50 g, 4.5 g up to 100 g, 4.5 % up to 200 g, 9 g up to 300 g and 3 % up to 500 g, a percentage rounded up to 0.1 g; not more than 2.5 % of the packages may be short by more than it, and none by more than twice. Yours may differ.":
    "允差总要由您填写。在英国，5 到 50 克为 9 %，到 100 克为 4.5 克，到 200 克为 4.5 %，到 300 克为 9 克，到 500 克为 3 %，百分数向上取到 0.1 克；短少超过允差的包不得多于 2.5 %，超过两倍的一包也不得有。您那里可能不同。",
  "Weigh net: empty tins scatter more than fills. Weigh each empty tin before it is filled, or fill on the tared scale.":
    "要称净重：空罐之间的差别比装填还大。每个空罐装之前先称，或在去皮的秤上装。",
  "When only some packages of a lot of a hundred and more are weighed, type how many there are: the mean of a sample may lie a little below the nominal weight by chance, and the limit gives way by what 99.5 % of samples keep to. Measured with simulated fills: of 100 large lots that are right, 0.6 or fewer are said to be short; of 100 whose mean lies half the scatter of a fill below the nominal weight, ten weighed packages find 10, twenty 29 and fifty 80. In smaller lots the limit is the nominal weight itself, and the mean of ten weighed lies below it in half of the lots that are exactly right: weigh them all. docs/how-sure.md has more. Of few packages, a share of 2.5 % forbids even one: below 40 that were weighed, a single short one is too many.":
    "一批有一百包以上而只称了一部分时，请填总共有多少包：抽样的平均值可能碰巧略低于标明重量，限值便放宽到 99.5 % 的抽样都能达到的程度。用模拟的装填测过：100 个没有问题的大批中，被说成短少的不超过 0.6 个；平均值比标明重量低半个装填离散的 100 批中，称十包查出 10 批，二十包 29 批，五十包 80 批。批量较小时，限值就是标明重量本身，而恰好装足的批次中，有一半的十包平均值低于它：请全部称。更多见 docs/how-sure.md。包数不多时，2.5 % 连一包也不许：称过的不足 40 包，有一包短少就算太多。",
  "The answer is a row of six, and a spill cannot stand inside a worksheet table: there ask for the verdict alone, =INDEX(TEA.PACKCHECK(A2:A13, 50, 4.5), 1, 1). One single package of a large lot has no limit: verdict and limit are then #N/A.":
    "答案是一行六个，而工作表的“表格”里不能有溢出：在那里请只取结论，=INDEX(TEA.PACKCHECK(A2:A13, 50, 4.5), 1, 1)。大批中只称一包，没有限值：结论和限值便是 #N/A。",
  "four tins of an invented farm, one of them 0.8 g short": "某个虚构茶园的四罐，其中一罐短少 0.8 克",
} as const satisfies SomeTwins;
