/** Changes an open workbook as planned, and says what came of it. */
import { namespace } from "../core/namespace";
import { HostProblem, type Trouble } from "../host/host-problem";
import type { BookFormulas, CellContent, FormulaLeft, WorkbookHost } from "../host/workbook-host";
import { type Plan, type PlannedChange, uncalledIn } from "./plan";

/** As much of the host as this takes. */
type Host = Pick<WorkbookHost, "formulasWith" | "changeFormulas" | "putNames" | "takeNames" | "evaluate">;

export interface Progress {
  readonly sheet: string;
  /** Formulas that are dealt with, of all. */
  readonly done: number;
  readonly all: number;
}

export interface Outcome {
  readonly formulas: number;
  readonly put: readonly string[];
  readonly takenOut: readonly string[];
  /** Cells, and whole sheets, that are as they were. */
  readonly left: readonly (FormulaLeft & { readonly sheet: string })[];
  readonly sheetsLeft: readonly { readonly sheet: string; readonly trouble: Trouble }[];
  /** Cells that show something else than before. */
  readonly others: readonly OtherAnswer[];
}

interface OtherAnswer {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly before: CellContent;
  readonly now: CellContent;
}

/** Everything in the workbook that has to do with the functions. */
export const readBook = (host: Host): Promise<BookFormulas> => host.formulasWith(namespace);

/** So many formulas are changed before it is said how far it is. */
const atOnce = 1_000;

interface Options {
  /** Names that nothing calls stay: a rule of a conditional format, or of validation, may call them unseen. */
  readonly keepsNames: boolean;
  readonly onProgress: (progress: Progress) => void;
}

export async function carryOut(host: Host, plan: Plan, { keepsNames, onProgress }: Options): Promise<Outcome> {
  if (plan.way === "to names") await refuseWithoutLambda(host, plan.sheets);
  // Before the formulas that call them: no cell shows #NAME? meanwhile.
  if (plan.put.length > 0) await host.putNames(plan.put);
  if (plan.changed.length > 0) await host.putNames(plan.changed);
  const all = plan.sheets.reduce((sum, { changes }) => sum + changes.length, 0);
  const left: (FormulaLeft & { sheet: string })[] = [];
  const sheetsLeft: { sheet: string; trouble: Trouble }[] = [];
  let [done, changed] = [0, 0];
  for (const { sheet, changes } of plan.sheets) {
    try {
      for (let start = 0; start < changes.length; start += atOnce) {
        const part = changes.slice(start, start + atOnce);
        onProgress({ sheet, done: done + start, all });
        const parts = await host.changeFormulas(sheet, part);
        left.push(...parts.map((each) => ({ ...each, sheet })));
        changed += part.length - parts.length;
      }
    } catch (thrown) {
      if (!(thrown instanceof HostProblem)) throw thrown;
      sheetsLeft.push({ sheet, trouble: thrown.trouble });
    }
    done += changes.length;
  }
  const book = await readBook(host);
  // As the workbook is now: what could not be changed calls what it called.
  const takenOut = plan.way === "to names" || keepsNames ? [] : uncalledIn(book);
  if (takenOut.length > 0) await host.takeNames(takenOut);
  return {
    formulas: changed,
    put: plan.put.map(({ name }) => name),
    takenOut,
    left,
    sheetsLeft,
    // The add-in answers after a while: what its functions show at once says nothing.
    others: plan.way === "to names" ? otherAnswers(plan, book) : [],
  };
}

/** With the youngest function that the named formulas call. */
const trial = "SUM(LAMBDA(given,VSTACK(given))(1))";

async function refuseWithoutLambda(host: Host, [first]: Plan["sheets"]): Promise<void> {
  if (first === undefined) return;
  // Where Excel cannot say, the names are tried: it refuses them, or the answers show it.
  const answer = await host.evaluate(trial, { sheet: first.sheet, row: 0, column: 0 }).catch(() => undefined);
  if (answer?.[0]?.[0] === "#NAME?") throw new HostProblem("not here", "not in this Excel");
}

function otherAnswers({ sheets }: Plan, now: BookFormulas): OtherAnswer[] {
  return sheets.flatMap(({ sheet, changes }) => {
    const cells = now.sheets.find((each) => each.sheet === sheet)?.cells ?? [];
    const values = new Map(cells.map(({ row, column, value }) => [`${row},${column}`, value]));
    return changes.flatMap(({ row, column, value: before }: PlannedChange): OtherAnswer[] => {
      const value = values.get(`${row},${column}`);
      return value === undefined || isSame(before, value) ? [] : [{ sheet, row, column, before, now: value }];
    });
  });
}

const unready: readonly CellContent[] = ["#BUSY!", "#GETTING_DATA", "#CONNECT!"];

/** As far as docs/named-formulas.md promises it. */
const asMuch = 1e-9;

function isSame(before: CellContent, now: CellContent): boolean {
  if (unready.includes(before)) return true;
  if (typeof before !== "number" || typeof now !== "number") return before === now;
  return Math.abs(before - now) <= asMuch * Math.max(Math.abs(before), Math.abs(now));
}
