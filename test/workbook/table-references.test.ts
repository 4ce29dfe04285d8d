import { describe, expect, it } from "vitest";
import { tableNamesIn, withAddresses } from "../../src/workbook/table-references";

const lots = {
  name: "Lots",
  sheet: "Past lots",
  area: { row: 4, column: 1, rows: 4, columns: 3 },
  headings: ["lot", "fresh", "made [g]"],
};

describe("a reference to a table", () => {
  it.each([
    ["Lots[fresh]", "$C$6:$C$8"],
    ["lots[FRESH]", "$C$6:$C$8"],
    ["Lots[]", "$B$6:$D$8"],
    ["Lots[[lot]:[fresh]]", "$B$6:$C$8"],
    ["Lots[#All]", "$B$5:$D$8"],
    ["Lots[[#Headers],[fresh]]", "$C$5"],
    ["Lots[[#Headers],[#Data],[fresh]]", "$C$5:$C$8"],
    ["Lots[[#This Row],[fresh]]", "$C7"],
    ["Lots[@fresh]", "$C7"],
    ["Lots[@[made '[g']]]", "$D7"],
    ["Lots[@]", "$B7:$D7"],
    ["Lots[made '[g']]", "$D$6:$D$8"],
  ])("%s stands for %s in row 7", (written, cells) => {
    const at = { sheet: "Past lots", row: 6 };
    expect(withAddresses(`=SUM(${written})+1`, at, [lots])).toBe(`=SUM(${cells})+1`);
  });

  it("names the sheet from elsewhere", () => {
    expect(withAddresses("=SUM(Lots[fresh])", { sheet: "Sums", row: 0 }, [lots])).toBe("=SUM('Past lots'!$C$6:$C$8)");
  });

  it("reaches the totals where there are some", () => {
    const at = { sheet: "Past lots" };
    expect(withAddresses("=Lots[[#Totals],[fresh]]", at, [{ ...lots, hasTotals: true }])).toBe("=$C$9");
    expect(withAddresses("=Lots[[#Totals],[fresh]]", at, [lots])).toBeUndefined();
  });

  it.each(["=Others[fresh]", "=Lots[weight]", "=Lots[@fresh]", "=[fresh]"])(
    "leads nowhere in %s, beside no row of the table",
    (formula) => {
      expect(withAddresses(formula, { sheet: "Past lots", row: 20 }, [lots])).toBeUndefined();
    },
  );

  it("is none in a text, and none to another workbook", () => {
    expect(withAddresses('="Lots[x]"&[1]Book!A1', {}, [lots])).toBe('="Lots[x]"&[1]Book!A1');
    expect(tableNamesIn('="Lots[x]"&SUM(Lots[fresh],Other[])')).toEqual(["Lots", "Other"]);
  });
});
