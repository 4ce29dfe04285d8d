import type { Understood } from "../../jobs/read-text";
import { useMessages } from "../use-messages";

interface OfferedReadingsProps {
  readonly understood: Understood | undefined;
  /** The input that gets the reading that is chosen, and the keyboard back. */
  readonly id: string;
  readonly take: (text: string) => void;
}

/** What a text may mean, each a button that writes it so. */
export function OfferedReadings({ understood, id, take }: OfferedReadingsProps) {
  const messages = useMessages();
  if (understood?.is !== "problem" || understood.readings === undefined) return null;
  return (
    <span className="readings">
      {understood.readings.map(({ becomes, says }) => (
        <button
          key={becomes}
          type="button"
          className="plain"
          onClick={() => {
            document.getElementById(id)?.focus();
            take(becomes);
          }}
        >
          {says(messages)}
        </button>
      ))}
    </span>
  );
}
