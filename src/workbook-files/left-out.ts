import type ExcelJS from "exceljs";

/** What this file has that a workbook of ours has no place for, in words; none of it comes out again. */
export function leftOut(file: ExcelJS.Workbook): string[] {
  const sheets = file.worksheets.map((sheet) => sheet as unknown as Sheet);
  const has: readonly (readonly [words: string, found: boolean])[] = [
    ["defined names", file.definedNames.model.length > 0],
    ["data validation", sheets.some(({ dataValidations }) => Object.keys(dataValidations?.model ?? {}).length > 0)],
    ["conditional formats", sheets.some(({ conditionalFormattings }) => (conditionalFormattings ?? []).length > 0)],
    ["links", sheets.some(hasLinks)],
    ["pictures", sheets.some((sheet) => sheet.getImages().length > 0)],
  ];
  return has.filter(([, found]) => found).map(([words]) => words);
}

/** The library's types leave out some of what it reads. */
type Sheet = ExcelJS.Worksheet & {
  readonly dataValidations?: { readonly model: object };
  readonly conditionalFormattings?: readonly unknown[];
};

function hasLinks(sheet: Sheet): boolean {
  let found = false;
  sheet.eachRow((row) => {
    row.eachCell(({ value }) => {
      found ||= typeof value === "object" && value !== null && "hyperlink" in value;
    });
  });
  return found;
}
