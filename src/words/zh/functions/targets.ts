import type { SomeTwins } from "../../function-texts";

/** The pages of the functions of targets, by what they say in English. */
export const targets = {
  // TARGETWEIGHT
  "What the scale should read when leaf has reached a target moisture.": "茶叶达到目标含水率时，秤上应是多少。",
  "weight of the leaf now": "茶叶现在的重量",
  "moisture of the leaf now, wet basis": "茶叶现在的含水率，湿基",
  "moisture wanted, wet basis": "想要的含水率，湿基",
  "Put the charge back into the pan until the scale reads this number. It holds as long as only water leaves: take sift-outs and samples off the weight first.":
    "这一锅回锅再炒，炒到秤上是这个数为止。走掉的只是水，这个数才成立：筛出物和样品要先从重量里减去。",
  "A target wetter than the leaf is allowed, because it restates a weight to a standard moisture.":
    "目标可以比现在的叶更湿，因为那是把重量换算到一个标准含水率。",
  "The answer is as good as the moisture you start from: near the start one point wrong moves the reading by about four in a hundred. Try a moisture one point to either side, and see how far the target moves, before you trust the last gram.":
    "答案准不准，要看起始含水率：刚开始时差一个百分点，读数就会差百分之四左右。先看看它高一个、低一个百分点时目标重量各是多少，再谈最后一克靠不靠得住。",
  "320 g at 75 % weighs 200 g when it has come down to 60 %": "320 克含水 75 % 的茶叶，降到 60 % 时重 200 克",

  // FIRINGTARGET
  "What the scale should read when a charge has lost what it should.": "一锅茶去掉该去的量之后，秤上应是多少。",
  "weight of the charge before firing": "炒前这一锅的重量",
  "moisture of the charge before firing, wet basis": "炒前这一锅的含水率，湿基",
  "how much is to be lost: 30 % or 0.3; 30 points are 0.30": "要去掉多少：30 % 或 0.3；30 个百分点写作 0.30",
  'what the loss is a share of: "water", "weight", or "points" of moisture':
    '损失按什么算："water"（水）、"weight"（重量），或含水率的 "points"（百分点）',
  "Take the charge out of the pan when the scale reads this number. Weigh the whole charge, and shake the steam out of it first.":
    "秤上是这个数时就出锅。要称整锅，称之前先把热气抖散。",
  "Always say what the loss is of. The same percentage of the water, of the weight and in points of moisture gives three scale readings, and they lie far apart: LOSSMEANINGS shows all three. There is no usual meaning, so none is assumed.":
    "每次都要说清损失按什么算。同一个百分数，按水、按重量、按含水率的百分点算，会得出三个秤上读数，而且相差很远：LOSSMEANINGS 会把三个都列出来。没有哪一种是通行的算法，所以这里一种也不假定。",
  "A loss of the water leaves the most on the scale, the same loss of the weight less, and as points of moisture the least.":
    "按水算，秤上留得最多；按重量算，留得少一些；按含水率的百分点算，留得最少。",
  "It holds as long as only water leaves. Dust and broken bits that fall out of the pan make the scale read low while the leaf is still wet.":
    "走掉的只是水，这个数才成立。从锅里撒出去的碎末和断碎叶会让秤上读数偏低，叶其实还湿着。",
  "Refused: a loss of weight or of points that is larger than the moisture, since the leaf does not hold that much water; and a meaning that is left blank.":
    "会拒绝：按重量或按百分点算的损失大于含水率，因为叶里没有那么多水；以及“损失按什么算”留空。",
  "20 % of the water off 320 g at 75 %": "320 克含水 75 % 的茶叶，去掉水的 20 %",
  "20 % of the weight off the same charge": "同一锅，去掉重量的 20 %",
  "25 points off the same charge, from 75 % to 50 %": "同一锅，去掉 25 个百分点，从 75 % 到 50 %",

  // FIRINGMOISTURE
  "Moisture of a charge that has lost a share of its water, weight, or points.":
    "一锅茶按水、按重量或按百分点损失一部分之后的含水率。",
  "how much is lost: 30 % or 0.3; 30 points are 0.30": "去掉了多少：30 % 或 0.3；30 个百分点写作 0.30",
  "Use it to carry the moisture on from one firing to the next: the charge comes out at this moisture, and the next target starts from it. The weight plays no part.":
    "用它把含水率从这一次炒制接到下一次：这一锅出锅时就是这个含水率，下一个目标从它算起。与重量无关。",
  "A loss of 30 % of the water lowers the moisture by far less than 30 points, because the leaf gets lighter as well. That surprises many, and it is why the meaning of a loss is never assumed.":
    "去掉 30 % 的水，含水率下降远不到 30 个百分点，因为叶也跟着变轻了。许多人没想到这一点，所以损失按什么算，这里从不假定。",
  "When you have weighed the charge, MOISTURENOW tells what the moisture really is. This function tells what it should be.":
    "这一锅称过之后，实际的含水率由 MOISTURENOW 得出。本函数得出的是应有的含水率。",
  "Refused: a loss of weight or of points that is larger than the moisture, and a meaning that is left blank.":
    "会拒绝：按重量或按百分点算的损失大于含水率，以及“损失按什么算”留空。",
  "leaf at 75 % that has lost 20 % of its weight": "含水 75 % 的茶叶，去掉了重量的 20 %",
  "the same leaf, 20 points down": "同样的茶叶，降了 20 个百分点",

  // LOSSMEANINGS
  "The three meanings of one loss side by side: of the water, of the weight, in points.":
    "同一损失的三种含义并列：按水、按重量、按百分点。",
  "the loss whose meaning is in question: 30 % or 0.3": "含义不明的损失：30 % 或 0.3",
  "Somebody tells you to take the leaf down by so much percent and does not say of what. Put the charge in here and look at the three scale readings: see which of them can be what was meant, and ask about that one.":
    "有人叫你把茶叶去掉百分之几，却没说按什么算。把这一锅填进来，看看三个秤上读数：看哪一个说得通，就拿这一个去问他。",
  "Each row is one meaning: what the scale would read, what has gone, and the moisture left, on wet and on dry basis. The word in the first column is what FIRINGTARGET and FIRINGMOISTURE take as lossOf.":
    "每行是一种含义：秤上应是多少、去掉了多少，还有剩下的含水率，湿基和干基都有。第一列的词，就是 FIRINGTARGET 和 FIRINGMOISTURE 的 lossOf 要填的词。",
  "When the loss is larger than the moisture, it can only be meant of the water: the other two rows hold an error that says so, and the first still stands.":
    "损失大于含水率时，只可能是按水算：另外两行会显示错误并说明原因，第一行照样有效。",
  "20 % off 320 g at 75 %: from 272 g down to 177.8 g, by what it is meant of":
    "320 克含水 75 % 的茶叶去掉 20 %：看按什么算，从 272 克一直到 177.8 克",

  // WATERTOREMOVE
  "How much water has to leave before the leaf is at a target moisture.": "茶叶到目标含水率，还要去掉多少水。",
  "moisture wanted, wet basis, no wetter than now": "想要的含水率，湿基，不高于现在的含水率",
  "The number to wait for when you watch how much a tray has lost rather than what it weighs, and the work that a dryer or a fire has to do: two trays with the same water to remove take about the same heat, whatever they weigh.":
    "看的若是一盘茶轻了多少，而不是还有多重，等的就是这个数。它也是烘干机或炉火要干的活：两盘茶要去的水一样多，不管各重多少，用的热都差不多。",
  "It is more than the moistures' difference suggests. From 75 % to 60 % is 15 points but more than a third of the weight, because the points are counted on leaf that gets lighter.":
    "它比两个含水率之差看上去的要多。从 75 % 到 60 % 是 15 个百分点，去掉的却超过重量的三分之一，因为百分点是按越来越轻的叶算的。",
  "Weight less this answer is TARGETWEIGHT. It holds as long as only water leaves.":
    "重量减去这个答案，就是 TARGETWEIGHT。走掉的只是水，这个数才成立。",
  "Refused: a target wetter than the leaf, since there is nothing to remove then.":
    "会拒绝：目标比现在的叶更湿，因为那样就没有水要去了。",
  "320 g at 75 % loses 120 g on the way to 60 %": "320 克含水 75 % 的茶叶，降到 60 % 要去掉 120 克水",

  // DRYINGSTEPS
  "Scale reading, moisture and water off for each step from fresh leaf to finished tea.":
    "从鲜叶到成茶，每一步的秤上读数、含水率和去水。",
  "one target for each step, a row or a column": "每一步一个目标，一行或一列",
  'what the targets are, one word for all or a list: "moisture" to reach, or a loss on the step before of "water", of "weight", or in "points"; a blank is "moisture"':
    '各个目标的含义，用一个词管全部，或逐个列出："moisture"（含水率）是要达到的含水率；"water"（水）、"weight"（重量）或 "points"（百分点）是比上一步去掉多少；空白即 "moisture"',
  "what to call each step; a step without a name is called step 1, step 2 and so on":
    "每一步叫什么；没写名称的，按它是第几步叫 step 1、step 2（第一步、第二步），依此类推",
  "One table carries a lot from the start to the last drying. Type the targets under each other, each with its kind beside it, and read off what the scale should show at the end of every firing.":
    "一张表，从开头一直管到最后足干。把目标从上往下填，旁边写上各自的含义，每次炒完秤上应是多少，一看便知。",
  "The moisture of each row is carried on to the next, so a loss is always a loss on the step before. A wrap, in which the leaf rests and loses nothing, is a step with the same moisture again, or one with a loss of 0 and a word for what it is a loss of.":
    "每一行的含水率都接到下一行，所以损失总是相对上一步。包裹时茶叶静置，什么也不走，这一步就再填同样的含水率，或填损失 0，并写明是什么的损失。",
  "Every row holds the dry matter of the start. When leaf is sifted or sampled on the way, end the table there and begin a new one from the new weight.":
    "每一行的干物质都和起始时一样。中途筛过或取过样，这张表就到那里为止，再用新的重量另起一张。",
  "Nothing is rounded: set the number of decimals that your scale shows. A moisture that rises is refused, with the step named: begin a new table for leaf that was wetted. So is a loss of weight or of points that is larger than the moisture before it.":
    "不作舍入：请按自己的秤设小数位数。含水率上升会被拒绝，并指出是哪一步：叶弄湿了，请另起一张表。按重量或按百分点算的损失大于前一步的含水率，也会被拒绝。",
  "a quarter of the water off, down to 60 %, a wrap, and down to 20 %":
    "先去掉四分之一的水，再降到 60 %，包裹，最后降到 20 %",
  "moistures in a row, without the heading": "含水率排成一行，不带标题",
} as const satisfies SomeTwins;
