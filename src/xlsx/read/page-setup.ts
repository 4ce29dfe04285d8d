/** How a sheet prints: what its part says of the page, and what names say of the cells. */
import type { Area, PageSetup } from "../../workbook/workbook";
import { areaIn } from "./cell-address";
import type { SheetPart } from "./sheet";

/** The numbers that files have for papers. */
const papers: Readonly<Record<number, PageSetup["paper"]>> = { 9: "A4", 11: "A5" };

/** undefined where nobody set up the page. */
export function pageOf(
  { paperNumber, ...said }: SheetPart["page"],
  printed: string | undefined,
  repeated: string | undefined,
): PageSetup | undefined {
  const paper = papers[paperNumber];
  const printArea = printAreaIn(printed);
  const repeatedRow = repeatedRowIn(repeated);
  const { footer, landscape, fitToOnePageWide } = said;
  if (!paper && !footer && !landscape && !fitToOnePageWide && !printArea && repeatedRow === undefined) return undefined;
  return {
    paper: paper ?? "A4",
    ...said,
    ...(printArea && { printArea }),
    ...(repeatedRow !== undefined && { repeatedRow }),
  };
}

/** Of several areas the first. Whole columns and rows print as far as they are used, as everything does anyway. */
function printAreaIn(text = ""): Area | undefined {
  const [, cells] =
    /^(?:'(?:[^']|'')*'|[^'!,]*)!(\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?)(?:,|$)/i.exec(text) ?? [];
  return cells === undefined ? undefined : areaIn(cells);
}

function repeatedRowIn(text = ""): number | undefined {
  const [, row] = /!\$?(\d+):\$?\d+$/.exec(text) ?? [];
  return row === undefined ? undefined : Number(row) - 1;
}
