import { headers } from "../../core/define";
import { signature } from "../../core/describe";
import { isWeight } from "../../core/quantities";
import { errorInWords } from "../../words/error-in-words";
import { addressOf } from "../../workbook/addresses";
import { shownValue } from "../../working/shown-value";
import type { CallWorking, CellWorking, ShownArgument } from "../../working/working-of";
import { Said } from "../said";
import { useMessages } from "../use-messages";
import { StepList } from "./step-list";

/** The way to have the workbook work out what it does not work out unasked. */
interface Ask {
  readonly onAsk: () => void;
  /** Why it did not come to anything. */
  readonly problem: string | undefined;
}

/** Everything that is known of a cell's working. Whatever comes from the sheet is shown as text. */
export function ShownCellWorking({ found, ask }: { readonly found: CellWorking; readonly ask?: Ask }) {
  const messages = useMessages();
  const { working } = messages;
  const { calls, cell, isCall, error, unit } = found;
  const quantity = resultQuantity(calls.at(-1));
  // What the formula does more may have made something else of it.
  const shown = shownValue(cell, isCall ? quantity : undefined, isCall ? unit : "");
  // The unit that the cell shows is that of weights where its answer is one.
  const weightUnit = quantity === undefined || isWeight(quantity) ? unit : "";
  return (
    <>
      {found.partOf === undefined ? null : <PlaceInSpill {...found.partOf} />}
      <pre>
        <code>{found.formula}</code>
      </pre>
      {found.canAsk && ask !== undefined ? <AskWorkbook {...ask} /> : null}
      {calls.map((call, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the calls of a formula have no name, and may be alike
        <ShownCall key={index} call={call} unit={weightUnit} />
      ))}
      <p>
        <strong>{cell === "" ? working.cellShows(`“”`) : working.cellShows(shown)}</strong>{" "}
        {isCall ? (differs(found) ? working.differs : "") : working.doesMore}
        {error === undefined || error.message === "" ? null : ` ${errorInWords(error, messages)}`}
      </p>
      {weightUnit === "" ? <p className="bounds">{working.inYourUnit}</p> : null}
    </>
  );
}

/** Which part of an answer the selected cell shows. */
function PlaceInSpill({ spill, row, column, shows }: NonNullable<CellWorking["partOf"]>) {
  const { working } = useMessages();
  const place = { ...spill, row: row - spill.row + 1, column: column - spill.column + 1 };
  return <p>{working.partOf(addressOf(row, column), shownValue(shows, undefined), place)}</p>;
}

function AskWorkbook({ onAsk, problem }: Ask) {
  const { working } = useMessages();
  return (
    <section className="ask" aria-label={working.ask}>
      <p>{working.askWhy}</p>
      <button type="button" onClick={onAsk}>
        {working.ask}
      </button>
      <p role="alert" className="problem">
        {problem}
      </p>
    </section>
  );
}

function resultQuantity(call: CallWorking | undefined) {
  const result = call?.entry.spec.result;
  return result !== undefined && "quantity" in result ? result.quantity : undefined;
}

/** A cell may hold what it was before its inputs changed. */
function differs({ calls, cell }: CellWorking): boolean {
  const outcome = calls.at(-1)?.outcome;
  if (outcome?.is !== "steps" || typeof cell !== "number") return false;
  const gives = outcome.steps.at(-1)?.gives;
  return typeof gives === "number" && Math.abs(gives - cell) > 1e-9 * Math.max(Math.abs(gives), Math.abs(cell));
}

function ShownCall({ call, unit }: { readonly call: CallWorking; readonly unit: string }) {
  const { working, cautions, deferral, says } = useMessages();
  const { spec, page } = call.entry;
  return (
    <section className="call" aria-label={signature(spec)}>
      <h2>{spec.id}</h2>
      <p>
        <Said text={page.summary} />
      </p>
      <h3>{working.inSymbols}</h3>
      <pre>
        <code>{says(page.formula)}</code>
      </pre>
      <h3>{working.arguments}</h3>
      <dl className="given">
        {call.given
          .filter(({ parameter }) => parameter !== headers)
          .map((argument) => (
            <div key={argument.parameter.name}>
              <dt>{argument.parameter.name}</dt>
              <dd>
                <Argument argument={argument} />
              </dd>
            </div>
          ))}
      </dl>
      {call.tooMany === 0 ? null : <p className="problem">{working.tooMany(call.tooMany)}</p>}
      <h3>{working.steps}</h3>
      <Outcome call={call} unit={unit} />
      <h3>{working.source}</h3>
      {page.sources.length === 0 ? (
        <p>{working.noSource}</p>
      ) : (
        <ul>
          {page.sources.map(({ work, place }) => (
            <li key={work.title + place}>
              {work.authors}: {work.title}, {work.published}; {place} ({working.sourceStatus[work.status]})
            </li>
          ))}
        </ul>
      )}
      {page.cautions.length === 0 ? null : (
        <>
          <h3>{working.cautions}</h3>
          {page.cautions.map((caution) => (
            <p key={caution.id}>
              <strong>{(cautions[caution.id] ?? caution).title}</strong> {(cautions[caution.id] ?? caution).text}
            </p>
          ))}
          <p>{deferral}</p>
        </>
      )}
      <p>
        <a href={`docs/functions/${spec.id.toLowerCase()}.html`} target="_blank" rel="noreferrer">
          {working.docs(spec.id)}
        </a>
      </p>
    </section>
  );
}

function Outcome({ call, unit }: { readonly call: CallWorking; readonly unit: string }) {
  const messages = useMessages();
  const { working } = messages;
  const { outcome } = call;
  switch (outcome.is) {
    case "steps":
      return <StepList steps={outcome.steps} spec={call.entry.spec} unit={unit} />;
    case "waits":
      return <p>{working.waits}</p>;
    case "error":
      return <p className="problem">{working.refused(errorInWords(outcome.error, messages))}</p>;
    case "unknown":
      return <p>{(outcome.canAsk ? working.unknownYet : working.unknown)(messages.joined.list(outcome.texts))}</p>;
  }
}

/** `B4 = 320 g`, a list by its first values, or what is said of an argument without a value. */
function Argument({ argument }: { readonly argument: ShownArgument }) {
  const { working, joined } = useMessages();
  const { parameter, text, is, rows, rowPicked, unit, canAsk } = argument;
  const { fallback, quantity } = parameter;
  if (is === "left out") {
    return <>{fallback === undefined ? working.leftOut : working.countsAs(shownValue(fallback, quantity))}</>;
  }
  const written = <code>{text}</code>;
  if (rows === undefined) {
    return (
      <>
        {written}
        {joined.told("", joined.parts([working.workedOut, canAsk ? working.notYet : working.notKnown]))}
      </>
    );
  }
  const values = rows.flat();
  const show = (value: unknown) => (value === null || value === "" ? working.blank : shownValue(value, quantity, unit));
  const takesList = parameter.takes === "list";
  const shown = takesList
    ? joined.list([...values.slice(0, 6).map(show), ...(values.length > 6 ? ["…"] : [])])
    : show(values[0]);
  const note = [
    rowPicked === undefined ? "" : working.rowPicked(rowPicked),
    takesList && values.length > 1 ? working.values(values.length) : "",
    is === "arithmetic" || is === "expression" ? working.workedOut : "",
  ].filter((each) => each !== "");
  return (
    <>
      {written} = {shown}
      {note.length === 0 ? "" : joined.aside("", joined.parts(note))}
    </>
  );
}
