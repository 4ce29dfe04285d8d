import { Phrase } from "../../core/phrases";
import { columnsOf } from "../../jobs/answer-columns";
import type { Wording } from "../../jobs/entries";
import type { JobAnswer } from "../../jobs/job-answer";
import { shownNumber } from "../../jobs/shown-number";

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
  const numbers = (answers ?? []).filter(({ refusal, waits }) => refusal === undefined && !waits).flatMap(bigNumbers);
  if (numbers.length === 0) return null;
  return (
    <div className="headline" aria-hidden="true">
      {numbers.slice(0, most).map((number) => {
        const { label, text } = number(wording);
        return (
          <p key={label}>
            {label} <strong>{text}</strong>
          </p>
        );
      })}
    </div>
  );
}

/** More than this are no headline. */
const most = 4;

type ToSay = (wording: Wording) => BigNumber;

/** Single answers, the numbers of a row, and the verdict on a table. A longer answer has none. */
function bigNumbers({ spec, grid }: JobAnswer): ToSay[] {
  const { result } = spec;
  const [first = []] = grid;
  if (result.shape === "cell") {
    const value = first[0];
    if (typeof value !== "number") return [];
    return [
      ({ messages, unit, decimals }) => ({
        label: messages.answers[spec.id] ?? spec.id,
        text: shownNumber(value, result.quantity, unit, messages, decimals),
      }),
    ];
  }
  if (result.shape === "row") {
    return columnsOf(spec, first.length).flatMap(({ name, quantity }, column): ToSay[] => {
      const value = first[column];
      if (value instanceof Phrase) {
        return [({ messages }) => ({ label: messages.columns[name] ?? name, text: messages.phrase(value.saying) })];
      }
      if (typeof value !== "number") return [];
      return [
        ({ messages, unit, decimals }) => ({
          label: messages.columns[name] ?? name,
          text: shownNumber(value, quantity, unit, messages, decimals),
        }),
      ];
    });
  }
  if (result.shape !== "table" || result.lastRow?.is !== "verdict") return [];
  const verdict = grid.at(-1)?.[0];
  return verdict instanceof Phrase
    ? [({ messages }) => ({ label: messages.verdict, text: messages.phrase(verdict.saying) })]
    : [];
}
