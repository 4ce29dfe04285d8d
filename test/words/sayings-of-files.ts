/** What can be said of files: each kind once at least, which the compiler sees to. */
import type { Damage } from "../../src/xlsx/damage";
import type { CellBond, FileRefusal, FormulaProblem } from "../../src/xlsx/refusals";
import { few, type NotShown, type SavingRemark } from "../../src/xlsx/remarks";

type KindOf<Saying> = Saying extends string ? Saying : Saying extends { readonly kind: infer Kind } ? Kind : never;
type OfEachKind<Saying> = { readonly [Kind in KindOf<Saying> & string]: Saying };

const own = <Kinds extends string>(...kinds: Kinds[]) =>
  Object.fromEntries(kinds.map((kind) => [kind, kind])) as { readonly [Kind in Kinds]: Kind };

const damages: OfEachKind<Damage> = {
  ...own("end missing", "directory not found", "directory outside", "directory broken off", "senseless length"),
  ...own("list of parts missing"),
  "two parts named": { kind: "two parts named", path: "X1" },
  "not where it should be": { kind: "not where it should be", path: "X1" },
  "cut off": { kind: "cut off", path: "X1" },
  "over another": { kind: "over another", path: "X1" },
  "more than declared": { kind: "more than declared", path: "X1" },
  "less than declared": { kind: "less than declared", path: "X1" },
  "not what was written": { kind: "not what was written", path: "X1" },
  "not unpacked": { kind: "not unpacked", path: "X1" },
  missing: { kind: "missing", path: "X1" },
  "long text": { kind: "long text", path: "X1" },
  "no XML": { kind: "no XML", path: "X1" },
  nested: { kind: "nested", path: "X1", deepest: 256 },
  "sheet missing": { kind: "sheet missing", sheet: "X1" },
};

const bonds: OfEachKind<CellBond> = {
  ...own("table of inputs", "pivot table"),
  spill: { kind: "spill", holder: "X2" },
  "array formula": { kind: "array formula", holder: "X2" },
  merged: { kind: "merged", first: "X2" },
  heading: { kind: "heading", table: "X2" },
  total: { kind: "total", table: "X2" },
};

const problems: OfEachKind<FormulaProblem> = {
  ...own("not whole", "another workbook", "too long"),
  sign: { kind: "sign", sign: "@" },
  sheet: { kind: "sheet", name: "X2" },
  table: { kind: "table", reference: "X2" },
};

const refusals: OfEachKind<FileRefusal> = {
  ...own("empty", "no .xlsx", "OpenDocument", "binary .xlsb", "old .xls", "text or presentation", "some archive"),
  ...own("archive without a workbook", "password", "macros alone", "no sheet of cells", "many texts", "many cells"),
  ...own("many merges and the like"),
  damaged: { kind: "damaged", how: "end missing" },
  "large when unpacked": { kind: "large when unpacked", megabytes: 1301 },
  "packed in another way": { kind: "packed in another way", method: 99 },
  "leads out of it": { kind: "leads out of it", name: "X1" },
  "many elements": { kind: "many elements", path: "X1", most: 1_000_000 },
  "document type": { kind: "document type", path: "X1" },
  encoding: { kind: "encoding", encoding: "X1", path: "X2" },
  "long text": { kind: "long text", length: 40_000, most: 32_767 },
  "long formula": { kind: "long formula", length: 9000, most: 8192 },
  "place outside": { kind: "place outside", place: { row: "1048577" }, rows: 1_048_576, columns: 16_384 },
  "cell outside": { kind: "cell outside", rows: 1_048_576, columns: 16_384 },
  "no such sheet": { kind: "no such sheet", sheet: "X1" },
  "name of its own": { kind: "name of its own", name: "X1" },
  cell: { kind: "cell", place: "X1", bond: "pivot table" },
  formula: { kind: "formula", place: "X1", problem: "not whole" },
};

export const everyRefusal: readonly FileRefusal[] = [
  ...Object.values(refusals),
  { kind: "place outside", place: { address: "X1" }, rows: 1_048_576, columns: 16_384 },
  ...Object.values(damages).map((how): FileRefusal => ({ kind: "damaged", how })),
  ...Object.values(bonds).map((bond): FileRefusal => ({ kind: "cell", place: "X1", bond })),
  ...Object.values(problems).map((problem): FileRefusal => ({ kind: "formula", place: "X1", problem })),
];

const remarks: OfEachKind<SavingRemark> = own("signature", "charts", "pivot tables");
export const everyRemark: readonly SavingRemark[] = Object.values(remarks);

const found = few(["X1", "X2", "X3", "X4", "X5"]);
const unseen: OfEachKind<NotShown> = {
  ...own("macros", "chart sheets", "dialog sheets", "looks of single words", "pictures", "shapes", "other charts"),
  ...own("pivot tables", "slicers and timelines", "buttons and boxes", "objects of other programs"),
  ...own("answers to comments", "links to other workbooks", "connections to other data", "record of changes"),
  ...own("signature", "cards and pictures in cells", "check boxes in cells", "panes of add-ins"),
  ...own("views of single people", "drawings by pen", "properties and labels", "settings of a printer"),
  ...own("sounds and films", "fonts", "filters", "protection of sheets", "lines inside cells", "scenarios"),
  part: { kind: "part", path: "X1" },
  "parts of a type": { kind: "parts of a type", type: "X1" },
  names: { kind: "names", found },
  "names worked out": { kind: "names worked out", found },
  "lost table columns": { kind: "lost table columns", found },
  "data validation": { kind: "data validation", found },
  "conditional formats": { kind: "conditional formats", found },
  "tables of inputs": { kind: "tables of inputs", found: few(["X1"]) },
};
export const everythingUnseen: readonly NotShown[] = Object.values(unseen);
