/// <reference types="office-js" />
import { HostProblem } from "../../host/workbook-host";

const problems: Readonly<Record<string, readonly [HostProblem["reason"], string]>> = {
  InvalidOperationInCellEditMode: [
    "busy",
    "A cell is being typed in: press Enter or Escape in the sheet, then try again.",
  ],
  InvalidSelection: ["gone", "Excel has no cells selected: select one cell or one block of cells, then try again."],
  InactiveWorkbook: ["gone", "Another workbook is in front: go back to this one, then try again."],
  ItemNotFound: ["not here", "This place is no longer in the workbook."],
  InvalidReference: ["not here", "This place is not in the workbook."],
  InvalidArgument: ["not here", "Excel does not know this place, or does not take this formula."],
  MergedRangeConflict: ["unknown", "There are merged cells here: choose a place without any."],
  PivotTableRangeConflict: ["unknown", "There is a pivot table here: choose a place beside it."],
  FilteredRangeConflict: ["unknown", "The rows here are filtered: clear the filter or choose another place."],
  RequestAborted: ["busy", "Excel is busy: try again in a moment."],
  RangeExceedsLimit: ["unknown", "That is more cells than Excel hands over at once: choose fewer."],
  ResponsePayloadSizeLimitExceeded: ["unknown", "That is more cells than Excel hands over at once: choose fewer."],
  OperationCellsExceedLimit: ["unknown", "That is more cells than Excel hands over at once: choose fewer."],
};

/** What Excel threw, in plain words. `isProtected`: the sheet in question, as far as that is known. */
export function problemFrom(thrown: unknown, isProtected?: boolean): HostProblem {
  if (thrown instanceof HostProblem) return thrown;
  const code = codeOf(thrown);
  if (code === "AccessDenied") return denied(isProtected);
  const [reason, message] = problems[code] ?? ["unknown", `Excel could not do this${code === "" ? "" : ` (${code})`}.`];
  return new HostProblem(reason, message);
}

/** Excel has one code for everything that it does not allow. */
function denied(isProtected: boolean | undefined): HostProblem {
  if (isProtected) {
    return new HostProblem("protected", "The sheet is protected: lift the protection or choose another sheet.");
  }
  if (isProtected === false) {
    return new HostProblem("read-only", "The workbook is open for reading only: open it for editing, then try again.");
  }
  return new HostProblem("protected", "Excel does not allow this here: the sheet or the workbook may be protected.");
}

function codeOf(thrown: unknown): string {
  if (typeof thrown !== "object" || thrown === null || !("code" in thrown)) return "";
  return String(thrown.code);
}
