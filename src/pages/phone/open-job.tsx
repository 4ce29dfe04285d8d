import { useEffect, useMemo, useRef } from "react";
import { weight } from "../../core/quantities";
import { inputsOf, type Job, listsOf, moreOf } from "../../jobs/job";
import { answersOf, brokenFields, numberIn, readingsOf } from "../../jobs/job-answer";
import { refusedFields } from "../../jobs/refusals";
import { decimalsOf } from "../../jobs/shown-number";
import { entriesIn, withEntries } from "../../lots/lot";
import type { FormState } from "../../pane/jobs/form-state";
import { JobCautions } from "../../pane/jobs/job-cautions";
import { JobField } from "../../pane/jobs/job-field";
import { JobPreview } from "../../pane/jobs/job-preview";
import { JobRows } from "../../pane/jobs/job-rows";
import { MoreFields } from "../../pane/jobs/more-fields";
import { Pictures } from "../../pane/pictures/picture-later";
import { Headline } from "./headline";
import { usePhone } from "./phone-context";

/** One job of the lot that is worked on: the pane's fields and answers, without a workbook around them. */
export function OpenJob({ job }: { readonly job: Job }) {
  const { speech, settings, choose, lot, changeLot } = usePhone();
  const { messages, phone } = speech;
  const unit = lot?.unit ?? settings.unit;
  const entries = entriesIn(lot, job.id);
  const wording = useMemo(() => ({ messages, unit }), [messages, unit]);
  const readings = useMemo(() => readingsOf(job, entries, wording), [job, entries, wording]);
  const answers = useMemo(() => answersOf(job, readings, {}), [job, readings]);
  const refused = useMemo(() => refusedFields(answers), [answers]);
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => title.current?.focus(), []);

  const form: FormState = {
    ...{ id: job.id, entries, wording, readings, picked: {}, problems: {}, refused, togglePick: undefined },
    change: (changed) => changeLot((now, moment) => withEntries(now, job.id, changed, moment)),
  };
  const step = numberIn("readability", readings, {});
  const fine = step === undefined ? wording : { ...wording, decimals: decimalsOf(step, weight) };
  const broken = brokenFields(readings);
  const more = moreOf(job);
  return (
    <form className="job" noValidate onSubmit={(event) => event.preventDefault()}>
      <button type="button" className="plain back" onClick={() => choose({ job: undefined })}>
        ‹ {phone.job.back}
      </button>
      <h1 ref={title} tabIndex={-1}>
        {messages.jobs[job.id]?.title}
      </h1>
      <p>{messages.jobs[job.id]?.question}</p>
      <Headline answers={answers} wording={fine} />
      {inputsOf(job).map((field) => (
        <JobField key={field.name} field={field} form={form} />
      ))}
      {listsOf(job).map((fields) => (
        <JobRows key={fields[0]?.name} fields={fields} form={form} pickAll={undefined} />
      ))}
      <MoreFields
        fields={more}
        form={form}
        needLook={more.some(({ name }) => broken.includes(name) || refused.has(name))}
      />
      <JobPreview job={job} answers={answers} entries={entries} wording={fine} />
      <Pictures answers={answers} limit={numberIn("maxLoad", readings, {})} unit={messages.units[unit]} />
      <p className="help">{phone.job.keptAsTyped}</p>
      {Object.keys(entries).length === 0 ? null : (
        <button
          type="button"
          className="plain"
          onClick={() => {
            form.change({});
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
