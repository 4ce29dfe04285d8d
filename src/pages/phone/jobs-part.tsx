import { useEffect, useRef } from "react";
import { jobs } from "../../jobs/jobs";
import { OpenJob } from "./open-job";
import { usePhone } from "./phone-context";

/** The list of jobs, or the one that is open. */
export function JobsPart() {
  const { speech, settings, choose, lot } = usePhone();
  const { messages } = speech;
  const list = useRef<HTMLOListElement>(null);
  const left = useRef<string>();
  const job = jobs.find(({ id }) => id === settings.job);
  // Back in the list, on from the job that was left.
  useEffect(() => {
    if (job !== undefined) left.current = job.id;
    else if (left.current !== undefined) list.current?.querySelector<HTMLElement>(`#open-${left.current}`)?.focus();
  }, [job]);
  // What was typed into one lot must not stay on the screen in another.
  if (job !== undefined) return <OpenJob key={`${job.id} ${lot?.id}`} job={job} />;
  return (
    <>
      <h1>{messages.tabs.jobs}</h1>
      <ol className="jobs" ref={list}>
        {jobs.map(({ id }) => (
          <li key={id}>
            <button type="button" id={`open-${id}`} onClick={() => choose({ job: id })}>
              <span className="name">{messages.jobs[id]?.title}</span>
              <span className="what">{messages.jobs[id]?.question}</span>
            </button>
          </li>
        ))}
      </ol>
    </>
  );
}
