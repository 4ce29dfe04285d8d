/// <reference types="office-js" />
import { HostProblem, type Trouble } from "../../host/host-problem";

const problems: Readonly<Record<string, readonly [HostProblem["reason"], Trouble]>> = {
  InvalidOperationInCellEditMode: ["busy", "a cell is being typed in"],
  InvalidSelection: ["gone", "no cells selected in Excel"],
  InactiveWorkbook: ["gone", "another workbook in front"],
  ItemNotFound: ["not here", "place no longer there"],
  InvalidReference: ["not here", "place not in the workbook"],
  InvalidArgument: ["not here", "place or formula not known"],
  MergedRangeConflict: ["unknown", "merged cells"],
  PivotTableRangeConflict: ["unknown", "pivot table"],
  FilteredRangeConflict: ["unknown", "filtered rows"],
  RequestAborted: ["busy", "Excel is busy"],
  RangeExceedsLimit: ["unknown", "too many cells"],
  ResponsePayloadSizeLimitExceeded: ["unknown", "too many cells"],
  OperationCellsExceedLimit: ["unknown", "too many cells"],
};

/** What Excel threw, as a trouble that has its words. `isProtected`: the sheet in question, as far as that is known. */
export function problemFrom(thrown: unknown, isProtected?: boolean): HostProblem {
  if (thrown instanceof HostProblem) return thrown;
  const code = codeOf(thrown);
  if (code === "AccessDenied") return denied(isProtected);
  const [reason, trouble] = problems[code] ?? ["unknown", { kind: "not done", code }];
  return new HostProblem(reason, trouble);
}

/** Excel has one code for everything that it does not allow. */
function denied(isProtected: boolean | undefined): HostProblem {
  if (isProtected) {
    return new HostProblem("protected", "sheet protected");
  }
  if (isProtected === false) {
    return new HostProblem("read-only", "workbook read-only");
  }
  return new HostProblem("protected", "not allowed by Excel");
}

function codeOf(thrown: unknown): string {
  if (typeof thrown !== "object" || thrown === null || !("code" in thrown)) return "";
  return String(thrown.code);
}

/** One request to Excel; whatever goes wrong has a message that can be shown. */
export async function inExcel<Answer>(
  request: (context: Excel.RequestContext) => Promise<Answer>,
  isProtected: () => boolean | undefined = () => undefined,
): Promise<Answer> {
  try {
    return await Excel.run(request);
  } catch (thrown) {
    throw problemFrom(thrown, isProtected());
  }
}

/** Whether this Excel tells the cell of a spill. */
export const knowsSpills = (): boolean => Office.context.requirements.isSetSupported("ExcelApi", "1.12");
