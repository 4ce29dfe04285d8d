import type { Entries, Wording } from "../../jobs/entries";
import type { Field } from "../../jobs/job";
import type { FieldReading, PickedValues } from "../../jobs/job-answer";
import type { FieldRefusal } from "../../jobs/refusals";
import type { Says } from "../../words/messages";

/** All that the parts of a form share. */
export interface FormState {
  readonly id: string;
  readonly entries: Entries;
  readonly wording: Wording;
  readonly readings: ReadonlyMap<string, FieldReading>;
  readonly picked: PickedValues;
  /** What went wrong with picking cells, by field. */
  readonly problems: Readonly<Record<string, Says>>;
  /** What functions have against fields that can be read. */
  readonly refused: ReadonlyMap<string, FieldRefusal>;
  readonly change: (entries: Entries) => void;
  /** Picks the selected cells for a field, or goes back to typing. Absent without a workbook. */
  readonly togglePick: ((field: Field) => void) | undefined;
}
