import { useEffect, useRef, useState } from "react";
import type { WorkbookHost } from "../../host/workbook-host";
import { entriesOfJobs } from "../../jobs/entries";
import { jobs } from "../../jobs/jobs";
import type { WeightUnit } from "../../jobs/shown-number";
import { kept } from "../kept";
import { Later } from "../later";
import { withoutAddIn } from "../parts";
import { useMessages } from "../use-messages";
import { JobForm } from "./job-form";

interface JobsPageProps {
  readonly host: WorkbookHost | undefined;
  readonly unit: WeightUnit;
  /** The job that is open. */
  readonly open: string | undefined;
  readonly choose: (job: string | undefined) => void;
}

/** Stands behind the jobs, where the workbook's formulas can be changed. */
const whole = "without-add-in";

const keptEntries = kept("jobs", entriesOfJobs, {});

/** The list of jobs, or one of them. What was typed into each is kept, also over a reload. */
export function JobsPage({ host, unit, open, choose }: JobsPageProps) {
  const messages = useMessages();
  const [entries, setEntries] = useState(keptEntries.read);
  const left = useRef<string>();
  const list = useRef<HTMLOListElement>(null);
  const job = jobs.find(({ id }) => id === open);
  const changing = host?.changesFormulas === true ? host : undefined;
  const isWhole = open === whole && changing !== undefined;

  useEffect(() => keptEntries.write(entries), [entries]);
  // Back in the list, on from the job that was left.
  useEffect(() => {
    if (isWhole) left.current = whole;
    else if (job !== undefined) left.current = job.id;
    else if (left.current !== undefined) list.current?.querySelector<HTMLElement>(`#open-${left.current}`)?.focus();
  }, [job, isWhole]);

  if (isWhole) return <Later part={withoutAddIn} given={{ host: changing, leave: () => choose(undefined) }} />;
  if (job !== undefined) {
    return (
      <JobForm
        key={job.id}
        job={job}
        host={host}
        unit={unit}
        entries={entries[job.id] ?? {}}
        change={(change) => setEntries((all) => ({ ...all, [job.id]: change(all[job.id] ?? {}) }))}
        leave={() => choose(undefined)}
      />
    );
  }
  return (
    <>
      <h1>{messages.tabs.jobs}</h1>
      <ol className="jobs" ref={list}>
        {jobs.map(({ id }) => (
          <li key={id}>
            <button type="button" id={`open-${id}`} onClick={() => choose(id)}>
              <span className="name">{messages.jobs[id]?.title}</span>
              <span className="what">{messages.jobs[id]?.question}</span>
            </button>
          </li>
        ))}
        {changing === undefined ? null : (
          <li>
            <button type="button" id={`open-${whole}`} onClick={() => choose(whole)}>
              <span className="name">{messages.withoutAddIn.title}</span>
              <span className="what">{messages.withoutAddIn.question}</span>
            </button>
          </li>
        )}
      </ol>
    </>
  );
}
