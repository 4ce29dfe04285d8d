import { describe, expect, it, test } from "vitest";
import { fromFileFormula, toFileFormula } from "../../src/workbook/formula-names";

describe("a formula in a file", () => {
  test.each([
    ["=TEA.OUTTURN(B4,B5)", "=_xldudf_TEA_OUTTURN(B4,B5)"],
    ["=LET(Größe,B1,größe*2)", "=_xlfn.LET(_xlpm.Größe,B1,_xlpm.größe*2)"],
    ["=LET(茶,B1,茶+1)", "=_xlfn.LET(_xlpm.茶,B1,_xlpm.茶+1)"],
    ["=let(Leaf,B1,LEAF/2)", "=_xlfn.let(_xlpm.Leaf,B1,_xlpm.LEAF/2)"],
    ["=MAP(B1:B3,lambda(w,w*2))", "=_xlfn.MAP(B1:B3,_xlfn.lambda(_xlpm.w,_xlpm.w*2))"],
    ["=LET(fresh,B1,SUM(Lots[fresh])+fresh)", "=_xlfn.LET(_xlpm.fresh,B1,SUM(Lots[fresh])+_xlpm.fresh)"],
    [
      "=LET(fresh,Lots[[#This Row],[fresh]],Lots['[fresh]&fresh)",
      "=_xlfn.LET(_xlpm.fresh,Lots[[#This Row],[fresh]],Lots['[fresh]&_xlpm.fresh)",
    ],
    ['=LET(fresh,B1,"fresh, "&fresh)', '=_xlfn.LET(_xlpm.fresh,B1,"fresh, "&_xlpm.fresh)'],
    ["=LET(lot,1,'lot'!B1+lot!B2+lot)", "=_xlfn.LET(_xlpm.lot,1,'lot'!B1+lot!B2+_xlpm.lot)"],
    ["=LET(sum,SUM(A1:A3),sum/2)", "=_xlfn.LET(_xlpm.sum,SUM(A1:A3),_xlpm.sum/2)"],
    ["=LET(half,LAMBDA(x,x/2),half(8))", "=_xlfn.LET(_xlpm.half,_xlfn.LAMBDA(_xlpm.x,_xlpm.x/2),_xlpm.half(8))"],
    ["=LET(a,1,SUM(A:A,$A$1)+a)+a", "=_xlfn.LET(_xlpm.a,1,SUM(A:A,$A$1)+_xlpm.a)+a"],
    ['="TEA.OUTTURN(1)"&FILTER(A1:A3,A1:A3>1E5)', '="TEA.OUTTURN(1)"&_xlfn._xlws.FILTER(A1:A3,A1:A3>1E5)'],
  ])("%s has its prefixes there, and none in its cell", (shown, inFile) => {
    expect(toFileFormula(shown)).toBe(inFile);
    expect(fromFileFormula(inFile)).toBe(shown);
  });

  it("calls a function by its name there with a space before its bracket too", () => {
    expect(toFileFormula("=TEA.OUTTURN (100,20)")).toBe("=_xldudf_TEA_OUTTURN(100,20)");
    expect(toFileFormula("=tea.outturn( 100, 20)+A1 (B1)")).toBe("=_xldudf_TEA_OUTTURN( 100, 20)+A1 (B1)");
  });

  test.each([
    "=_xlfn.SINGLE(A1:A3)+_xlfn.ANCHORARRAY(B1)",
    "=_xlfn._xlws.SOMEDAY(A1)",
    "=_xlfn.LAMBDA(_xlpm.a,_xlop.b,_xlpm.a+_xlpm.b)(1)",
    "=_xlfn.XLOOKUP(1,Lots[_xlpm.odd],B1:B3)",
  ])("%s loses nothing on its way through a cell", (inFile) => {
    expect(toFileFormula(fromFileFormula(inFile))).toBe(inFile);
  });
});
