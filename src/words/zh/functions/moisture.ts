import type { SomeTwins } from "../../function-texts";

/** The pages of the functions of moisture, by what they say in English. */
export const moisture = {
  // DRYBASIS
  "Moisture on dry basis: the water for each unit of dry matter.": "干基含水率：每单位干物质所含的水。",
  "moisture on wet basis, the trade's usual figure": "湿基含水率，即行内通用的那个数",
  "Use it to compare how much water two firings have really taken. Dry matter stays the same while leaf dries, so equal steps on dry basis are equal grams of water. Equal steps on wet basis are not: near the start one point is a lot of water, near the end it is little.":
    "用它来比较两次炒制实际各去掉了多少水。茶叶变干，干物质不变，所以干基降得一样多，去掉的水的克数也一样多。湿基就不是这样：刚开始时一个百分点是很多水，快干时一个百分点只是一点点水。",
  "The answer may pass 100 %: fresh leaf holds several times its dry matter in water. Give its cell a percent format.":
    "答案可以超过 100 %：鲜叶里的水是干物质的好几倍。请给答案的单元格设上百分比数字格式。",
  "A moisture of 100 % and more is refused, because such leaf would hold no dry matter to divide by.":
    "含水率达到或超过 100 % 会被拒绝，因为这样的叶没有干物质可以作除数。",
  "leaf at 36 % holds 56.25 g of water for each 100 g of dry matter":
    "含水 36 % 的茶叶，每 100 克干物质带着 56.25 克水",

  // WETBASIS
  "Moisture on wet basis, the trade's usual figure, from moisture on dry basis.":
    "由干基含水率换算成湿基含水率，即行内通用的那个数。",
  "water for each unit of dry matter; 300 % or 3 is possible": "每单位干物质所含的水；可以是 300 % 或 3",
  "Drying curves and laboratory papers often state moisture on dry basis. Turn such a figure into wet basis before you give it to any other function here: they all work on wet basis.":
    "干燥曲线和实验室的论文常用干基含水率。把这样的数交给这里的其他函数之前，先换成湿基：它们都按湿基计算。",
  "Percentages above 100 % are a sign that a figure is on dry basis. One below 100 % may be on either: ask before you trust it, 50 % on dry basis is only 33.3 % on wet basis.":
    "百分数超过 100 %，说明这个数是干基的。低于 100 % 的，两种都有可能：先问清楚再用，干基 50 % 只是湿基 33.3 %。",
  "Refused: a negative figure, and one above 25, which is 2500 %. No leaf holds that much water: 300 looks like 300 % typed without its sign.":
    "会拒绝：负数，以及大于 25（即 2500 %）的数。没有哪种叶子含这么多水：300 看着像漏了百分号的 300 %。",
  "60 g of water on 100 g of dry matter is 37.5 % of the whole 160 g":
    "100 克干物质带 60 克水，水占总重 160 克的 37.5 %",

  // OVENMOISTURE
  "Moisture of a sample from its weight before and after the oven.": "由样品进烘箱前后的重量得出它的含水率。",
  "sample and dish before the oven": "进烘箱前，样品连盘的重量",
  "sample and dish after the oven, once the weight has stopped falling": "烘到重量不再下降之后，样品连盘的重量",
  "the dish alone; leave it out when the scale was tared with the dish on it": "空盘的重量；秤放上盘后已去皮的，省略",
  "This is the measurement that all other moistures rest on. Dry a small sample at 103 °C until the scale shows the same weight twice, let it cool under a lid, and weigh. Weigh the dish first, or tare it away and leave dishWeight out.":
    "其他含水率都以这次测定为根据。取少量样品，在 103 °C 下烘到秤上两次读数相同，盖上盖子放凉，再称。盘要先称好，或者去皮并省略 dishWeight。",
  "Either both weights include the dish or neither does. A dish left in by mistake makes the leaf look far drier than it is.":
    "两个重量要么都带盘，要么都不带。不小心把盘算了进去，茶叶看上去就会比实际干得多。",
  "Use a scale that shows at least 0.01 g: on 5 g of leaf, 0.1 g is already two points of moisture. Take two samples and give both to OVENMEAN.":
    "请用至少能显示到 0.01 克的秤：5 克茶叶差 0.1 克，就已经是两个百分点的含水率。取两个样品，把两个结果一起交给 OVENMEAN。",
  "Refused: a weight after the oven above the weight before it, and one that is no more than the dish alone.":
    "会拒绝：烘后的重量大于烘前的重量，以及烘后的重量不大于空盘的重量。",
  "10 g of leaf in a 30 g dish; dish and leaf weigh 37.5 g when dry": "30 克的盘里放 10 克叶；烘干后连盘重 37.5 克",
  "8 g on a tared dish come down to 7.5 g": "盘已去皮，8 克烘到 7.5 克",

  // OVENMEAN
  "Mean of repeated oven moistures, given only when they agree.": "几次烘箱含水率的平均值，相符时才给出。",
  "moistures of samples of the same leaf, two or more; blank cells are passed over":
    "同一份茶叶各个样品的含水率，两个或更多；空白单元格会跳过",
  "largest difference allowed between two readings; for more it widens by itself; 0.3 points is 0.003":
    "两个读数之间允许的最大差距；读数更多时会自动放宽；0.3 个百分点写作 0.003",
  "Dry two samples of the same leaf and give both moistures. When they agree you get their mean; when they do not you get #N/A and the spread between them, and the honest thing is to dry two more and give all four.":
    "同一份茶叶烘两个样品，把两个含水率都填上。相符就得到平均值；不相符就得到 #N/A，并写明两者相差多少，这时老实的做法是再烘两个，四个一起填上。",
  "The limit that stands when you give none, 0.3 points, is how well two determinations on finished tea repeat. Fresh and half-dried leaf is far less even and needs a limit of its own: dry several samples of one well-mixed basket and see how far apart they come out.":
    "不填限值时按 0.3 个百分点，这是成茶两次测定能够重复到的程度。鲜叶和半干的叶远没有这样均匀，要另定限值：把一篮叶拌匀，烘几个样品，看结果相差多少。",
  "The limit is one for two readings: good ones differ by more 5 times in 100. More readings of the same leaf lie further apart, so the limit widens by itself, 1.20 times for three, 1.31 for four, 1.39 for five and 1.45 for six, and good sets of any size are refused in 5 of 100.":
    "限值是对两个读数说的：测得好的两个读数，100 次里有 5 次相差更多。同一份茶叶的读数越多，彼此就散得越开，所以限值会自动放宽：三个为 1.20 倍，四个 1.31 倍，五个 1.39 倍，六个 1.45 倍；这样，无论几个，好的读数 100 次里有 5 次被拒绝。",
  "Measured with readings that scatter as much as the limit is made for: a pair of which one is wrong by 1.5 times the limit is refused in 84 of 100, by twice the limit in 98, and two more readings bring a good pair that was refused to agree in 67 of 100.":
    "用模拟的读数测得，离散程度正合限值：两个读数中有一个错了限值的 1.5 倍，100 次中有 84 次被拒绝，错了两倍，有 98 次；好的两个读数被拒绝后，再加两个读数，100 次中有 67 次相符。",
  "Agreement says that the samples repeat, not that they are right. An oven that is too cool or a scale that is out gives the same wrong answer twice.":
    "相符只说明样品能重复，不说明结果是对的。烘箱温度不够，或者秤不准，两次得出的是同一个错数。",
  "Refused: a limit of more than 5 points, which no longer tells anything apart. One reading alone gives #N/A.":
    "会拒绝：限值超过 5 个百分点，那样什么也分辨不出来。只有一个读数时得到 #N/A。",
  "two samples of finished tea 0.2 points apart agree": "两个成茶样品相差 0.2 个百分点，相符",
  "three samples of fresh leaf with a limit of 2 points": "三个鲜叶样品，限值 2 个百分点",

  // MOISTURENOW
  "How moist the leaf is now, from its weight alone.": "只凭重量，得出茶叶现在的含水率。",
  "weight of the leaf at the start": "茶叶起始时的重量",
  "moisture of the leaf at the start, wet basis": "茶叶起始时的含水率，湿基",
  "weight of the same leaf now": "同一份茶叶现在的重量",
  "share of the dry matter lost since the start, as dust or sift-outs": "起始以来损失的干物质比例，如碎末或筛出物",
  "Weigh the leaf, and you know its moisture without an oven: the dry matter has stayed, so what the scale has lost is water. It works at every stage between the first weighing and the last.":
    "称一称茶叶，不用烘箱就知道含水率：干物质没有变，秤上少掉的就是水。从第一次称重到最后一次，哪个阶段都能用。",
  "Only water may have left between the two weighings. Leaf that was sifted out, sampled or spilt counts as water here and makes the answer too dry. After sifting, begin again from the weight after sifting, or give the share of dry matter that went as dryLoss.":
    "两次称重之间，走掉的只能是水。筛出、取样或洒掉的叶在这里都算成水，答案会偏干。筛过之后，请从筛后的重量重新开始，或者把损失的干物质比例填在 dryLoss 里。",
  "The answer is only as good as the moisture at the start, and the error grows on the way down: an error of one point at 76 % becomes four points near 5 %. Near dryness use an oven.":
    "答案准不准，全看起始含水率，而且误差越到后面越大：76 % 时差一个百分点，到 5 % 附近就成了四个百分点。快干时请用烘箱。",
  "The leaf may have gained weight: damp air and rain put water back. Refused: a weight now that is below the dry matter, since something other than water has left then.":
    "茶叶也可以变重：潮气和雨水会把水带回来。会拒绝：现在的重量低于干物质，因为那说明走掉的不只是水。",
  "520 g of leaf at 75 % now weighs 200 g": "520 克含水 75 % 的茶叶，现在重 200 克",
  "the same, with 2 % of the dry matter lost as dust": "同上，另有 2 % 的干物质成了碎末损失掉",

  // FRESHMOISTURE
  "Moisture the fresh leaf must have had, worked back from a finished lot.": "由一批成茶倒推鲜叶当初的含水率。",
  "weight of the fresh leaf": "鲜叶的重量",
  "weight of the finished tea made from all of it": "这些鲜叶全部制成成茶后的重量",
  "moisture of the finished tea, wet basis": "成茶的含水率，湿基",
  "share of the dry matter lost on the way: sift-outs, samples, dust, breathing":
    "途中损失的干物质比例：筛出物、样品、碎末、呼吸消耗",
  "Few makers put fresh leaf in an oven. Your own finished lots tell the moisture instead: work it out for several good lots of the same plot and season, and take the middle as the moisture to assume for the next one.":
    "做茶的人很少把鲜叶放进烘箱。自己做成的批次就能说出含水率：同一地块、同一季节，挑几批做得好的各算一次，取中间的数，作为下一批假定的含水率。",
  "Without dryLoss the answer is an upper bound: every gram of dry matter that was sifted out, sampled or lost as dust is taken for water. It is still the right figure to plan with, as long as the next lot is sifted in the same way.":
    "省略 dryLoss 时，答案是上限：凡是筛出、取样或成了碎末的干物质，每一克都被当成了水。只要下一批照样筛，用这个数来安排仍然是对的。",
  "Give the share of dry matter lost as dryLoss when you know it, and the answer is the moisture of the leaf itself.":
    "知道损失的干物质比例时，填在 dryLoss 里，答案就是鲜叶本身的含水率。",
  "Refused: more finished tea than the fresh leaf could have given if it had held no water at all. Are both weights in the same unit, and not swapped?":
    "会拒绝：成茶比鲜叶一点水都不含时所能得到的还多。两个重量是不是同一个单位？有没有填反？",
  "1250 g fresh gave 300 g at 5 %: at most 77.2 % fresh": "1250 克鲜叶做成 300 克成茶，含水 5 %：鲜叶含水至多 77.2 %",
  "the same lot, with 4 % of the dry matter lost on the way": "同一批，途中损失了 4 % 的干物质",

  // BLENDMOISTURE
  "Moisture of several batches put together.": "几批茶叶合在一起的含水率。",
  "weight of each batch, a row or a column": "每一批的重量，一行或一列",
  "moisture of each batch, wet basis, in the same order": "每一批的含水率，湿基，顺序相同",
  "Use it when charges of unequal dryness go into one wrap, or baskets of two plots into one pan. The heavier batch counts for more: the plain average of the moistures is right only when all batches weigh the same.":
    "几锅干湿不一的茶叶要包成一包，或者两个地块的几篮要下同一锅时，用它来算。重的一批分量更大：只有各批一样重，才可以把含水率简单平均。",
  "This is the moisture of the whole. Freshly mixed leaf is still uneven inside, and evens out only with time: one handful taken from it can be far off.":
    "这是整体的含水率。刚拌在一起的叶，里面还是不匀，要过些时候才会匀开：从中抓一把来测，可能差得很远。",
  "A row that is blank in both lists is passed over; while a row has only one of its two readings the answer waits. Lists of unequal length are refused.":
    "两边都空白的行会跳过；一行里两个读数只填了一个时，答案等待。重量和含水率的个数不同，会被拒绝。",
  "300 g at 60 % and 100 g at 40 %: nearer to the heavier one": "300 克含水 60 %，100 克含水 40 %：更接近重的那一批",

  // DRYMATTER
  "Weight of the dry matter in leaf of a known moisture.": "已知含水率的茶叶里干物质的重量。",
  "weight of the leaf on the scale": "茶叶在秤上的重量",
  "moisture of that leaf, wet basis": "这份茶叶的含水率，湿基",
  "Dry matter is what stays when the last water has gone. It is the same before and after a firing as long as no leaf is taken out, so it is the number to compare when two weighings do not seem to fit.":
    "干物质就是最后一点水也走掉之后留下的东西。只要没有取出茶叶，炒前炒后它都一样，所以两次称重好像对不上时，要比的就是这个数。",
  "When the dry matter after a firing is lower than before, leaf has fallen out, been sifted or been sampled, or one of the two moistures is off. When it is higher, a reading is wrong: drying makes no dry matter.":
    "炒后的干物质比炒前少，说明有叶掉了、筛掉了或取了样，或者两个含水率有一个不准。炒后反而多，说明有读数错了：干燥不会产生干物质。",
  "Refused: a weight of 0 or below, and a moisture of 100 % or more.":
    "会拒绝：重量为 0 或更低，以及含水率为 100 % 或更高。",
  "500 g at 60 % holds 200 g of dry matter": "500 克含水 60 % 的茶叶，有 200 克干物质",

  // WATER
  "Weight of the water in leaf of a known moisture.": "已知含水率的茶叶里水的重量。",
  "The water in a charge is what a firing works on. A loss of 30 % of the water is 30 % of this number, never of what the scale shows.":
    "炒茶，对付的就是这一锅里的水。去掉 30 % 的水，指的是这个数的 30 %，绝不按秤上读数算。",
  "Water and dry matter add up to the weight: WATER and DRYMATTER of the same leaf give what is on the scale. For how much has to go to reach a target, use WATERTOREMOVE, since some water always stays.":
    "水加干物质就是总重：同一份茶叶的 WATER 与 DRYMATTER 相加，正是秤上的读数。要知道到目标还得去掉多少，请用 WATERTOREMOVE，因为总有一些水留在叶里。",
  "500 g at 60 % holds 300 g of water": "500 克含水 60 % 的茶叶，有 300 克水",

  // RESTATECONTENT
  "A content stated at one moisture, restated to another moisture.": "把某一含水率下的含量，换算到另一含水率。",
  "what was found, as a share or in any unit for each unit of weight":
    "测得的含量：写成比例，或写成每单位重量含多少，单位不限",
  "moisture at which it was found, wet basis": "测得时的含水率，湿基",
  "moisture at which it is wanted, wet basis; 0 for dry matter": "要换算到的含水率，湿基；按干物质计填 0",
  "Ash, extract or a residue found in tea as it is and the same thing stated on dry matter are two different numbers. Restate one of them before you compare a laboratory's report with a limit or with another report.":
    "灰分、水浸出物或残留，按茶叶原样测得的数，和按干物质表示的数，是两个不同的数。拿化验报告去比限值或另一份报告之前，先把其中一个换算过来。",
  "Type 0 as toMoisture for dry matter. The drier the leaf, the higher the content, because the same amount stands in less weight.":
    "要按干物质计，toMoisture 填 0。叶越干，含量越高，因为同样的量落在更轻的叶里。",
  "It restates; it does not correct. What is driven off together with the water is not put back.":
    "它只换算，不修正。跟水一起跑掉的东西，不会补回来。",
  "Refused: a negative content and a moisture of 100 % or more.": "会拒绝：含量为负，以及含水率为 100 % 或更高。",
  "4.75 % ash in tea at 5 % moisture is 5 % of its dry matter": "含水 5 % 的茶，灰分 4.75 %，按干物质计为 5 %",
} as const satisfies SomeTwins;
