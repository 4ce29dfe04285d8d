import type { SomeTwins } from "../../function-texts";

/** The pages of the functions of yields, by what they say in English. */
export const yields = {
  // OUTTURN
  "Finished weight as a share of the fresh weight it came from.": "成茶重量占所用鲜叶重量的比例。",
  "weight of the leaf as received, before anything was taken out": "收到时的鲜叶重量，还没有取出任何东西",
  "weight of the tea that was packed": "包装好的成茶重量",
  "The outturn of one lot. It holds everything at once: the water that left, the leaf that was sifted out, and the dust. Wet leaf gives a low outturn without any loss, so compare lots of different mornings with DRYRECOVERY instead.":
    "一批的制成率。它把一切都算在一起：走掉的水、筛出的茶叶，还有碎末。湿叶即使毫无损失，制成率也低，所以不同早晨的批次，请改用 DRYRECOVERY 来比较。",
  "For a season, divide the sum of the finished weights by the sum of the fresh weights: =TEA.OUTTURN(SUM(B:B), SUM(C:C)). The mean of the lots' outturns is another number, in which a small lot counts as much as a large one. Leave a lot out of both sums until it is finished.":
    "算整季，用成茶重量之和除以鲜叶重量之和：=TEA.OUTTURN(SUM(B:B), SUM(C:C))。各批制成率的平均值是另一个数，在其中小批与大批分量一样。未完成的批次，两个和都先不要算进去。",
  "Refused: more finished tea than fresh leaf, which comes from grams beside kilograms or from swapped cells.":
    "会拒绝：成茶比鲜叶还多，那是克与公斤混用，或单元格填反了。",
  "1250 g of fresh leaf and 275 g of tea: 22 %": "1250 克鲜叶，275 克成茶：22 %",

  // LEAFRATIO
  "How much fresh leaf went into one part of finished tea.": "每份成茶用了多少份鲜叶。",
  "Kilograms of fresh leaf for a kilogram of tea: the same fact as OUTTURN, said the other way round. The two multiplied give 1.":
    "一公斤成茶用几公斤鲜叶：与 OUTTURN 是同一件事，反过来说。两者相乘得 1。",
  "It rises with wet leaf as well as with losses. What water alone asks for at a given moisture is FRESHNEEDED for a finished weight of 1; what the ratio has beyond that is leaf and dust that were lost.":
    "叶子湿，鲜叶比会升高；有损失，也会升高。在某个含水率下，单是水分就要用掉的鲜叶，是成茶重量填 1 时的 FRESHNEEDED；鲜叶比超出它的部分，是损失的茶叶和碎末。",
  "1250 g of fresh leaf made 250 g of tea: 5 to 1": "1250 克鲜叶制成 250 克成茶：5 比 1",

  // DRYRECOVERY
  "Share of the fresh leaf's dry matter that is found again in the finished tea.": "鲜叶的干物质在成茶中找回的比例。",
  "weight of the leaf as received": "收到时的鲜叶重量",
  "moisture of the fresh leaf, wet basis": "鲜叶含水率，湿基",
  "weight of the finished tea": "成茶重量",
  "OUTTURN with the water taken out of it, so that lots plucked in dew and lots plucked in sun can stand beside each other. 1 less the answer is the share of dry matter that left with sift-outs, samples, dust and breathing.":
    "就是去掉了水的 OUTTURN，这样带露水采的批次和晴天采的批次可以放在一起比。1 减去答案，就是随筛出物、样品、碎末和呼吸走掉的干物质的比例。",
  "The answer may pass 1. No tea gains dry matter, so a reading was off. Look at the fresh moisture first: at 77 %, one point too many adds more than four points here. FINISHEDCHECK tells whether such an error explains it.":
    "答案可能超过 1。茶叶不会增加干物质，所以是某个读数不准。请先看鲜叶含水率：在 77 % 时，含水率多记一个百分点，这里就多出四个多百分点。这样的误差能不能解释得通，FINISHEDCHECK 会给出答案。",
  "Kept for the lots that went well, 1 less the answer, in the mean, gives the dryLoss for FINISHEDWEIGHT, and the lowLoss and highLoss alike for FINISHEDBAND and FINISHEDCHECK.":
    "把做得好的批次的答案留存下来，用 1 减去它，取平均，就是 FINISHEDWEIGHT 要的 dryLoss；FINISHEDBAND 和 FINISHEDCHECK 要的 lowLoss 和 highLoss 也都填它。",
  "Sift-outs and samples that were weighed go into removed, with their own moisture in removedMoisture: 20 g of dry sift-outs hold four times the dry matter of 20 g of fresh leaf. The answer is then about what went on, and 1 less it is the loss that nobody weighed, which is what FINISHEDBAND and FINISHEDCHECK ask for beside their own removed.":
    "称过的筛出物和样品填入 removed，它们自己的含水率填入 removedMoisture：20 克干的筛出物所含的干物质，是 20 克鲜叶的四倍。这时答案说的是继续往下做的那部分；1 减去答案，就是谁也没称到的损失，FINISHEDBAND 和 FINISHEDCHECK 在它们自己的 removed 之外要的正是它。",
  "weight of what was weighed and taken out on the way, such as sift-outs and samples; left out, 0":
    "一路上取出并称过的重量，如筛出物和样品；省略时为 0",
  "moisture of what was taken out, wet basis; left out, that of the fresh leaf":
    "取出物的含水率，湿基；省略时，等于鲜叶的含水率",
  "240 g of dry matter came in, 228 g went out: 95 %": "进来 240 克干物质，出去 228 克：95 %",

  // FINISHEDWEIGHT
  "Finished weight to expect from fresh leaf.": "由鲜叶预计成茶重量。",
  "moisture that the tea is dried down to, wet basis": "成茶要干燥到的含水率，湿基",
  "share of the dry matter that is lost on the way, sift-outs and dust included; 0 when left out":
    "一路上损失的干物质的比例，包括筛出物和碎末；省略时为 0",
  "Use it in the morning, to know how much tea the basket holds. Without dryLoss it is the most there can be: nothing sifted out, no dust, no sample.":
    "早上用，看这一筐叶子能出多少茶。省略 dryLoss，得到的是最多能有多少：没有筛出，没有碎末，也没有取样。",
  "dryLoss is everything that leaves as dry matter. Take it from your own past lots: 1 less DRYRECOVERY, over those that went well. When sift-outs have been weighed, use FINISHEDBAND, which takes them with their own moisture, and DRYRECOVERY with removed and removedMoisture for the rest of the loss.":
    "dryLoss 是以干物质走掉的一切。请取自自己以往的批次：用做得好的那些批，1 减去 DRYRECOVERY。筛出物若已称重，请改用 FINISHEDBAND，它按筛出物自己的含水率来算；其余的损失，用 DRYRECOVERY 加上 removed 和 removedMoisture 求得。",
  "Fresh moisture decides: at 76 %, one point up or down moves the answer by about 4 %. A moisture from a table or from last year gives an estimate, not a promise.":
    "关键在鲜叶含水率：在 76 % 时，上下差一个百分点，答案就变动约 4 %。从表上查来的或沿用去年的含水率，得出的是估计，不是保证。",
  "1000 g at 76 % holds 250 g of tea at 4 %": "1000 克含水 76 % 的鲜叶，能出 250 克含水 4 % 的成茶",
  "with 6 % of the dry matter lost, 235 g": "若损失 6 % 的干物质，则为 235 克",

  // FRESHNEEDED
  "Fresh leaf to pluck or buy for a finished weight.": "要做出一定重量的成茶，该采或该买多少鲜叶。",
  "weight of finished tea that is wanted": "想要的成茶重量",
  "Use it when an order is written down: how much leaf has to come in. For a finished weight of 1 it is the leaf ratio that this moisture and this loss ask for.":
    "记下订单时用：要进多少鲜叶。成茶重量填 1，得到的就是这个含水率和这个损失所要求的鲜叶比。",
  "Without dryLoss it is the least leaf that can do, with nothing sifted out. Type the loss of your own past lots (1 less DRYRECOVERY), and remember that leaf after rain needs more: at 76 %, one point wetter takes about 4 % more leaf.":
    "省略 dryLoss，得到的是最少要用的鲜叶，没有任何筛出。请填自己以往批次的损失（1 减去 DRYRECOVERY），还要记得雨后的叶子要多用一些：在 76 % 时，湿一个百分点，鲜叶就要多用约 4 %。",
  "235 g of tea at 4 % takes 1000 g of leaf, 6 % lost": "做 235 克含水 4 % 的成茶，损失 6 %，要用 1000 克鲜叶",

  // FINISHEDBAND
  "The finished weights that a lot can honestly come to: low, at no loss, high.":
    "一批茶合理的成茶重量：下限、无损失时、上限。",
  "weight of leaf taken out on the way, sift-outs and samples, as leaf; 0 when left out":
    "途中取出的茶叶重量，即筛出物和样品，按叶称重；省略时为 0",
  "moisture of that leaf when it was weighed; that of the fresh leaf when left out":
    "取出的茶叶称重时的含水率；省略时与鲜叶相同",
  "least share of the dry matter that is lost beside that, as dust and breathing; 0 when left out":
    "除此之外，干物质至少损失的比例，如碎末和呼吸；省略时为 0",
  "largest share that is lost beside that in a lot that goes well; no lower limit when left out":
    "做得好的一批在此之外最多损失的比例；省略则没有下限",
  "one standard uncertainty of each weight, that of removed leaf too, in its unit; 0 when left out":
    "每个重量（包括取出的茶叶）的一个标准不确定度，单位与重量相同；省略时为 0",
  "one standard uncertainty of the fresh moisture; one point (0.01) when left out, our assumption":
    "鲜叶含水率的一个标准不确定度；省略时为一个百分点（0.01），是我们的假定",
  "one standard uncertainty of the finished moisture; 0 when left out": "成茶含水率的一个标准不确定度；省略时为 0",
  "Use it while the lot is on its way, to know between which weights it should come out. The middle number is the weight if no dry matter were lost; it is not the weight to expect, for which FINISHEDWEIGHT takes your usual loss. FINISHEDCHECK holds the weight in the book against the same limits.":
    "一批还在做的时候用，看成茶该落在哪两个重量之间。中间的数是干物质毫无损失时的重量，不是预计的重量；预计重量请用 FINISHEDWEIGHT，它按平常的损失来算。FINISHEDCHECK 拿本上的重量与同样的界限相比。",
  "Weigh the sift-outs and samples and type them as removed, in the unit of the fresh weight. Type removedMoisture where they were weighed later and drier than the fresh leaf.":
    "请把筛出物和样品称出来，填入 removed，单位与鲜叶重量相同。如果是后来才称的，已比鲜叶干，请填 removedMoisture。",
  "There is no honest figure for lowLoss and highLoss that we could supply: they depend on your sifting and your hands. Take them from your own lots. List those that went well and were weighed with care, a dozen or more, and work out 1 less DRYRECOVERY for each, with its sift-outs as removed and their own moisture as removedMoisture. Leave lots out only for a reason that you knew at the time. The mean of these losses, not below 0, is your lowLoss and your highLoss alike: what the errors allow to either side comes on top, so that each error counts once.":
    "lowLoss 和 highLoss 我们给不出靠得住的数：它们取决于怎么筛，也取决于手上功夫。请取自自己的批次。列出做得好、称得仔细的批次，要十二批或更多；每批算出 1 减去 DRYRECOVERY，算时把筛出物填入 removed，筛出物自己的含水率填入 removedMoisture。只有当时就知道原因的批次，才可以不列。这些损失的平均（不低于 0），既填作 lowLoss，也填作 highLoss：误差向两边容许的幅度会另外加上，这样每个误差只算一次。",
  "Measured with simulated lots, with limits from 20 past ones and one point of error in the fresh moisture: a good lot was called wrong in 6 of 100, a lot that lost 10 % more was found in 66 of 100 and one that lost 15 % more in 94; with half a point of error, 10 % were found in 99. The smallest and the largest of the losses as limits would count the errors twice and find 12.":
    "用模拟的批次测得，界限取自 20 个以往批次，鲜叶含水率误差一个百分点：好的批次 100 批中有 6 批被说成不对；多损失 10 % 的批次，100 批中查出 66 批，多损失 15 % 的查出 94 批；误差为半个百分点时，多损失 10 % 的查出 99 批。若拿损失中最小的和最大的作界限，误差就算了两次，只查出 12 批。",
  "Errors are single standard uncertainties, and the limits stand two of them away. When freshMoistureError is left out it is one point (0.01). That figure is our own assumption, from no source: a maker who dries samples in an oven knows the moisture better, one who takes it from last year knows it worse. Type your own as soon as you have one, and 0 to take the moisture as exact. At 76 %, one point alone makes the band about 8 % wide to either side.":
    "误差都填一个标准不确定度，界限取在两个标准不确定度处。freshMoistureError 省略时为一个百分点（0.01）。这个数是我们自己的假定，没有出处：用烘箱烘样品的人，含水率知道得更准；沿用去年的人，就没有这么准。一有自己的数，就请填上；填 0 表示把含水率当作准确。在 76 % 时，单是一个百分点就使范围向两边各宽约 8 %。",
  "The answer is three cells beside each other, and a spill cannot stand inside a worksheet table: there ask for one of them, =INDEX(TEA.FINISHEDBAND(A2, B2, C2, , , 0, 10%), 1) for low, 2 and 3 for the others. Without highLoss the first cell is empty text.":
    "答案是相邻的三个单元格，而工作表的“表格”里不能有溢出：在那里请只取一个，=INDEX(TEA.FINISHEDBAND(A2, B2, C2, , , 0, 10%), 1) 是下限，另外两个用 2 和 3。省略 highLoss 时，第一个单元格是空文本。",
  "Refused: removed leaf that holds as much dry matter as the fresh leaf or more, a highLoss below lowLoss, and a moisture error above 20 points. The band says what weights can be true. It says nothing about how good the tea is.":
    "会拒绝：取出的茶叶所含干物质与鲜叶一样多或更多，highLoss 小于 lowLoss，以及含水率误差超过 20 个百分点。这个范围只说哪些重量可能属实，不说茶的好坏。",
  "950 g at 76 %, up to 10 % lost, one point of error in the fresh moisture":
    "950 克，含水 76 %，最多损失 10 %，鲜叶含水率误差一个百分点",
  "without highLoss there is no lower limit": "省略 highLoss，没有下限",

  // FINISHEDCHECK
  "Whether a finished weight fits the fresh leaf it came from.": "成茶重量与所用的鲜叶是否相符。",
  "Use it when the lot is packed and the book is filled in. The answer is one of four texts.":
    "茶叶包装好、本上填齐之后用。答案是四句话之一。",
  "“agrees”: the readings can all be true together. “more dry matter out than came in”: they cannot, even if nothing was lost and every error counted; a weight or a moisture is wrong, two lots were mixed, or the tea is not as dry as it was said to be. “less lost than expected”: possible, but better than lowLoss and the errors allow. “more lost than expected”: below what highLoss and the errors allow; look for sift-outs that were not written down, a spill, or fresh leaf weighed with dew on it.":
    "“agrees”（相符）：各个读数可以同时属实。“more dry matter out than came in”（出来的干物质比进来的多）：不可能同时属实，哪怕毫无损失、误差全都算上也不行；不是重量或含水率有误，就是混了两批，或者茶叶没有所说的那么干。“less lost than expected”（损耗比预期少）：有可能，但好过 lowLoss 与误差所容许的。“more lost than expected”（损耗比预期多）：低于 highLoss 与误差所容许的；请查一查是否有没记下的筛出物、洒落，或者鲜叶是带着露水称的。",
  "Without highLoss the last of these is never said: a weight of next to nothing would agree. Without lowLoss the third is never said.":
    "省略 highLoss，最后一句永远不会出现：重量几乎为零也算相符。省略 lowLoss，第三句永远不会出现。",
  "The wider the errors, the wider the limits. If a weight agrees with one point of fresh moisture error and not with 0, the book is neither right nor wrong: a better moisture would tell.":
    "误差填得越大，界限就越宽。如果鲜叶含水率误差取一个百分点时相符、取 0 时不符，这笔账就说不上对，也说不上错：要有更准的含水率才能分辨。",
  "The verdict is about the figures. It is no statement about the tea itself, nor about anyone's honesty.":
    "结论只说数字，不评茶叶本身，也不评任何人是否诚实。",
  "221 g lies between 198 and 260 g": "221 克在 198 与 260 克之间",
  "190 g lies below 198 g": "190 克低于 198 克",
  "268 g lies above 260 g, the most that an error of one point explains, counted twice":
    "268 克高于 260 克，那是一个百分点的误差按两倍计时最多能解释到的重量",

  // LEAFCOST
  "What the leaf and other costs come to for one unit of finished tea.": "每单位成茶的成本，鲜叶和其他费用都算在内。",
  "price of fresh leaf for one unit of weight, the unit of both weights":
    "鲜叶每单位重量的价格，两个重量也都用这个单位",
  "weight of the leaf that was paid for": "付了钱的鲜叶重量",
  "whatever else the whole lot cost: fuel, hands, packing; 0 when left out":
    "整批的其他一切费用：燃料、人工、包装；省略时为 0",
  "Use it when a lot is packed. The answer is a cost for each unit of finished tea, in the unit of the weights: kilograms with a price for a kilogram give the cost of a kilogram.":
    "一批包装好之后用。答案是每单位成茶的成本，单位就是重量的单位：重量用公斤，价格按每公斤，得出的就是每公斤的成本。",
  "otherCost is for the whole lot, not for a kilogram. With it the weights have to be in the unit that the price is for: a price for a kilogram beside weights in grams gives a wrong answer that looks like a number.":
    "otherCost 是整批的，不是每公斤的。填了它，重量就必须用价格所用的单位：价格按每公斤，重量却用克，会得出一个看着像样的错数。",
  "The cost is no more exact than the two weights are. Nothing is rounded, and nothing is refused because the lot looks dear.":
    "成本不会比那两个重量更准。不作取整，也不会因为一批茶看着贵就拒绝。",
  "5 kg at 60 and 90 for fuel and hands, 1.25 kg of tea": "5 公斤，单价 60，燃料和人工 90，成茶 1.25 公斤",

  // BUDCOUNT
  "How many buds make a weight, with the range from your samples, and how long the picking takes.":
    "一份重量合多少个芽，附由取样得出的范围，以及采摘要多久。",
  "how many buds each sample holds": "每份样各有多少个芽",
  "weights of the samples, beside their counts": "各份样的重量，与个数并列",
  "weight that is wanted, in the unit and the state of the samples: fresh with fresh, finished with finished":
    "想要的重量，单位和状态与样相同：鲜叶对鲜叶，成茶对成茶",
  "buds that all pickers together pick in an hour; without it no time is given":
    "所有采工合起来每小时采多少个芽；省略则不给时间",
  "how often the true number should lie inside the range; 95 % is 95 of 100":
    "真实的个数应有多大把握落在范围内；95 % 即 100 次中有 95 次",
  "Use it to tell the pickers how much is wanted, or a customer what is in a tin. Draw samples blindly from the whole basket, count and weigh each, and type how much you want. Four samples of a hundred say far more than one of four hundred, for only several can show how they scatter.":
    "用来告诉采工要采多少，或告诉客人一罐里有多少个芽。从整篮里随手取几份样，逐份数个数、称重量，再填想要的重量。四份各一百个，远胜一份四百个：只有几份并列，才看得出彼此相差多少。",
  "The range is what the samples scatter, not what the season does: buds grow heavier within days, so count anew for each flush. Measured with simulated baskets, with four samples of a hundred a range of 95 % held the true number in 95 of 100 where the basket was well mixed, and in 76 where its buds weigh 3 % more or less from spot to spot and all samples came from one: draw them from everywhere. docs/how-sure.md has more.":
    "范围只反映各份样的离散，不反映时节的变化：芽几天之内就会变重，每一轮都要重新数。用模拟的叶篮测过：取四份各一百个的样，篮里拌得匀时，95 % 的范围在 100 次中有 95 次包住真实的个数；各处的芽重量相差上下 3 %、而样都取自一处时，只有 76 次：请从各处取样。更多见 docs/how-sure.md。",
  "Fresh buds hold for fresh weight only. For finished tea, weigh finished buds, or turn the weight into fresh leaf with FRESHNEEDED first.":
    "鲜芽的个数只适用于鲜重。要算成茶，请称干芽，或先用 FRESHNEEDED 把重量换成鲜叶。",
  "pickingRate is buds an hour of all pickers together: the time is then a span, for a cell of the format [h]:mm. Nothing is rounded: show the numbers of buds without decimals.":
    "pickingRate 是所有采工合起来每小时的芽数：所得的时间是时长，单元格格式设为 [h]:mm。什么都不取整：芽数请显示为不带小数。",
  "One sample gives no range. Where so few or so uneven samples might as well weigh nothing, high is #N/A, and the others stand. A row without a count and without a weight is passed over.":
    "只有一份样就没有范围。样太少或太不整齐，连“一个芽没有重量”都不能排除时，上限为 #N/A，其余照给。个数和重量都空着的行跳过。",
  "The answer is a row of five, and a spill cannot stand inside a worksheet table: there ask for one of them, =INDEX(TEA.BUDCOUNT(A2:A5, B2:B5, D2), 1, 3) is the number of buds.":
    "答案是一行五个数，而工作表的“表格”里不能有溢出：在那里请只取一个，=INDEX(TEA.BUDCOUNT(A2:A5, B2:B5, D2), 1, 3) 是芽数。",
  "four samples of an invented farm: some 16,800 buds for 1500 g, and seven hours of picking at 2400 an hour":
    "某个虚构茶园的四份样：1500 克约合 16,800 个芽，每小时采 2400 个，要采七小时",
} as const satisfies SomeTwins;
