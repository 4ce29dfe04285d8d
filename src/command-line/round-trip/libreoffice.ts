/** Whether LibreOffice opens what was saved as it opened the file before, with the same values but for the changes. */
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { addressOf } from "../../workbook/addresses";
import { AreaIndex } from "../../workbook/area-index";
import { sheetColumns, sheetRows } from "../../workbook/sheet-size";
import type { Area, Workbook } from "../../workbook/workbook";
import { openArchive } from "../../xlsx/container/kind-of-file";
import { PackageParts } from "../../xlsx/container/package-parts";
import { pivotAreas } from "../../xlsx/patch/sheet-guards";
import { isWorksheet, readBook } from "../../xlsx/read/book";
import { readWorkbook } from "../../xlsx/read-workbook";

interface Compared {
  readonly file: string;
  readonly saved?: { readonly before: Uint8Array; readonly after: Uint8Array; readonly edits: number };
}

/** Problems by file. */
export async function inLibreOffice(outcomes: readonly Compared[]): Promise<Map<string, string[]>> {
  const folder = mkdtempSync(join(tmpdir(), "round-trip-"));
  try {
    const opened = { before: opener(folder, "before"), after: opener(folder, "after") };
    const files = outcomes.flatMap(({ file, saved }, index) => (saved ? [{ file, saved, name: `${index}` }] : []));
    for (const { saved, name } of files) {
      opened.before.put(name, saved.before);
      opened.after.put(name, saved.after);
    }
    opened.before.open();
    opened.after.open();
    return new Map(
      files.map(({ file, saved, name }) => [
        file,
        differences(opened.before.read(name), opened.after.read(name), saved.edits, pivotsIn(saved.before)),
      ]),
    );
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** LibreOffice opens workbooks and saves them again, all of a folder at once. */
function opener(folder: string, name: string) {
  const [given, made] = [join(folder, name), join(folder, `${name}-opened`)];
  mkdirSync(given);
  const files: string[] = [];
  return {
    put(file: string, bytes: Uint8Array): void {
      files.push(join(given, `${file}.xlsx`));
      writeFileSync(join(given, `${file}.xlsx`), bytes);
    },
    open(): void {
      const profile = `-env:UserInstallation=file://${folder}/profile`;
      const options = ["--headless", profile, "--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir", made];
      const { error } = spawnSync("soffice", [...options, ...files], { stdio: "ignore" });
      if (error) throw new Error("LibreOffice must be installed, with its command soffice", { cause: error });
    },
    read(file: string): Workbook | undefined {
      const path = join(made, `${file}.xlsx`);
      return existsSync(path) ? readWorkbook(readFileSync(path)) : undefined;
    },
  };
}

type Pivots = ReadonlyMap<string, AreaIndex<Area>>;

/** LibreOffice fills pivot tables anew when it opens a file: by a changed number they may also grow, down and across. */
function pivotsIn(bytes: Uint8Array): Pivots {
  const parts = new PackageParts(openArchive(bytes));
  const sheets = readBook(parts).sheets.filter(isWorksheet);
  return new Map(sheets.map(({ name, path }) => [name, new AreaIndex(pivotAreas(parts, path).map(grown))]));
}

const grown = (area: Area): Area => ({ ...area, rows: sheetRows - area.row, columns: sheetColumns - area.column });

/** As many cells may differ as were changed. Formulas are compared as they stand, results where there is none. */
function differences(
  before: Workbook | undefined,
  after: Workbook | undefined,
  edits: number,
  pivots: Pivots,
): string[] {
  if (!before) return [];
  if (!after) return ["LibreOffice opened the file before, and does not open what was saved"];
  const others: string[] = [];
  before.sheets.forEach((sheet, index) => {
    const now = new Map((after.sheets[index]?.cells ?? []).map((cell) => [addressOf(cell.row, cell.column), cell]));
    for (const { row, column, value, formula } of sheet.cells) {
      const is = now.get(addressOf(row, column));
      const isSame = formula === is?.formula && (formula !== undefined || is?.value === value);
      if (!isSame && !pivots.get(sheet.name)?.at(row, column)) others.push(`${sheet.name}!${addressOf(row, column)}`);
    }
  });
  return others.length > edits ? [`LibreOffice shows others in ${others.slice(0, 5).join(", ")}`] : [];
}
