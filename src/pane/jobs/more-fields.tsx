import { useEffect, useRef } from "react";
import type { Field } from "../../jobs/job";
import { useMessages } from "../use-messages";
import type { FormState } from "./form-state";
import { JobField } from "./job-field";

interface MoreFieldsProps {
  readonly fields: readonly Field[];
  readonly form: FormState;
  /** Whether one of them needs another look: then they unfold with whatever is typed, so that nobody has to search. */
  readonly needLook: boolean;
}

/** Fields that most makers leave blank, folded away. */
export function MoreFields({ fields, form, needLook }: MoreFieldsProps) {
  const { more } = useMessages().form;
  const folded = useRef<HTMLDetailsElement>(null);
  const { entries } = form;
  // biome-ignore lint/correctness/useExhaustiveDependencies: somebody may have folded them again since the last entry.
  useEffect(() => {
    if (needLook && folded.current) folded.current.open = true;
  }, [needLook, entries]);
  if (fields.length === 0) return null;
  return (
    <details ref={folded}>
      <summary>{more}</summary>
      {fields.map((field) => (
        <JobField key={field.name} field={field} form={form} />
      ))}
    </details>
  );
}
