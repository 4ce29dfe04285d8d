import type { SomeTwins } from "../../function-texts";

/** The pages of the functions of units, by what they say in English. */
export const units = {
  // CONVERTWEIGHT
  "A weight in another unit: metric, pounds and ounces, jin and liang, kan and momme.":
    "把重量换成另一种单位：公制、磅和盎司、斤和两、贯和匁。",
  "amount in the unit it has now": "以现在的单位计的数量",
  "unit it has now, such as g, kg, lb, jin (克, 公斤, 斤 and others are read too)":
    "现在的单位，如 g、kg、lb、jin（克、公斤、斤等也能读）",
  "unit it is wanted in": "要换成的单位",
  "Use it where leaf is bought in one unit and tea is sold in another. All other functions take any unit, as long as it stays the same through the call, so convert before you mix.":
    "鲜叶按一种单位收、茶按另一种单位卖，就用它。其他函数什么单位都可以，只要同一个公式里始终一致，所以混用之前先换算。",
  "jin and liang are the market units of the mainland of China, 500 g and 50 g. In Taiwan 斤 is 600 g, and 斤 here is not that one: multiply by 600 and type g. 市斤 (500 g) and 公斤 (1 kg) are the same everywhere. “catty” and “tael” are refused: they are 500 g and 50 g in one place, and 600 g and 37.5 g or other weights in another. Find out which one is meant and type it in grams. “ton” is refused for the same reason; t is 1000 kg.":
    "jin（斤）和 liang（两）是中国大陆的市制单位，即 500 克和 50 克。在台湾，一斤是 600 克，这里的“斤”不是那一种：请乘以 600，以 g 输入。市斤（500 克）和公斤（1 公斤）到处都一样。“catty”和“tael”会拒绝：它们在一地是 500 克和 50 克，在另一地是 600 克和 37.5 克，或是别的重量。请问清指的是哪一种，换成克输入。“ton”因同样的原因也会拒绝；t 是 1000 公斤。",
  "oz is the ounce of the kitchen (28.35 g); ozt is the troy ounce of precious metals (31.10 g), a tenth heavier. kan and momme are 3.75 kg and 3.75 g.":
    "oz 是厨房里用的常衡盎司（28.35 克）；ozt 是贵金属用的金衡盎司（31.10 克），要重十分之一。kan（贯）和 momme（匁）是 3.75 公斤和 3.75 克。",
  "2.4 kg are 4.8 jin": "2.4 公斤是 4.8 斤",
  "units may be typed in Chinese": "单位可以用中文输入",

  // CONVERTAREA
  "An area in another unit: square metres, ares, hectares, acres, mu.":
    "把面积换成另一种单位：平方米、公亩、公顷、英亩、亩。",
  "unit it has now, such as m2, ha, acre, mu (公顷, 亩 and others are read too)":
    "现在的单位，如 m2、ha、acre、mu（公顷、亩等也能读）",
  "Use it to compare gardens whose papers are in different units, and before you work out a yield for an area.":
    "几处茶园的文书用的面积单位不同，要比较时用它；算单位面积产量之前，也先用它换算。",
  "acre is the international acre, 4046.8564224 m², built on the yard of 0.9144 m. Old American survey papers mean an acre that is larger by four millionths of it, which no garden notices, but a figure copied from a table may differ in the last digits.":
    "acre 是国际英亩，4046.8564224 m²，由 0.9144 米的码得来。美国旧测量文书上的英亩要大百万分之四，茶园里看不出差别，但从表上抄来的数，末几位可能不同。",
  "mu is the market unit of the mainland of China: 15 of them are a hectare, 666.67 m² each. A mu elsewhere is another area (about 761 m² in Hong Kong), and old deeds may mean a local one: type such an area in m2. 公亩 is the are, 100 m², and no mu.":
    "mu（亩）是中国大陆的市制单位：15 亩为一公顷，每亩 666.67 m²。别处的亩是另一种面积（香港约 761 m²），旧地契上的也可能是当地的亩：这样的面积请换成 m2 输入。公亩（are）是 100 m²，不是亩。",
  "45 mu are 3 hectares": "45 亩是 3 公顷",
} as const satisfies SomeTwins;
