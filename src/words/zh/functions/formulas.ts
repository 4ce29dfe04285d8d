import type { SomeTwins } from "../../function-texts";

/** Formulas and lines of workings that hold words, by what they say in English. */
export const formulas = {
  "M = (before − after) / (before − dish)": "M = (烘前 − 烘后) / (烘前 − 盘)",
  "before − after": "烘前 − 烘后",
  "before − dish": "烘前 − 盘",
  "water / leaf": "水 / 叶",
  "mean of M when largest M − smallest M ≤ limit × qₙ / q₂": "最大的 M − 最小的 M ≤ 限值 × qₙ / q₂ 时，取 M 的平均值",
  "largest − smallest": "最大 − 最小",
  "1 − share": "1 − 干物质比例",
  "water / weight": "水 / 重量",
  "water = W × M": "水 = W × M",
  "c′ = c × (1 − to) / (1 − from)": "c′ = c × (1 − 换算到) / (1 − 测得时)",
  "c × (1 − to) / (1 − from)": "c × (1 − 换算到) / (1 − 测得时)",
  "water: W × (1 − M × l); weight: W × (1 − l); points: W × (1 − M) / (1 − M + l)":
    "按水：W × (1 − M × l)；按重量：W × (1 − l)；按百分点：W × (1 − M) / (1 − M + l)",
  "water × l": "水 × l",
  "W − off": "W − 去掉的",
  "water: M × (1 − l) / (1 − M × l); weight: (M − l) / (1 − l); points: M − l":
    "按水：M × (1 − l) / (1 − M × l)；按重量：(M − l) / (1 − l)；按百分点：M − l",
  "weight off = W − reading": "去掉的重量 = W − 读数",
  "water off = W × (M − Mt) / (1 − Mt)": "去水 = W × (M − Mt) / (1 − Mt)",
  "each step: W′ = W × (1 − M) / (1 − M′), with M′ the target or what the loss leaves":
    "每一步：W′ = W × (1 − M) / (1 − M′)，M′ 是目标，或损失之后剩下的含水率",
  "the n that brings W / n nearest to the pan load; a tie takes the larger n":
    "使 W / n 最接近每锅想要的重量的 n；同样接近时取大的 n",
  "W / load": "W / 每锅想要的重量",
  "K = W / d = q × n + r: the first r charges weigh (q + 1) × d, the others q × d":
    "K = W / d = q × n + r：前 r 锅重 (q + 1) × d，其余各锅重 q × d",
  "load 1 + load 2 + … = W": "第 1 锅 + 第 2 锅 + … = W",
  "loads as in CHARGESPLIT; each step W′ = W × (1 − M) / (1 − M′), as in DRYINGSTEPS":
    "各锅重量同 CHARGESPLIT；每一步 W′ = W × (1 − M) / (1 − M′)，同 DRYINGSTEPS",
  "load × (1 − M)": "每锅重 × (1 − M)",
  "load 1 + load 2 + … = total": "第 1 锅 + 第 2 锅 + … = 合计",
  "K × pᵢ / Σp steps each, rounded down; the steps left over go to the largest remainders":
    "每份 K × pᵢ / Σp 个分度，向下取整；余下的分度给余数最大的几份",
  "part 1 + part 2 + … = W": "第 1 份 + 第 2 份 + … = W",
  "N = F(1 − Mf) − S(1 − Ms); P₀ = N / (1 − Mp); u_N² = ((1 − Mf)u_W)² + ((1 − Ms)u_S)² + (g u_Mf)², with u_S = u_W where leaf was removed, else 0, and g = F − S where Ms is left out, else F; r² = (u_N / N)² + (u_Mp / (1 − Mp))² + (u_W / P₀)²; high = P₀(1 − lowLoss)(1 + 2r); low = P₀(1 − highLoss)(1 − 2r)":
    "N = F(1 − Mf) − S(1 − Ms)；P₀ = N / (1 − Mp)；u_N² = ((1 − Mf)u_W)² + ((1 − Ms)u_S)² + (g u_Mf)²，取出过茶叶时 u_S = u_W，否则 u_S = 0，省略 Ms 时 g = F − S，否则 g = F；r² = (u_N / N)² + (u_Mp / (1 − Mp))² + (u_W / P₀)²；high（上限） = P₀(1 − lowLoss)(1 + 2r)；low（下限） = P₀(1 − highLoss)(1 − 2r)",
  "P > P₀(1 + 2r): more dry matter out than came in; P > high: less lost than expected; P < low: more lost than expected; else agrees. P₀, r, high and low as in FINISHEDBAND":
    "P > P₀(1 + 2r)：出来的干物质比进来的多；P > high：损耗比预期少；P < low：损耗比预期多；否则相符。P₀、r、high（上限）和 low（下限）同 FINISHEDBAND",
  "(price × F + other) / P": "(单价 × F + 其他费用) / P",
  "price × F": "单价 × F",
  "(leaf + other) / P": "(鲜叶成本 + 其他费用) / P",
  "water off = W₁M₁ − W₂M₂ − r·m; removed = r(1 − m); unaccounted = D₁ − D₂ − r(1 − m); kept = D / D of the first row; first weight = last weight + water off + leaf removed + unaccounted; first dry matter = last dry matter + dry matter removed + unaccounted":
    "去水 = W₁M₁ − W₂M₂ − r·m；取出的干物质 = r(1 − m)；去向不明 = D₁ − D₂ − r(1 − m)；保留 = D / 第一行的 D；最初重量 = 最后重量 + 去水 + 取出茶叶 + 去向不明；最初干物质 = 最后干物质 + 取出干物质 + 去向不明",
  "P × (1 − Mp) / (F × (1 − Mf) − S × (1 − Ms)); Ms left out is Mf":
    "P × (1 − Mp) / (F × (1 − Mf) − S × (1 − Ms))；省略 Ms 时为 Mf",
  "D₁ − Dₙ − removed": "D₁ − Dₙ − 取出的干物质",
  "water off = ΣW₋₁M₋₁ − WM − rm; unaccounted = ΣD₋₁ − D − r(1 − m)":
    "去水 = ΣW₋₁M₋₁ − WM − rm；去向不明 = ΣD₋₁ − D − r(1 − m)",
  "minimise γ = Σ(fitted − read)² / error², where (1 − ℓ)·W₁(1 − M₁) = W₂(1 − M₂) + r(1 − m) from each row to the next; z = |fitted − read| / its standard deviation; p = probability that χ² with as many degrees of freedom as balances passes γ":
    "使 γ = Σ(平差值 − 读数)² / 误差² 最小，同时每一行到下一行都满足 (1 − ℓ)·W₁(1 − M₁) = W₂(1 − M₂) + r(1 − m)；z = |平差值 − 读数| / 其标准差；p = 自由度等于平衡个数的 χ² 超过 γ 的概率",
  "Σ((fitted − read) / error)²": "Σ((平差值 − 读数) / 误差)²",
  "each row against the next": "每一行与下一行",
  "outturn = Σ finished / Σ fresh; leaf ratio = Σ fresh / Σ finished; finished per area = Σ finished / area; each over the finished lots of the group":
    "制成率 = Σ 成茶 / Σ 鲜叶；鲜叶比 = Σ 鲜叶 / Σ 成茶；单位面积产量 = Σ 成茶 / 面积；都只算这一组已完成的批次",
  "P / F, F / P, P / area, P / all": "P / F，F / P，P / 面积，P / 全部成茶",
  "row by row": "逐行计算",
  "expected ± t × u; even ± t × v; expected": "预计 ± t × u；均值 ± t × v；预计",
  "expected b·x₀, b = Σy/Σx; the range holds b·x₀ ± t(n − 1)·s·√(x₀ + x₀²/Σx), s² = Σ((y − bx)²/x)/(n − 1), and m·x₀ ± t(n − 1)·d·x₀·√(1 + 1/n), m the mean of y/x and d its standard deviation":
    "预计 b·x₀，b = Σy/Σx；范围包住 b·x₀ ± t(n − 1)·s·√(x₀ + x₀²/Σx)，s² = Σ((y − bx)²/x)/(n − 1)，以及 m·x₀ ± t(n − 1)·d·x₀·√(1 + 1/n)，m 是 y/x 的平均值，d 是它的标准差",
  "r = ln(P / F); z = 0.6745 × (r − median) / MAD, MAD the median of |r − median|; flagged when |z| > limit":
    "r = ln(P / F)；z = 0.6745 × (r − 中位数) / MAD，MAD 是 |r − 中位数| 的中位数；|z| > 限值时标出",
  "(r − median) / unit": "(r − 中位数) / 常见距离",
  "−limit ≤ z ≤ limit": "−限值 ≤ z ≤ 限值",
  "u² = k(r + s²/n) + a²/3, with k = 2 when tared, else 1; r = d²/12 × (1 − 5.5 s²/d²)² while 5.5 s² is below d², else 0":
    "u² = k(r + s²/n) + a²/3，去皮时 k = 2，否则 k = 1；5.5 s² 小于 d² 时 r = d²/12 × (1 − 5.5 s²/d²)²，否则 r = 0",
  "√(k × one + a² / 3)": "√(k × 一次读数的平方 + a² / 3)",
  "u² = Σ(cᵢ × uᵢ)², with cᵢ the slope of the result along input i; share of variance = (cᵢ × uᵢ)² / u²":
    "u² = Σ(cᵢ × uᵢ)²，cᵢ 是结果随输入 i 变化的斜率；方差份额 = (cᵢ × uᵢ)² / u²",
  "f(values)": "f(各值)",
  "each input’s part of the whole": "各输入占总和的部分",
  "value × (grams in one from) / (grams in one to)": "value × (一个 from 的克数) / (一个 to 的克数)",
  "value × from / to": "value × from 的量 / to 的量",
  "value × (square metres in one from) / (square metres in one to)":
    "value × (一个 from 的平方米数) / (一个 to 的平方米数)",
  "start + k × interval, for k = 1 … ⌈duration / interval⌉ − 1": "开始 + k × 间隔，k = 1 … ⌈时长 / 间隔⌉ − 1",
  "⌈duration / interval⌉ − 1": "⌈时长 / 间隔⌉ − 1",
  "start + interval": "开始 + 间隔",
  "start + k × interval": "开始 + k × 间隔",
  "w₁ = Σw / Σc; buds = W / w₁; low, high = W / (w₁ ± t(n − 1) × u), u = s / √Σc, s² = Σ((w − w₁c)² / c) / (n − 1); time = buds / rate / 24":
    "w₁ = Σw / Σc；芽数 = W / w₁；low、high = W / (w₁ ± t(n − 1) × u)，u = s / √Σc，s² = Σ((w − w₁c)² / c) / (n − 1)；时间 = 芽数 / 每小时芽数 / 24",
  "buds / rate / 24": "芽数 / 每小时芽数 / 24",
  buds: "芽数",
  "fill = N × (1 − Md) / (1 − Mf) + z × s, raised to a step of the scale; units = as many as wanted, or ⌊rest / fill⌋":
    "装填量 = N × (1 − Md) / (1 − Mf) + z × s，向上取到秤的分度；包数 = 想要的包数，或 ⌊余量 / 装填量⌋",
  "d × steps": "d × 分度数",
  "units × fill = tea": "包数 × 装填量 = 茶",
  "mean ≥ limit; short: N − w > T; far short: N − w > 2T; limit = N, or N − t₀.₉₉₅(n − 1) × s / √n for a sample of 100 packages and more":
    "平均值 ≥ 限值；短少：N − w > T；严重短少：N − w > 2T；限值 = N，对 100 包以上的抽样则为 N − t₀.₉₉₅(n − 1) × s / √n",
  "a = w × o; U = Σ(opening, in) − Σ(out, closing); u² = Σ((o × u_w)² + (w × u_o)²); agrees when |U| ≤ z × u":
    "a = w × o；U = Σ(期初, 入) − Σ(出, 期末)；u² = Σ((o × u_w)² + (w × u_o)²)；|U| ≤ z × u 时相符",
  "in − out": "收 − 付",
  "x̄ ± t(n − 1) × s / √n, s² = Σ(x − x̄)² / (n − 1); needed: the least N ≥ 2 with t(N − 1) × s / √N ≤ halfWidth":
    "x̄ ± t(n − 1) × s / √n，s² = Σ(x − x̄)² / (n − 1)；needed：使 t(N − 1) × s / √N ≤ halfWidth 的最小的 N ≥ 2",
  "due = end of the round before + rest; the firing that could start first is next, at the first moment that is not before it is due, has a free pan and leaves it clear of the break; ties to the earlier due, then the lower charge":
    "该下锅的时刻 = 上一轮结束 + 静置；下一个炒的是能最先开始的一锅，在不早于该下锅、有空锅、整次炒制不碰休息的最早时刻；同时的先炒该下锅早的，再先炒锅号小的",
  "charges × rounds": "锅数 × 轮数",
  "charges × minutes": "锅数 × 分钟",
  count: "次数",
  "start + firing = end": "开始 + 炒制 = 结束",
  "early = t + x × (W − τ) / (W₋ − W); late = t + x × ln((W − E′) / (τ − E′)) / ln((W₋ − E′) / (W − E′)), E′ = (E + τ) / 2; likely = t₁ + (t − t₁) × (ln Rτ / ln R)^(1/n), R = (W − E) / (W₁ − E); without E, W = W₁ − b × (1 − e^(−k(t − t₁)))":
    "最早 = t + x × (W − τ) / (W₋ − W)；最晚 = t + x × ln((W − E′) / (τ − E′)) / ln((W₋ − E′) / (W − E′))，E′ = (E + τ) / 2；大约 = t₁ + (t − t₁) × (ln Rτ / ln R)^(1/n)，R = (W − E) / (W₁ − E)；没有 E 时 W = W₁ − b × (1 − e^(−k(t − t₁)))",
  "t + minutes": "t + 分钟",
  "t₁ + minutes": "t₁ + 分钟",
} as const satisfies SomeTwins;
