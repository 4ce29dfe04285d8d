import type { SomeTwins } from "../../function-texts";

/** The pages of the functions of charges, by what they say in English. */
export const charges = {
  // CHARGECOUNT
  "How many pan charges to make of a weight of leaf.": "一份茶叶该分成几锅。",
  "weight of the leaf to be fired": "要下锅炒的茶叶重量",
  "weight wanted for one charge": "每锅想要的重量",
  "weight that no charge may pass; without it there is no such limit": "任何一锅都不得超过的重量；省略则没有这个上限",
  "smallest step the scale shows; without it charges are equal parts and nothing is rounded":
    "秤的最小分度；省略则各锅等分，不作取整",
  "Use it before the first firing, on the weight that really goes to the pan: after airing, with sift-outs taken off. Type the load at which your pan works best, and the answer is the number of charges whose weight comes nearest to it.":
    "第一次炒之前用，填真正下锅的重量：摊放之后，并已扣除筛出物。每锅想要的重量，填这口锅炒得最好时的分量，答案就是使每锅最接近它的锅数。",
  "When two numbers of charges are equally near, you get the larger one: a pan that is a little light dries evenly, one that is too full steams the leaf. Type maxLoad where your pan has a limit that no charge may pass, and the number goes up until every charge keeps to it.":
    "两种锅数同样接近时，取多的那个：锅里略少一点，叶子干得匀；装得太满，叶子就被水汽闷住了。锅若有限度，任何一锅都不能超过，请填 maxLoad，锅数会往上加，直到每锅都不超过。",
  "With readability, the smallest step your scale shows, charges are counted in steps that you can weigh: CHARGESPLIT then gives the same number of charges with their weights.":
    "填了 readability（秤的最小分度），各锅就按秤称得出的分度来分：CHARGESPLIT 给出同样的锅数和各锅的重量。",
  "Refused: a weight that your scale cannot show, a maxLoad below panLoad, a panLoad below one step of the scale, and more than 10000 charges: look whether one side is in grams and the other in kilograms.":
    "会拒绝：秤显示不出的重量，小于 panLoad 的 maxLoad，不到一个分度的 panLoad，以及超过 10000 锅：请看是否一边用了克、一边用了公斤。",
  "936 g at about 320 g a pan makes 3 charges, of 312 g each": "936 克，每锅约 320 克，分 3 锅，每锅 312 克",
  "980 g makes 3 charges of 326.7 g": "980 克分 3 锅，每锅 326.7 克",
  "where no charge may pass 325 g, the same leaf makes 4": "若每锅不得超过 325 克，同样的茶叶要分 4 锅",

  // CHARGESPLIT
  "The weight of each pan charge, in steps that the scale can show.": "每锅称多重，按秤显示得出的分度来分。",
  "Weigh the charges out in this order before the pan is hot. The number of charges is that of CHARGECOUNT; the answer is a column with one weight for each of them.":
    "锅烧热之前，按这个次序把各锅称好。锅数与 CHARGECOUNT 的答案相同；答案是一列，每锅一个重量。",
  "Type readability, the smallest step your scale shows (1 for a kitchen scale that shows whole grams). Every charge is then a weight that you can really set on the scale, no two differ by more than one step, and together they are the whole weight to the last step. Without it the charges are equal parts, with as many decimals as it takes.":
    "请填 readability，即秤的最小分度（显示到整克的厨房秤填 1）。这样每锅都是秤上真正称得出的重量，任何两锅相差不超过一个分度，合起来正好是总重，一个分度也不差。省略它，各锅等分，除出来有几位小数就是几位。",
  "The answer spills over as many cells as there are charges, and a spill cannot stand inside a worksheet table. Put it beside the table, or ask for one charge in one cell: =INDEX(TEA.CHARGESPLIT(A2, 320, , 1), 1) is the first charge, which no other is heavier than.":
    "有几锅，答案就溢出到几个单元格，而工作表的“表格”里不能有溢出。请写在“表格”旁边，或者一个单元格只取一锅：=INDEX(TEA.CHARGESPLIT(A2, 320, , 1), 1) 是第一锅，没有哪一锅比它重。",
  "Refused: a weight that is no whole number of the scale's steps, with the nearest that are; and whatever CHARGECOUNT refuses. For pans of different sizes use SPLITWEIGHT.":
    "会拒绝：不是秤的分度整数倍的重量，并指出最接近的合适重量；以及 CHARGECOUNT 会拒绝的一切。几口锅大小不同时，请用 SPLITWEIGHT。",
  "938 g on a scale of whole grams makes 313, 313 and 312 g": "938 克，秤显示到整克，分成 313、313 和 312 克",
  "without readability, three equal parts": "省略 readability，分成三等份",

  // CHARGEPLAN
  "Every pan charge with its load and what the scale reads after each target.":
    "每一锅的重量，以及每到一个目标时秤上的读数。",
  'what the targets are, one word for all or a list: "moisture" to reach, or a loss on the step before of "water", of "weight", or in "points"; "moisture" when left out':
    '目标的含义，一个词管全部，或逐个列出："moisture"（要达到的含水率），或在上一步的基础上失去的 "water"（水）、"weight"（重量）、"points"（百分点）；省略时为 "moisture"',
  "The card for the pan: weigh out the load, fire until the scale shows the first reading, and so on along the row. One formula replaces CHARGESPLIT and a DRYINGSTEPS for each charge.":
    "这就是放在锅边的卡片：称好这一锅，炒到秤上显示第一个读数，再顺着这一行往下做。一个公式顶得上 CHARGESPLIT 加上每锅一个 DRYINGSTEPS。",
  "Loads are weights that your scale can show, and they add up to the weight exactly. Readings are not rounded: let the cells show as many decimals as your scale has. Each reading then still holds all the dry matter of its load, and a rounding never builds up from step to step.":
    "各锅都是秤显示得出的重量，加起来正好是总重。读数不取整：秤有几位小数，就让单元格显示几位。这样每个读数里都有这一锅的全部干物质，取整的误差不会一步步累积。",
  "The last row is the total, the reading if all the leaf lay on the scale together. It holds as long as only water leaves; when leaf is sifted or spilled between two firings, begin a new plan from the new weight.":
    "最后一行是合计，即所有茶叶一起放到秤上时的读数。只要走掉的只有水，它就成立；两次炒制之间筛过或洒了茶叶，请从新的重量另做一张锅次表。",
  "The answer spills, a row for each charge and one for the total, and a spill cannot stand inside a worksheet table. There ask for one cell of it: =INDEX(TEA.CHARGEPLAN(A2, B2, 320, D2:D4, E2:E4, , 1, FALSE), 1, 3) is the first charge after the first target.":
    "答案会溢出，每锅一行，另加合计一行，而工作表的“表格”里不能有溢出。在那里请只取一个单元格：=INDEX(TEA.CHARGEPLAN(A2, B2, 320, D2:D4, E2:E4, , 1, FALSE), 1, 3) 是第一锅在第一个目标之后的读数。",
  "Refused: what CHARGESPLIT refuses of the weight and the loads, and what DRYINGSTEPS refuses of the targets, such as a moisture that rises.":
    "会拒绝：总重和每锅重量方面 CHARGESPLIT 会拒绝的，以及目标方面 DRYINGSTEPS 会拒绝的，例如含水率不降反升。",
  "600 g in two pans: a fifth of the water off, then down to 60 %": "600 克分两锅：先去掉五分之一的水，再降到 60 %",
  "one target and no headings; the first charge is a step heavier": "一个目标，不要标题；第一锅重一个分度",

  // SPLITWEIGHT
  "A weight shared out in proportion, in steps the scale can show, with nothing left over.":
    "按比例分一份重量，每份都是秤显示得出的重量，分完不剩。",
  "weight to share out": "要分的重量",
  "what each part counts, in any unit: pan sizes, shares, or the leaf each grower brought":
    "每一份按多少算，单位不限：锅的大小、份额，或各户茶农送来的茶叶",
  "smallest step the scale shows": "秤的最小分度",
  "Use it where the parts are not equal: two pans of different size, or the finished tea of a lot that several growers brought leaf to. Portions may be in any unit, because only their proportion counts. The answer is a column in their order.":
    "各份不相等时用：两口锅大小不同，或几户茶农送叶合成一批，要分成茶。portions 用什么单位都行，因为只看彼此的比例。答案是一列，次序与 portions 相同。",
  "Each part is rounded down to a step of the scale, and the steps left over go, one each, to the parts that lost most by it; where two lost the same, the earlier one gets it. The parts add up to the weight to the last step, which rounding each by itself does not do.":
    "每份先向下取到整分度，剩下的分度一份加一个，加给取整时少得最多的几份；两份少得一样多时，给排在前面的。各份加起来正好是总重，一个分度也不差；各自四舍五入则做不到。",
  "A portion of 0 gets nothing, and a very small one may get 0. The answer spills, and a spill cannot stand inside a worksheet table: there use =INDEX(TEA.SPLITWEIGHT(F1, A2:A6, 1), 2) for the second part.":
    "按 0 算的一份什么也得不到，很小的一份也可能得 0。答案会溢出，而工作表的“表格”里不能有溢出：在那里请用 =INDEX(TEA.SPLITWEIGHT(F1, A2:A6, 1), 2) 取第二份。",
  "Refused: a weight that is no whole number of the scale's steps, a portion below 0 or blank between others, and portions that are all 0.":
    "会拒绝：不是秤的分度整数倍的重量，portions 中有小于 0 的、或夹在中间的空白，以及 portions 全部为 0。",
  "905 g for one large pan and two smaller ones, on a scale with steps of 5 g":
    "905 克分给一口大锅和两口小一些的锅，秤的分度为 5 克",
} as const satisfies SomeTwins;
