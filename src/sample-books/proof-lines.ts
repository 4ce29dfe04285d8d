import { textInFormula } from "../words/in-formula";
import type { PartsWords } from "../words/samples";
import { columnHead, columnHeadLeft, label, remark, result } from "./look";
import type { SheetBuilder } from "./sheet-builder";

/** An answer of a sheet, and the same from what was typed there, without a TEA function. Both without an equals sign. */
export type ProofLine = readonly [name: string, told: string, plain: string];

const firstRow = 6;

/** A line for each answer with its difference, and above them whether all agree. */
export function proofLines({ put, widths }: SheetBuilder, lines: readonly ProofLine[], words: PartsWords): void {
  const said = words.proof;
  const heads = { B: said.told, C: said.plain, D: said.difference, E: "" };
  const [agrees, lookHere] = [said.agrees, said.lookHere].map(textInFormula);
  put("A5", said.what, columnHeadLeft);
  for (const [column, name] of Object.entries(heads)) put(`${column}5`, name, columnHead);
  for (const [index, [name, told, plain]] of lines.entries()) {
    const row = firstRow + index;
    const [one, other] = [`B${row}`, `C${row}`];
    const asShare = `ABS(${one}-${other})/MAX(1,ABS(${one}),ABS(${other}))`;
    put(`A${row}`, name, label);
    put(one, `=${told}`, result("General"));
    put(other, `=${plain}`, result("General"));
    put(
      `D${row}`,
      `=IF(AND(ISNUMBER(${one}),ISNUMBER(${other})),${asShare},IF(${one}=${other},0,1))`,
      result("0.0E+00"),
    );
    put(`E${row}`, `=IF(ISNUMBER(D${row}),IF(D${row}<1/10^9,${agrees},${lookHere}),${lookHere})`, {
      ...label,
      align: "right",
    });
  }
  const last = firstRow + lines.length - 1;
  put("A3", said.largest, { ...label, bold: true });
  put("B3", `=MAX(D${firstRow}:D${last})`, { ...result("0.0E+00"), bold: true });
  put(
    "C3",
    `=IF(COUNTIF(E${firstRow}:E${last},${agrees})=${lines.length},${textInFormula(said.allAgree)},${textInFormula(said.differs)})`,
    remark,
  );
  widths(40, 16, 18, 12, 11);
}
