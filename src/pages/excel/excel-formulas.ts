/** What reads formulas: together, since it is fetched only when a working or a name asks for it. */
export { fromFileFormula } from "../../workbook/formula-names";
export { evaluateInExcel } from "./evaluate-in-excel";
export { tableCells } from "./table-cells";
