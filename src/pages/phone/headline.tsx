import type { CellValue } from "../../cells/values";
import { Phrase } from "../../core/phrases";
import type { Quantity } from "../../core/quantities";
import { columnsOf } from "../../jobs/answer-columns";
import type { Wording } from "../../jobs/entries";
import { isGiven, type JobAnswer } from "../../jobs/job-answer";
import { cellInWords } from "../../pane/jobs/job-preview";

interface HeadlineProps {
  readonly answers: readonly JobAnswer[] | undefined;
  readonly wording: Wording;
}

interface BigNumber {
  readonly label: string;
  readonly text: string;
}

/**
 * The answer in figures for arm's length, which stay in sight while the fields are filled in. It says nothing that does
 * not stand below as well, where it is also heard.
 */
export function Headline({ answers, wording }: HeadlineProps) {
  const numbers = (answers ?? []).filter(isGiven).flatMap((answer) => bigNumbers(answer, wording));
  if (numbers.length === 0) return null;
  return (
    <div className="headline" aria-hidden="true">
      {numbers.slice(0, most).map(({ label, text }) => (
        <p key={label}>
          {label} <strong>{text}</strong>
        </p>
      ))}
    </div>
  );
}

/** More than this are no headline. */
const most = 4;

/** Single answers, the numbers of a row, and the verdict on a table. A longer answer has none. */
function bigNumbers({ spec, grid }: JobAnswer, wording: Wording): BigNumber[] {
  const { messages } = wording;
  const { result } = spec;
  const [first = []] = grid;
  const big = (label: string, value: CellValue | Phrase | undefined, quantity: Quantity | undefined): BigNumber[] =>
    typeof value === "number" || value instanceof Phrase
      ? [{ label, text: cellInWords(value, quantity, wording, true) }]
      : [];
  if (result.shape === "cell") return big(messages.answers[spec.id] ?? spec.id, first[0], result.quantity);
  if (result.shape === "row") {
    return columnsOf(spec, first.length).flatMap(({ name, quantity }, column) =>
      big(messages.columns[name] ?? name, first[column], quantity),
    );
  }
  if (result.shape !== "table" || result.lastRow?.is !== "verdict") return [];
  return big(messages.verdict, grid.at(-1)?.[0], undefined);
}
