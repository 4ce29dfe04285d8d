/** 文件为什么没有打开，或单元格为什么没有改。 */
import type { Damage, DamageOfPart, FixedDamage } from "../../xlsx/damage";
import type { CellBond, FileRefusal, FixedFileRefusal, FormulaProblem } from "../../xlsx/refusals";

const saveAs = "请在制作它的程序中另存为 .xlsx 工作簿，再打开那一个。";
const saveOnce = "请在表格程序中保存一次。";
const inTheProgram = "请在表格程序中改";

const fixed: Readonly<Record<FixedFileRefusal, string>> = {
  empty: "文件是空的，一个字节也没有。请打开它所复制的原件。",
  "no .xlsx": `文件不是 .xlsx 工作簿。${saveAs}`,
  OpenDocument: `文件是 OpenDocument 文件。${saveAs}`,
  "binary .xlsb": `文件是二进制的 .xlsb 工作簿。${saveAs}`,
  "old .xls": `文件是旧式的 .xls 工作簿。${saveAs}`,
  "text or presentation": "文件是文档或演示文稿，不是工作簿。",
  "some archive": `文件是压缩包，但不是 .xlsx 工作簿。${saveAs}`,
  "archive without a workbook": "文件是压缩包，但不是 .xlsx 工作簿。",
  password: "文件有密码。请在制作它的程序中取消密码，再打开文件。",
  "macros alone": "文件里只有宏，没有单元格的工作表。请打开这些宏所属的工作簿。",
  "no sheet of cells": "文件里没有单元格的工作表。请打开有工作表的那个工作簿。",
  "many texts": "文件里不同的文本超过一百万条。",
  "many cells": "文件里的单元格超过一百万个，多于这里所能读取的。请把今天用不到的工作表移到另一个文件。",
  "many merges and the like": "文件里有一张工作表，合并、链接、行高等超过一百万处。请把需要的内容移到新文件。",
};

export function chineseFileRefusal(refusal: FileRefusal): string {
  if (typeof refusal === "string") return fixed[refusal];
  switch (refusal.kind) {
    case "damaged":
      return `文件已损坏：${damage(refusal.how)}。请从原处重新复制，或在制作它的程序中打开并保存一次。`;
    case "large when unpacked":
      return `文件解压后有 ${number(refusal.megabytes)} MB，最多读取 256 MB。请删去不需要的工作表或图片，或把文件分开。`;
    case "packed in another way":
      return `文件的压缩方式在这里不认识（方式 ${refusal.method}）。${saveOnce}`;
    case "leads out of it":
      return `文件里有一个部分，名称指向文件之外（${refusal.name}），没有表格程序会这样写。请不要打开它，请发来的人另给一个。`;
    case "many elements":
      return `文件的 ${refusal.path} 里的元素超过 ${number(refusal.most)} 个，多于这里所能读取的。请在表格程序中保存一次，或把文件分开。`;
    case "document type":
      return `文件在 ${refusal.path} 里声明了文档类型，这可能用来作恶，没有表格程序会这样写。${saveOnce}`;
    case "encoding":
      return `文件用 ${refusal.encoding} 写成（${refusal.path}），这里只读 UTF-8。${saveOnce}`;
    case "long text":
    case "long formula": {
      const what = refusal.kind === "long text" ? "文本" : "公式";
      return `文件里有一个${what}长 ${number(refusal.length)} 个字符，而单元格最多容纳 ${number(refusal.most)} 个。请在制作它的程序中缩短。`;
    }
    case "place outside": {
      const at = "row" in refusal.place ? `第 ${refusal.place.row} 行` : ` ${refusal.place.address} `;
      return `文件在${at}有内容，而工作表只有 ${number(refusal.rows)} 行、${number(refusal.columns)} 列。${saveOnce}`;
    }
    case "cell outside":
      return `单元格在工作表之外：工作表只有 ${refusal.rows} 行、${refusal.columns} 列。`;
    case "no such sheet":
      return `文件里没有单元格的工作表“${refusal.sheet}”。`;
    case "name of its own":
      return `工作簿里已有自己的名称 ${refusal.name}：请先改名。`;
    case "cell":
      return `${refusal.place} ${bond(refusal.bond)}。`;
    case "formula":
      return `${refusal.place} 的公式${problem(refusal.problem)}。`;
  }
}

const fixedDamages: Readonly<Record<FixedDamage, string>> = {
  "end missing": "缺少结尾",
  "directory not found": "找不到目录",
  "directory outside": "目录在文件之外",
  "directory broken off": "目录中断",
  "senseless length": "有一个长度不合理",
  "list of parts missing": "缺少各部分的清单 [Content_Types].xml",
};

/** 跟在部分的路径之后。 */
const damagesOfParts: Readonly<Record<Exclude<DamageOfPart, "two parts named">, string>> = {
  "not where it should be": "不在目录所说的位置",
  "cut off": "被截断",
  "over another": "与后面的部分重叠",
  "more than declared": "比所声明的长",
  "less than declared": "比所声明的短",
  "not what was written": "与写入时不同",
  "not unpacked": "无法解压",
  missing: "缺失",
  "long text": "有一段文本超过一百万个字符",
  "no XML": "不是格式正确的 XML",
};

function damage(how: Damage): string {
  if (typeof how === "string") return fixedDamages[how];
  switch (how.kind) {
    case "two parts named":
      return `有两个部分都叫 ${how.path}`;
    case "nested":
      return `${how.path} 的嵌套超过 ${how.deepest} 层`;
    case "sheet missing":
      return `缺少工作表“${how.sheet}”`;
    default:
      return `${how.path} ${damagesOfParts[how.kind]}`;
  }
}

function bond(of: CellBond): string {
  if (of === "table of inputs") return `属于模拟运算表，只能整体更改：${inTheProgram}`;
  if (of === "pivot table") return `属于数据透视表，由它填写：${inTheProgram}`;
  switch (of.kind) {
    case "spill":
      return `由 ${of.holder} 的公式填写：请改那一个`;
    case "array formula":
      return `属于 ${of.holder} 的数组公式，只能整体更改：${inTheProgram}`;
    case "merged":
      return `在合并的单元格下面：请改其中的第一个，${of.first}`;
    case "heading":
      return `是表格 ${of.table} 的标题，文件里写了两处：${inTheProgram}`;
    case "total":
      return `是表格 ${of.table} 的汇总，文件里写了两处：${inTheProgram}`;
  }
}

const fixedProblems: Readonly<Record<Extract<FormulaProblem, string>, string>> = {
  "not whole": "不完整，或写法不是表格程序所读的",
  "another workbook": "用到另一个工作簿：请在表格程序中写",
  "too long": "超过 8,192 个字符",
};

function problem(of: FormulaProblem): string {
  if (typeof of === "string") return fixedProblems[of];
  switch (of.kind) {
    case "sign":
      return `里有 ${of.sign}，无法从这里保存：请在表格程序中写`;
    case "sheet":
      return `用到工作表“${of.name}”，文件里没有它`;
    case "table":
      return `用到 ${of.reference}，文件的表格里没有它`;
  }
}

const number = (value: number): string => value.toLocaleString("zh");
