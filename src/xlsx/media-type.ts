/** What browsers and programs call an .xlsx file. */
export const xlsxMediaType = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
