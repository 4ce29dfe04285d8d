import { test } from "vitest";
import { openInNode } from "../src/engine/node-workbook";
import { sampleBooks } from "../src/sample-books/sample-books";
test("x", async () => {
  const all = sampleBooks["season.xlsx"]!();
  const only = async (names: string[]) => {
    const book = { ...all, sheets: all.sheets.map((s) => (names.includes(s.name) ? s : { ...s, cells: s.cells.filter((c) => c.formula === undefined) })) };
    const open = openInNode(book);
    const t = Date.now(); await open.calculate(); const u = Date.now(); await open.calculate();
    console.log(names.join("+"), u - t, Date.now() - u);
    open.close();
  };
  await only(["Lots"]); await only(["Season"]); await only(["Flags"]); await only(["Lots", "Flags"]); await only(["Proof"]); await only(["Proof, lot by lot"]); await only(all.sheets.map((s) => s.name));
});
