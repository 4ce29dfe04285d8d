/** A workbook with every formula worked out that can be, and what keeps the results that it came with. */
import { mayCallOurs } from "../../core/describe";
import { type Leaving, type LeftFormulas, leftFormulas } from "../../engine/left-formulas";
import { type Cell, isErrorCode, type Workbook } from "../../workbook/workbook";

interface WorkedOut {
  readonly workbook: Workbook;
  /** By the cells of the workbook that was given. */
  readonly left: LeftFormulas;
}

/** What was not worked out may be seen in the answer only: it is left as well, and the rest worked out again. */
const mostPasses = 5;
/** Milliseconds. No farm's book takes a tenth of it; a calculation that has not ended by then never does. */
const longest = 10 * 60 * 1000;

/**
 * `isAsStored`: nothing was changed since another program stored the results. Where an error comes out of such a
 * workbook and a value is stored, that program could do what the engine cannot. `before`: what was left of it then.
 */
export async function workedOut(
  given: Workbook,
  {
    keepsChanging,
    isAsStored,
    before,
  }: Leaving & { readonly isAsStored: boolean; readonly before?: WorkedOut["left"] },
): Promise<WorkedOut> {
  const { openInNode } = await import("../../engine/node-workbook");
  const left = new Map([...leftFormulas(given, { keepsChanging }), ...(before ?? [])]);
  for (let pass = 1; ; pass += 1) {
    const book = openInNode(given, left);
    try {
      await inTime(book.calculate());
      const workbook = book.toWorkbook();
      const failed = failedIn(given, workbook, left, isAsStored);
      if (failed.size === 0 || pass === mostPasses) {
        for (const [cell, why] of failed) left.set(cell, why);
        return { workbook, left };
      }
      for (const [cell, why] of failed) left.set(cell, why);
    } finally {
      book.close();
    }
  }
}

async function inTime(calculation: Promise<void>): Promise<void> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const tooLong = new Promise<never>((_, refuse) => {
    timer = setTimeout(() => refuse(new Error("the calculation does not end")), longest);
  });
  try {
    await Promise.race([calculation, tooLong]);
  } finally {
    clearTimeout(timer);
  }
}

/** Formulas whose answer is none of a spreadsheet's. */
function failedIn(given: Workbook, worked: Workbook, left: LeftFormulas, isAsStored: boolean): Map<Cell, string> {
  const failed = new Map<Cell, string>();
  given.sheets.forEach((sheet, index) => {
    const answers = new Map(
      (worked.sheets[index]?.cells ?? []).map((cell) => [`${cell.row},${cell.column}`, cell] as const),
    );
    for (const cell of sheet.cells) {
      if (cell.formula === undefined || left.has(cell)) continue;
      const why = whyFailed(cell, answers.get(`${cell.row},${cell.column}`), isAsStored);
      if (why !== undefined) failed.set(cell, why);
    }
  });
  return failed;
}

const errorsOfTheEngine: ReadonlySet<unknown> = new Set(["#ERROR!", "#CYCLE!", "#GETTING_DATA", "#CONNECT!"]);

function whyFailed(cell: Cell, answer: Cell | undefined, isAsStored: boolean): string | undefined {
  const { spill, value } = answer ?? {};
  if (value === "#CYCLE!") return "a circle of cells";
  if (errorsOfTheEngine.has(value)) return "something that cannot be worked out here";
  if (value === "#NAME?" && cell.value !== "#NAME?") return "a name that is not known here";
  const isLarger = spill !== undefined && (spill.rows > 1 || spill.columns > 1);
  // In old files a range in the place of a value means the cell beside the formula.
  if (isLarger && (cell.spill === undefined || cell.spill.isFixed))
    return "an answer of several cells where the file has one";
  // Our own functions know what they refuse.
  const isStored =
    isAsStored && cell.value !== undefined && !isErrorCode(cell.value) && !mayCallOurs(cell.formula ?? "");
  return isStored && isErrorCode(value) ? `an error (${value}) that comes out here alone` : undefined;
}
