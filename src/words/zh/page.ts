import type { Fault, PageWords } from "../page";
import { chineseFileRefusal } from "./file-refusals";
import { chineseNotShown, chineseSavingRemark } from "./file-remarks";
import { chineseReason } from "./refusals";

const meanings: Readonly<Record<string, string>> = {
  "#DIV/0!": "这里除以了零或空白单元格",
  "#NAME?": "公式中有不认识的函数或名称：请看看拼写",
  "#REF!": "所指的单元格已不存在",
  "#NUM!": "没有数能作答",
  "#SPILL!": "答案要用旁边或下面的单元格：请清空它们",
  "#CYCLE!": "公式指向了它自己",
  "#VALUE!": "该是数的地方有文本，或公式不完整",
  "#N/A": "找不到要找的内容，或函数的参数太少或太多",
  "#NULL!": "公式中的两个区域没有共同的单元格",
};

/** 出了什么问题：“是空的”“是文本‘350 g’”。 */
function state({ is, value, reason }: Fault): string {
  if (is === "blank" || is === "missing") return "是空的";
  if (is === "text") return `是文本“${value}”`;
  if (is !== "error") return `是 ${value}`;
  return `显示 ${value}${reason === undefined ? "" : `（${reason}）`}`;
}

/** 有谁在等；没有则为空。 */
function waiters({ waiting, is }: Fault): string {
  if (waiting === undefined) return "";
  const { first, count } = waiting;
  if (is === "blank") return `有 ${count} 个单元格在等它`;
  return count === 1 ? `${first} 在等它` : `${first} 等 ${count} 个单元格在等它`;
}

function withWaiters(fault: Fault): string {
  const { is, reason } = fault;
  const who = waiters(fault);
  if (is === "formula") return who ? `${reason}（${who}）` : `${reason}`;
  return `${state(fault)}${who ? `：${who}` : ""}${reason === undefined || is === "error" ? "" : `。${reason}`}`;
}

const called = (label: string | undefined): string => (label === undefined ? "" : `（${label}）`);

/** 单元格地址之后：有名称时不空格。 */
const behindAddress = (label: string | undefined): string => called(label) || " ";

export const chinesePage: PageWords = {
  parts: {
    title: "茶叶物料平衡",
    workbooks: "工作簿",
    card: "炒茶卡",
    pane: "工作与检查",
    menu: "菜单",
    sort: "排序表格…",
    print: "打印炒茶卡",
    download: "下载 .xlsx",
    downloadNamed: "保存一份不用加载项的（手机也能用）",
    open: "打开 .xlsx…",
    ownFiles: "自己的文件…",
    back: "回到示例…",
    touchHelp: "滑动以滚动；点一下选中单元格，再点一下输入；长按并拖动选中一个区域。拖动单元格需要鼠标。",
    keyHelp: "按键：先按 Esc，再按 Tab 离开工作表。F6 从这里到工作表，再到工作面板；Shift+F6 返回。",
    keyHint: "先按 Esc，再按 Tab 离开工作表；F6 转到工作面板或页首。",
    file: "要打开的工作簿",
    line: "关于单元格",
    grid: "工作簿",
  },
  samples: { "one-lot": "一批茶", season: "一季" },
  engine: {
    addSheet: "添加工作表",
    allSheets: "所有工作表",
    zoomOut: "缩小",
    zoomIn: "放大",
    zoomTo: "缩放到此刻度",
    zoom: "缩放",
    cellName: "转到单元格",
    formula: "单元格的内容",
    others: "更多",
    furtherNotices: "其他通知",
  },
  progress: { looking: "正在查看改动", calculating: "正在计算", done: "已算完" },
  hint: "请改有底色的单元格：所有答案随之而变。",
  meanings,
  unknownFunction: (name, nearest) =>
    `没有函数 ${name}${nearest.length > 0 ? `；是否想用 ${nearest.join(" 或 ")}？` : "：请看看拼写"}`,
  colon: "：",
  goToCell: "转到此单元格",
  blankCell: "空白",
  moreWrong: (count) => `（另有 ${count} 个单元格有误）`,
  reason: chineseReason,
  fault: {
    afterAddress: (fault) =>
      fault.is === "formula" ? `：${withWaiters(fault)}` : `${behindAddress(fault.label)}${withWaiters(fault)}`,
    inShort: (fault) => `${behindAddress(fault.label)}${state(fault)}`,
    atCell: (fault) => (fault.is === "formula" ? withWaiters(fault) : `这里${withWaiters(fault)}`),
    waitsFor: (address, fault) =>
      fault.is === "formula"
        ? `在等 ${address}：${fault.reason}`
        : `在等 ${address}${called(fault.label)}，它${state(fault)}`,
    cellOf: (heading, name) => `${name} 的${heading}`,
  },
  printing: {
    withoutNumbers: (cause) => `炒茶卡上还没有数字。${cause === undefined ? "" : `${cause}。`}\n仍要打印吗？`,
    agree: "打印空卡",
    refuse: "不打印",
    printed: (moment) => `打印于 ${moment}`,
  },
  cancel: "取消",
  sample: {
    startAfresh: (sample) => `从示例“${sample}”重新开始？\n这里输入的内容会丢失；想留着请先下载。`,
    agree: "重新开始",
    refuse: "保留我的内容",
    shown: "这是示例；输入的内容会保存在这里。",
  },
  keeping: {
    kept: (moment) => `已保存在此浏览器中，${moment}`,
    notKept: "此浏览器不保存这里的内容：关闭页面前请先下载。",
    unreadable: "以前保存在这里的内容无法读取，所以显示示例。没有删除任何东西。",
    downloadKept: "下载保存的内容",
    nobodyServes: "提供此页面的程序已停止，现在打不开另一个工作簿。眼前的内容照常可用：请下载带走。",
    notMade: (reason) => `文件没有做成，什么也没有下载；内容还在这里。（${reason}）`,
    madeWithoutAddIn: (still) =>
      still.length === 0
        ? "已下载。函数就在文件里：启用编辑后，Excel 2024 或 Microsoft 365 不用加载项也能计算。"
        : `已下载，但这些函数仍需要加载项：${still.join("、")}。没有加载项时，它们保持现在的结果。`,
  },
  opening: {
    now: "正在打开工作簿…",
    tooLarge: "这个工作簿对此页面太大：所需内存超过了浏览器所能提供的。",
    failed: "工作簿打不开。提供此页面的程序还在运行吗？",
    paneFailed: "面板取不到。提供此页面的程序还在运行吗？",
  },
  file: { refused: chineseFileRefusal, onSaving: chineseSavingRemark },
  ownFile: {
    question: (name, notShown, { keptSince, canSaveInto }) => [
      `在这里打开“${name}”？页面用的是它自己保存的副本，${canSaveInto ? "在你保存到文件之前，" : ""}文件本身不会改变。`,
      "保存时交还同一个文件：改过的单元格、随之变化的结果，以及一个字节都不变的其他部分，无论这里是否显示。只改单元格：行、列和工作表都留在原处。",
      notShown.length > 0
        ? `文件中保留、但这里不显示的：${notShown.map(chineseNotShown).join("；")}。`
        : "此文件中的内容这里全部显示。",
      ...(keptSince === undefined
        ? []
        : [`这里已经保存着同名的文件，上次改动于 ${keptSince}：它保持不变，这个文件放在它旁边。`]),
    ],
    agree: "打开",
    reading: (name) => `正在读取“${name}”…`,
    notOpened: (name, reason) => `没有打开“${name}”。${reason}`,
    noRoom: (name) => `“${name}”对此页面太大：浏览器没有地方保存它。`,
    keepsNothing: "此浏览器不为此页面保存任何内容，所以这里打不开自己的文件。",
    tooLarge: "它对此页面太大：读取所需的内存超过了浏览器所能提供的。",
    notRead: "它无法作为 .xlsx 工作簿读取。",
    tooSlow: "读取超过两分钟，已经停止。",
    save: "保存文件",
    notSaved: (reason) => `没有保存；输入的内容还在这里。${reason}`,
    askIntoFile: (name) => `保存到“${name}”本身？文件现在的内容会被覆盖。也可以下载，文件就保持不变。`,
    intoFile: "保存到文件",
    asDownload: "下载",
    savedInto: (name, moment) => `已保存到“${name}”，${moment}`,
    notInto: (name, because) =>
      because === "changed"
        ? `“${name}”已经不是打开时的文件：别的程序改动过它。文件保持不变，输入的内容还在这里：请下载，再比较两者。`
        : because === "gone"
          ? `“${name}”已经不在原处。输入的内容还在这里：请下载。`
          : because === "no room"
            ? `磁盘上没有空间写入“${name}”，文件保持不变。输入的内容还在这里：请腾出空间再保存，或下载到别处。`
            : `浏览器不让此页面写入“${name}”，文件保持不变。输入的内容还在这里：请下载。`,
    kept: "此浏览器中自己的文件",
    changed: (day) => `${day} 改动`,
    remove: "移除",
    removing: (name) => `从此浏览器移除“${name}”？已输入但没有保存到文件的内容会丢失。磁盘上的文件不变。`,
    close: "关闭",
    looksNotSaved: "这种外观不会写入自己的文件，所以这里不提供：请在表格程序中设置。",
    onPageOnly: "只在此页面这样显示：自己的文件里，宽度、高度和隐藏的内容保持原样。",
    leadsTo: (place) => `通往 ${place}`,
    leadsNowhere: (place) => `此工作簿里没有 ${place}。`,
    staysInPlace:
      "在自己的文件里，只改单元格，不移动任何内容：否则文件的其他部分所说的行、工作表和名称就不再正确。请在表格程序中移动，再在这里打开文件。",
  },
  typed: {
    doubtful: (typed, readings) => `${typed} 可能是 ${readings.join(" 或 ")}，所以仍是文本：请输入其中一个`,
    readAs: (typed, plain, mark) => `${typed} 读作 ${plain}，${mark === "comma" ? "逗号" : "点"}后是小数`,
    readAsDay: (typed, day) => `${typed} 读作 ${day}`,
    staysText: (typed, isNoDay) =>
      `${typed} ${isNoDay ? "不是日历上的日子，所以" : "没有读作日期："}仍是文本。请按 2025-04-13 的样子输入`,
  },
  charts: {
    values: "值",
    nothing: (series) => `${series}：还没有内容。`,
    points: (series, kind, count, from, to) =>
      `${series}：${count} 个${kind === "dots" ? "点" : "柱"}，从 ${from} 到 ${to}`,
    beyond: (points) => `，超出图外的有 ${points}`,
  },
  sorting: {
    by: "排序依据",
    directions: { up: "小的、早的或 A 在前", down: "大的、晚的或 Z 在前" },
    agree: "排序",
    undo: "撤销",
    nothing: "表格中还没有可排序的行。",
    inOrder: "各行已是这个次序。",
    rows: (sheet, first, last) => `${sheet} 的第 ${first} 行至第 ${last} 行。空白排在最后。`,
    beside: (columns) => `连同表格旁边输入的内容：${columns}`,
    columns: (first, last) => (first === last ? `${first} 列` : `${first} 列至 ${last} 列`),
    done: (sheet, heading, direction) => `${sheet} 已按 ${heading} 排序，${direction === "up" ? "小" : "大"}的在前。`,
    lookers: (first, more) =>
      `${first}${more === 0 ? "" : ` 等 ${more + 1} 处`} 按行的位置取数，而不看行里是什么：排序后请到那里看看。`,
    refused: (refusal, at) => {
      switch (refusal.is) {
        case "hidden":
          return `第 ${refusal.row + 1} 行是隐藏的：请先显示它，免得有东西在看不见的地方移动。`;
        case "merged":
          return `${at} 与其他单元格合并了，它所在的行不能移动。`;
        case "spills":
          return `${at} 的公式还填着其他单元格，它们不能移动。`;
        case "goes by its place":
          return `${at} 随所在的行而定（${refusal.text}）：排序会使它改变，所以没有排序。`;
        case "reads other rows":
          return `${at} 取表格其他行的数（${refusal.text}）：排序会使它改变，所以没有排序。`;
        default:
          return `${at} 取 ${refusal.text}，它随各行的次序而定：排序会使它改变，所以没有排序。`;
      }
    },
  },
};
