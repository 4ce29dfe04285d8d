import { useEffect, useMemo, useRef, useState } from "react";
import { weight } from "../../core/quantities";
import { chartedColumn } from "../../core/tables";
import type { CellArea, WorkbookHost } from "../../host/workbook-host";
import { type Entries, withAllOf, withoutField, withPicked } from "../../jobs/entries";
import { type Field, inputsOf, type Job, listsOf, moreOf } from "../../jobs/job";
import { answersOf, brokenFields, numberIn, readingsOf } from "../../jobs/job-answer";
import type { Filled } from "../../jobs/job-block";
import { refusalInWords, refusedFields } from "../../jobs/refusals";
import { decimalsOf, type WeightUnit } from "../../jobs/shown-number";
import type { Messages, Says } from "../../words/messages";
import { Later } from "../later";
import { writeBlock } from "../parts";
import { Pictures } from "../pictures/picture-later";
import { useMessages } from "../use-messages";
import type { FormState } from "./form-state";
import { JobCautions } from "./job-cautions";
import { JobField } from "./job-field";
import { JobPreview } from "./job-preview";
import { JobRows } from "./job-rows";
import { MoreFields } from "./more-fields";
import { pickId } from "./pick-button";
import { inWords, usePicked } from "./use-picked";

interface JobFormProps {
  readonly job: Job;
  readonly host: WorkbookHost | undefined;
  readonly unit: WeightUnit;
  readonly entries: Entries;
  readonly change: (change: (entries: Entries) => Entries) => void;
  readonly leave: () => void;
}

/** One job: its fields, its answer as they are typed, and the button that writes it into the sheet. */
export function JobForm({ job, host, unit, entries, change, leave }: JobFormProps) {
  const messages = useMessages();
  const wording = useMemo(() => ({ messages, unit }), [messages, unit]);
  const form = useRef<HTMLFormElement>(null);
  const title = useRef<HTMLHeadingElement>(null);
  const [problems, setProblems] = useState<Readonly<Record<string, Says>>>({});
  const picked = usePicked(host, entries);
  const readings = useMemo(() => readingsOf(job, entries, wording), [job, entries, wording]);
  const answers = useMemo(() => answersOf(job, readings, picked.values, picked.problems), [job, readings, picked]);
  const refused = useMemo(() => refusedFields(answers), [answers]);

  // What the keyboard was on goes when cells take its place, or it theirs.
  const keyboardTo = useRef<string>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: a change of the entries is what brings the other thing
  useEffect(() => {
    if (keyboardTo.current !== undefined) form.current?.querySelector<HTMLElement>(keyboardTo.current)?.focus();
    keyboardTo.current = undefined;
  }, [entries]);

  // Whoever opens a job with the keyboard goes on from its title.
  useEffect(() => title.current?.focus(), []);

  const pick = async (fields: readonly Field[]) => {
    if (host === undefined || fields.length === 0) return;
    const at = (fields[0] as Field).name;
    try {
      const areas = areasFor(fields, await host.selection());
      if (typeof areas === "string") return setProblems({ [at]: ({ problems }) => problems[areas] });
      if (!Array.isArray(areas)) {
        return setProblems({ [at]: ({ problems }) => problems.pickColumns(areas.least, areas.most) });
      }
      setProblems({});
      if (fields.length === 1) keyboardTo.current = `#${pickId(job, fields[0] as Field)}`;
      // Columns that the selection does not have are left out, and no example of ours stands in for them.
      change((now) =>
        fields.reduce((all, field, index) => {
          const area = areas[index];
          return area ? withPicked(all, field, area) : withoutField(all, field);
        }, now),
      );
    } catch (thrown) {
      setProblems({ [at]: inWords(thrown) });
    }
  };
  const togglePick = (field: Field) => {
    if (entries[field.name]?.picked === undefined) return void pick([field]);
    setProblems({});
    keyboardTo.current = `#${job.id}-${field.name}, #${job.id}-${field.name}-1`;
    const beside = listsOf(job).find((list) => list.some(({ name }) => name === field.name)) ?? [];
    change((now) => withAllOf(withPicked(now, field, undefined), beside));
  };

  const state: FormState = {
    id: job.id,
    entries,
    wording,
    readings,
    picked: picked.values,
    problems: { ...picked.problems, ...problems },
    refused,
    change: (changed) => {
      setProblems({});
      change(() => changed);
    },
    togglePick: host && togglePick,
  };
  const step = useMemo(() => numberIn("readability", readings, picked.values), [readings, picked.values]);
  const fine = step === undefined ? wording : { ...wording, decimals: decimalsOf(step, weight) };
  const limit = useMemo(() => numberIn("maxLoad", readings, picked.values), [readings, picked.values]);
  const broken = brokenFields(readings, picked.problems);
  const more = moreOf(job);

  /** To the first marked input of a field, also where it is folded away. */
  const goTo = (name: string) => {
    const id = `${job.id}-${name}`;
    const field = form.current?.querySelector<HTMLElement>(
      `#${id}[aria-invalid], [id^="${id}-"][aria-invalid], #${id}.reference`,
    );
    field?.closest("details")?.setAttribute("open", "");
    field?.focus();
  };
  const filled = (): Filled | Says => {
    const refusal = answers?.find((answer) => answer.refusal !== undefined)?.refusal;
    const wanting = broken[0] ?? [...refused.keys()][0];
    if (wanting !== undefined) goTo(wanting);
    if (answers === undefined) return ({ problems }: Messages) => problems.fixFirst;
    if (refusal !== undefined) {
      const why = refusalInWords(refusal);
      return (messages: Messages) =>
        messages.joined.sentences([messages.problems.noAnswer, messages.answer.refused(why(messages))]);
    }
    return { job, entries, readings, answers, wording: fine };
  };

  return (
    <form ref={form} className="job" noValidate onSubmit={(event) => event.preventDefault()}>
      <button type="button" className="plain back" onClick={leave}>
        ‹ {messages.form.allJobs}
      </button>
      <h1 ref={title} tabIndex={-1}>
        {messages.jobs[job.id]?.title}
      </h1>
      <p>{messages.jobs[job.id]?.question}</p>
      {host === undefined ? null : <p className="help">{messages.form.intro}</p>}
      {inputsOf(job).map((field) => (
        <JobField key={field.name} field={field} form={state} />
      ))}
      {listsOf(job).map((fields) => (
        <JobRows
          key={fields[0]?.name}
          fields={fields}
          form={state}
          pickAll={host === undefined ? undefined : () => void pick(fields)}
        />
      ))}
      <MoreFields
        fields={more}
        form={state}
        needLook={more.some(({ name }) => broken.includes(name) || refused.has(name))}
      />
      <JobPreview job={job} answers={answers} entries={entries} wording={fine} />
      <Pictures answers={answers} limit={limit} unit={messages.units[unit]} />
      {host === undefined ? (
        <p className="help">{messages.shell.noWorkbook}</p>
      ) : (
        <Later
          part={writeBlock}
          given={{
            host,
            filled,
            title: messages.jobs[job.id]?.title ?? "",
            hasChart: job.functions.some((spec) => chartedColumn(spec) !== undefined),
            picked: Object.values(entries).flatMap(({ picked }) => (picked ? [picked] : [])),
          }}
        />
      )}
      {Object.keys(entries).length === 0 ? null : (
        <button
          type="button"
          className="plain"
          onClick={() => {
            state.change({});
            // The button goes away, and the keyboard was on it.
            title.current?.focus();
          }}
        >
          {messages.form.startAgain}
        </button>
      )}
      <JobCautions job={job} />
    </form>
  );
}

/** What of a selection each field gets; a text or the number of columns says what to select instead. */
function areasFor(fields: readonly Field[], selection: CellArea) {
  const { sheet, row, column, rows, columns } = selection;
  const [only] = fields as [Field];
  if (fields.length === 1) {
    if (only.parameter.takes === "cell") return rows * columns === 1 ? [areaOf(selection)] : "pickOne";
    return rows === 1 || columns === 1 ? [areaOf(selection)] : "pickLine";
  }
  const least = fields.findLastIndex(({ parameter }) => !parameter.optional) + 1 || fields.length;
  if (columns < least || columns > fields.length) return { least, most: fields.length };
  return Array.from({ length: columns }, (_, index) => ({ sheet, row, column: column + index, rows, columns: 1 }));
}

const areaOf = ({ sheet, row, column, rows, columns }: CellArea): CellArea => ({ sheet, row, column, rows, columns });
