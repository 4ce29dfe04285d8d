import { CellError, type CellValue } from "../../cells/values";
import type { Column } from "../../core/define";
import { Phrase } from "../../core/phrases";
import { isInHundredths, isWeight, type Quantity } from "../../core/quantities";
import { columnsOf } from "../../jobs/answer-columns";
import { type Entries, exampleLabels, type Wording } from "../../jobs/entries";
import { fieldsOf, type Job } from "../../jobs/job";
import { isGiven, type JobAnswer } from "../../jobs/job-answer";
import { refusalInWords } from "../../jobs/refusals";
import { shownNumber, unitOf } from "../../jobs/shown-number";
import type { Messages } from "../../words/messages";
import { useMessages } from "../use-messages";

interface JobPreviewProps {
  readonly job: Job;
  readonly answers: readonly JobAnswer[] | undefined;
  readonly entries: Entries;
  readonly wording: Wording;
}

/** What the cells will show, as it is typed. */
export function JobPreview({ job, answers, entries, wording }: JobPreviewProps) {
  const messages = useMessages();
  const refusals = inWordsOnce(answers?.map(({ refusal }) => refusal) ?? [], messages);
  const waits = answers?.some((answer) => answer.waits) ?? false;
  return (
    <section className="preview" aria-label={messages.answer.heading}>
      <h2>{messages.answer.heading}</h2>
      <div role="status">
        {answers === undefined ? <p>{messages.answer.needsInput}</p> : null}
        {refusals.map((refusal) => (
          <p key={refusal} className="problem">
            {messages.answer.refused(refusal)}
          </p>
        ))}
        {waits ? <p>{messages.answer.waits}</p> : null}
        {answers
          ?.filter((answer) => answer.spec.result.shape === "cell" && isGiven(answer))
          .map((answer) => (
            <SingleAnswer key={answer.spec.id} answer={answer} wording={wording} />
          ))}
        {answers?.some(isGiven) ? <RestsOn job={job} entries={entries} wording={wording} /> : null}
      </div>
      {answers
        ?.filter((answer) => answer.spec.result.shape !== "cell" && isGiven(answer))
        .map((answer) => (
          <div key={answer.spec.id}>
            <h3>{messages.answers[answer.spec.id]}</h3>
            {answer.spec.result.shape === "column" ? (
              <Times answer={answer} wording={wording} />
            ) : (
              <AnswerTable answer={answer} wording={wording} />
            )}
          </div>
        ))}
    </section>
  );
}

/** Says which examples of ours an answer rests on. */
function RestsOn({ job, entries, wording }: Omit<JobPreviewProps, "answers">) {
  const messages = useMessages();
  const fields = fieldsOf(job);
  const labels = exampleLabels(fields, entries, wording);
  if (labels.length === 0) return null;
  const isUntouched = fields.every(({ name }) => entries[name] === undefined);
  return <p className="notes">{isUntouched ? messages.answer.restsAltogether : messages.answer.rests(labels)}</p>;
}

function SingleAnswer({ answer: { spec, grid }, wording }: { answer: JobAnswer; wording: Wording }) {
  const messages = useMessages();
  if (spec.result.shape !== "cell") return null;
  return (
    <p className="single">
      {messages.answers[spec.id]} <strong>{cellInWords(grid[0]?.[0], spec.result.quantity, wording, true)}</strong>
    </p>
  );
}

function Times({ answer: { spec, grid }, wording }: { answer: JobAnswer; wording: Wording }) {
  if (spec.result.shape !== "column") return null;
  const { quantity } = spec.result;
  return (
    <ol className="times">
      {grid.map(([value], row) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a turn is known by its number
        <li key={row}>{cellInWords(value, quantity, wording, false)}</li>
      ))}
    </ol>
  );
}

function AnswerTable({ answer: { spec, grid }, wording }: { answer: JobAnswer; wording: Wording }) {
  const messages = useMessages();
  const columns = columnsOf(spec, grid[0]?.length ?? 0);
  const lastRow = spec.result.shape === "table" ? spec.result.lastRow : undefined;
  const verdict = lastRow?.is === "verdict" ? lastRow.columns : undefined;
  const rows = verdict ? grid.slice(0, -1) : grid;
  return (
    <>
      {verdict ? <Verdict row={grid.at(-1) ?? []} columns={verdict} wording={wording} /> : null}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than the pane is scrolled with the arrow keys */}
      <section className="answer" aria-label={messages.answer.scroll} tabIndex={0}>
        <table>
          <thead>
            <tr>
              {columns.map(({ name, quantity, repeat }, column) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: two columns may have the same words
                <th key={column} scope="col">
                  {messages.columns[name]} {repeat}
                  <span className="unit"> {unitOf(quantity, wording.unit, messages)}</span>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((row, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: rows have no other name
              <tr key={index}>
                {row.map((value, column) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: nor have columns
                  <td key={column} className={typeof value === "number" ? "number" : undefined}>
                    {cellInWords(value, columns[column]?.quantity, wording, false)}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {inWordsOnce(rows.flat(), messages).map((reason) => (
        <p key={reason} className="problem">
          {reason}
        </p>
      ))}
    </>
  );
}

interface VerdictProps {
  readonly row: readonly (CellValue | Phrase)[];
  readonly columns: readonly Column[];
  readonly wording: Wording;
}

/** The verdict on a table, and what a fit rests it on. */
function Verdict({ row, columns, wording }: VerdictProps) {
  const messages = useMessages();
  const [verdict] = row;
  const [gamma, freedom, probability] = ["chi-square", "degrees of freedom", "probability"].map((wanted) => {
    const value = row[columns.findIndex(({ name }) => name === wanted)];
    return typeof value === "number" ? `${Number(value.toPrecision(3))}` : "–";
  }) as [string, string, string];
  const isFit = columns.some(({ name }) => name === "chi-square");
  return (
    <>
      <p className="single">
        <strong>{cellInWords(verdict, undefined, wording, false)}</strong>
      </p>
      {isFit ? <p className="notes">{messages.fitted(gamma, freedom, probability)}</p> : null}
      {verdict instanceof CellError ? <p className="problem">{refusalInWords(verdict)(messages)}</p> : null}
    </>
  );
}

/** What the errors among these values say, each once. */
const inWordsOnce = (values: readonly (CellValue | Phrase | undefined)[], messages: Messages): string[] => [
  ...new Set(values.flatMap((value) => (value instanceof CellError ? [refusalInWords(value)(messages)] : []))),
];

/** A cell of an answer as a form shows it. */
export function cellInWords(
  value: CellValue | Phrase | undefined,
  quantity: Quantity | undefined,
  wording: Wording,
  withUnit: boolean,
) {
  const { messages, unit, decimals } = wording;
  if (value instanceof CellError) return value.code;
  if (value instanceof Phrase) return messages.phrase(value.saying);
  if (typeof value !== "number") return String(value ?? "");
  if (quantity === undefined || quantity.holds !== "number") return String(value);
  const words = withUnit || isInHundredths(quantity) ? messages : undefined;
  return shownNumber(value, quantity, unit, words, isWeight(quantity) ? decimals : undefined);
}
