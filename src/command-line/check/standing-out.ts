/** What stands out in the sheets of a workbook, in words. */
import { catalogue } from "../../core/catalogue";
import { explainedError } from "../../sheet-check/explained-error";
import type { Finding, Rule } from "../../sheet-check/finding";
import { findingsOf } from "../../sheet-check/findings-of";
import { errorInWords } from "../../words/error-in-words";
import type { Messages } from "../../words/messages";
import { addressOf } from "../../workbook/addresses";
import type { Workbook } from "../../workbook/workbook";
import { FileHost } from "./file-host";

export interface CheckedWorkbook {
  /** Cells that hold something. */
  readonly cells: number;
  readonly standingOut: readonly StandingOut[];
  /** Sheets that reach too far to be looked through. */
  readonly passedOver: readonly string[];
}

interface StandingOut {
  readonly sheet: string;
  readonly cell: string;
  readonly rule: Rule;
  readonly title: string;
  readonly words: string;
}

export async function standingOut(workbook: Workbook, messages: Messages): Promise<CheckedWorkbook> {
  const host = new FileHost(workbook);
  const found: StandingOut[] = [];
  const passedOver: string[] = [];
  let cells = 0;
  for (const sheet of workbook.sheets) {
    const filled = sheet.cells.filter(({ value, formula }) => value !== undefined || formula !== undefined).length;
    cells += filled;
    const area = host.used(sheet.name);
    if (!area) {
      if (filled > 0) passedOver.push(sheet.name);
      continue;
    }
    for (const finding of findingsOf(area, catalogue, host.spills(sheet.name))) {
      found.push(await inWords(finding, sheet.name, host, messages));
    }
  }
  return { cells, standingOut: found, passedOver };
}

async function inWords(
  { rule, row, column, details, names }: Finding,
  sheet: string,
  host: FileHost,
  messages: Messages,
) {
  const isError = rule === "a TEA function with an error";
  const error = isError ? await explainedError(details.code ?? "", host, { sheet, row, column }, catalogue) : undefined;
  const said = error && error.message !== "" ? { message: errorInWords(error, messages, names) } : {};
  const { title, what } = messages.check.rules[rule];
  return { sheet, cell: addressOf(row, column), rule, title, words: what({ ...details, ...said }) };
}
