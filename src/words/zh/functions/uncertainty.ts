import type { SomeTwins } from "../../function-texts";

/** The pages of the functions of uncertainty, by what they say in English. */
export const uncertainty = {
  // SCALEERROR
  "Standard uncertainty of a weight, from what the scale shows and how well it repeats.":
    "重量的误差（一个标准不确定度），由秤的分度和重复性得出。",
  "smallest step that the scale shows, d": "秤能显示的最小分度，d",
  "standard deviation of repeated readings of one load, s; left out, 0":
    "同一份东西反复称，读数的标准差，s；省略时为 0",
  "how many readings of the load were averaged; left out, 1": "取了几次读数的平均值；省略时为 1",
  "TRUE when the dish was tared or weighed apart, so that the weight is a difference of two readings":
    "盘子去了皮，或另外称过，重量是两次读数之差时，填 TRUE",
  "largest error that the scale may have at this load, either way, a; left out, 0":
    "称这样的重量时，秤偏大或偏小最多可能差多少，a；省略时为 0",
  "Use it to get the weight errors that BALANCEFIT, FINISHEDBAND, FINISHEDCHECK and UNCERTAINTY ask for. The answer is one standard uncertainty, in the unit of your scale: the usual size of the error. Where readings scatter by half a step or more, 68 to 69 in 100 weights lie within it and 95 to 96 within twice as much. Where the step of the display alone makes it, 58 in 100 lie within it and all within twice as much.":
    "BALANCEFIT、FINISHEDBAND、FINISHEDCHECK 和 UNCERTAINTY 要填重量的误差，就用它来求。答案是一个标准不确定度，单位与秤相同，是误差通常的大小。读数离散达到半个分度或更多时，100 个重量中有 68 到 69 个的误差不超过它，95 到 96 个不超过它的两倍；只来自显示分度时，100 次中有 58 次落在它之内，全部落在它的两倍之内。",
  "The step of the display alone gives d/√12, a little under a third of a step. To learn the repeatability, put the same bag of leaf on the scale ten times, lift it off in between, and take STDEV of the readings. Where that shows one and the same number every time, leave it at 0. Ten readings know the scatter to about a quarter of itself (1/√18), and within twice the answer lie only 92 to 93 in 100 then: do it with two or three loads and take the mean.":
    "单是显示的分度，误差就有 d/√12，略小于分度的三分之一。想知道重复性，把同一袋茶叶放上秤称十次，每次之间拿下来，再对读数用 STDEV。若每次显示的都是同一个数，就填 0。称十次，离散程度只能知道到它自己的四分之一左右（1/√18），那时 100 次中只有 92 到 93 次落在答案的两倍之内：请用两三袋分别试，再取平均。",
  "Averaging several readings makes the part that scatters smaller. A display that shows the same number every time gains nothing by it; where readings scatter by 0.43 of a step or more, averaging takes the step out as well. Between, against a simulated scale of which s is well known, with 1 to 10 readings and s up to three steps, the answer is never more than 4 % too small nor 5 % too large. A scale that is off stays off.":
    "几次读数取平均，离散的那部分会变小。若每次显示的都是同一个数，取平均就没有用；若读数的离散达到分度的 0.43 或更多，取平均连分度的误差也会消去。介于两者之间，与模拟的秤相比（s 已知得很准，读数 1 到 10 次，s 不超过三个分度），答案偏小不超过 4 %，偏大不超过 5 %。秤本身的偏差，取平均纠正不了。",
  "For accuracy take what the maker or a test certificate states, or what a known weight shows. A scale that is off by the same share everywhere does no harm to outturns and ratios of weights taken on it; it does harm where weights of two scales meet.":
    "accuracy（准确度）请填厂家或检定证书上写的，或用已知重量试出来的。若秤处处按同一比例偏，用它称出的制成率和重量之比都不受影响；两台秤的重量用到一起时，就有影响了。",
  "Refused: a readability of 0 or blank, a negative repeatability or accuracy, and readings that are no whole number.":
    "会拒绝：分度为 0 或空白、重复性或准确度为负、读数次数不是整数。",
  "a scale that shows whole grams: 0.29 g for one reading": "显示到整克的秤：一次读数的误差为 0.29 克",
  "the same scale with a tared dish: 0.41 g": "同一台秤，盘子去皮：0.41 克",

  // UNCERTAINTY
  "How sure the result of another function is, and which input to measure better.":
    "另一个函数的结果有多可靠，哪个输入该测得更准。",
  'the function to look at, such as "FINISHEDWEIGHT"; TEA. may stand before it':
    '要看的函数，如 "FINISHEDWEIGHT"；前面可以带 TEA.',
  "its arguments in their order, a row or a column; a blank leaves an optional one out":
    "它的各个参数，依次排成一行或一列；可选的参数留空即为省略",
  "the standard uncertainty of each, in the same unit; 0 for an exact one":
    "各参数的误差（一个标准不确定度），单位与参数相同；准确的填 0",
  "Use it before you trust a decimal. You give the function, the numbers that you put into it and how good each of them is; the first row answers with the result and its own standard uncertainty. With simulated readings, 67 to 70 of 100 results lie within one such error of the truth, 95 to 96 within two.":
    "相信小数点后面的数之前，先用它看一看。写明函数、填进去的数，以及每个数有多准；第一行给出结果，以及结果自己的误差（一个标准不确定度）。用模拟的读数测得，100 个结果中有 67 到 70 个离真值不超过一个误差，95 到 96 个不超过两个误差。",
  "The last column says where the doubt comes from: the shares add up to 1, and the largest one is the reading that is worth measuring better. For finished weight it was the moisture of the fresh leaf in 100 of 100 kitchens where that is read to half a point or one, and in 97 where it is read more finely: a better scale changes next to nothing.":
    "最后一列说明不准从哪里来：各份额合计为 1，份额最大的那个读数最值得测得更准。对成茶重量来说，鲜叶含水率测到半个到一个百分点时，模拟的 100 家中有 100 家份额最大的是它；测得更细时，也有 97 家：换更好的秤几乎没有用。",
  "An error is one standard uncertainty. SCALEERROR gives it for a weight. One point of moisture is 0.01; above 0.2 it is refused, because 0.5 points are 0.005.":
    "误差是一个标准不确定度。重量的误差由 SCALEERROR 给出。含水率的一个百分点填 0.01；超过 0.2 会拒绝，因为 0.5 个百分点应填 0.005。",
  "Inputs count as independent of each other. Two weights from one scale that is off by the same share are not: for their ratio the true error is smaller than the one shown.":
    "各输入按互不相关计算。秤若按同一比例偏，用它称出的两个重量就不是互不相关的：它们之比的真实误差，比显示的小。",
  "It works for every function that takes single numbers and gives one smooth number. Counts, tables, lists and texts have no slope and are refused, with the names of the functions that can be used. Errors so large that the function bends within them need more than this rule.":
    "凡是输入单个的数、给出一个连续变化的数的函数，都可以用。计数、表、列表和文字没有斜率，会拒绝，并列出可以用的函数名。误差若大到函数在这段范围里已明显弯曲，只靠这个算法就不够了。",
  "A value is judged by the bounds of the function that is named, and the message names its argument there. While a reading is still blank the answer waits. A blank optional argument counts as its default; it may have an error of its own.":
    "每个值按所写函数的限制检查，提示中写的是那个函数的参数名。读数还空着时，答案等待。可选的参数留空，按默认值计；它也可以有自己的误差。",
  'The answer spills. For the one number in a worksheet table, ask for INDEX(TEA.UNCERTAINTY("FINISHEDWEIGHT", B2:B5, C2:C5, FALSE), 1, 3).':
    '答案会溢出。在工作表的“表格”里只要结果的误差这一个数，请用 INDEX(TEA.UNCERTAINTY("FINISHEDWEIGHT", B2:B5, C2:C5, FALSE), 1, 3)。',
  "500 g ± 3 g at 60 % ± 0.8 points: 200 g of dry matter ± 4.2 g, nearly all of it from the moisture":
    "500 克 ± 3 克，含水率 60 % ± 0.8 个百分点：干物质 200 克 ± 4.2 克，误差几乎全部来自含水率",
  "in a row, with TEA. before the name: an outturn of 20 % ± 0.04 points":
    "排成一行，名称前带 TEA.：制成率 20 % ± 0.04 个百分点",

  // SAMPLEMEAN
  "Mean of repeated readings with its range and standard error, and how many readings to take.":
    "重复读数的平均值、范围和标准误差，以及该读几次。",
  "readings of the same thing; blank cells are passed over": "同一样东西的各次读数；空白单元格跳过",
  "how near, either way, you want to know the mean; without it no number of readings is given":
    "想把平均值知道到上下多近；省略则不给读数的次数",
  "how often the true mean should lie inside the range; 95 % is 95 of 100":
    "真实的平均值应有多大把握落在范围内；95 % 即 100 次中有 95 次",
  "Use it wherever you measure one thing several times: oven moistures of one basket, hundred-bud weights, one bag on the scale ten times. The standard error is the number that weightError, freshMoistureError and the other errors of these functions ask for.":
    "凡是同一样东西量了几次都可以用：一篮叶的几个烘箱含水率、百芽重、一袋茶上秤十次。标准误差就是这些函数的 weightError、freshMoistureError 等误差所要的数。",
  "The range takes for granted that readings scatter by chance, as a bell does. Measured with simulated readings, a range of 95 % held the true mean in 95 of 100 when five readings scattered as a bell does, in 94 when they scattered evenly between two ends, and in 89 with a long tail to one side; docs/how-sure.md has more. It tells nothing of what all readings share: repeats of one dish on one scale say nothing about a scale that reads 1 % high, or about a basket that was not mixed.":
    "范围的前提是读数随机离散，呈钟形。用模拟的读数测过：五次读数呈钟形离散时，95 % 的范围在 100 次中有 95 次包住真实的平均值；在两端之间均匀离散时有 94 次；向一边拖着长尾时有 89 次；更多见 docs/how-sure.md。各次读数共有的偏差，它看不出来：一个盘在一台秤上重复称，说明不了秤是否偏高 1 %，也说明不了篮里有没有拌匀。",
  "Type halfWidth, in the unit of the readings, and the last cell says how many readings make the range that narrow, those taken included: it is at most the number of readings once the range is narrow enough. It takes the scatter seen so far as the true one. Five readings know the scatter to a third only, so take half of what is asked, and ask again: measured likewise, three readings at first made the range narrow enough in 52 of 100, five in 60 and ten in 73.":
    "填 halfWidth（单位与读数相同），最后一格就说要读几次才能使范围这么窄，已读的计算在内：范围够窄时，它不大于已有的次数。它把眼下看到的离散当作真的。五次读数对离散只知道到三分之一，所以先读所要求的一半，再问一次：同样测过，起初读三次的，100 次中有 52 次范围够窄，读五次的 60 次，读十次的 73 次。",
  "Blank cells are passed over, so that the list may be ruled ahead; a 0 is a reading. One reading gives its own value and nothing else. Where more than a million readings would be needed, that cell is #N/A and the others stand.":
    "空白单元格跳过，所以可以先把格子画好；0 是读数。只有一个读数，就只给它自己的值。要读一百万次以上时，那一格为 #N/A，其余照给。",
  "The answer is a row of seven, and a spill cannot stand inside a worksheet table: there ask for one of them, =INDEX(TEA.SAMPLEMEAN(A2:A11), 1, 4) is the standard error.":
    "答案是一行七个数，而工作表的“表格”里不能有溢出：在那里请只取一个，=INDEX(TEA.SAMPLEMEAN(A2:A11), 1, 4) 是标准误差。",
  "five hundred-bud weights of an invented farm; to know the mean to 0.1 g takes 32 of them":
    "某个虚构茶园的五个百芽重；要把平均值知道到 0.1 克，得称 32 份",
} as const satisfies SomeTwins;
