import { cautionsOf, type Job } from "../../jobs/job";
import { useMessages } from "../use-messages";

/** What to be careful of in a job. */
export function JobCautions({ job }: { readonly job: Job }) {
  const messages = useMessages();
  const cautions = cautionsOf(job);
  if (cautions.length === 0) return null;
  return (
    <aside className="cautions" aria-label={messages.tabs.cautions}>
      <h2>{messages.tabs.cautions}</h2>
      {cautions.map(({ id }) => (
        <p key={id}>
          <strong>{messages.cautions[id]?.title}</strong> {messages.cautions[id]?.text}
        </p>
      ))}
      <p>{messages.deferral}</p>
    </aside>
  );
}
