import { isExample, textsOf, type Wording, withRows } from "../../jobs/entries";
import type { Field } from "../../jobs/job";
import { kindOf, type Understood } from "../../jobs/read-text";
import { shownNumber, typedNumber, unitOf } from "../../jobs/shown-number";
import { referenceTo } from "../../workbook/references";
import { useMessages } from "../use-messages";
import type { FormState } from "./form-state";
import { OfferedReadings } from "./offered-readings";
import { PickButton, pickWithKey } from "./pick-button";
import { TypedInput } from "./typed-input";

/** A field with its unit, what it was taken for, and what is wrong with it. */
export function JobField({ field, form }: { readonly field: Field; readonly form: FormState }) {
  const messages = useMessages();
  const { entries, wording, readings, problems, refused } = form;
  const { name, parameter } = field;
  const { label = name, help = "" } = messages.inputs[name] ?? {};
  const id = `${form.id}-${name}`;
  const reading = readings.get(name);
  const understood = reading && "typed" in reading ? reading.typed[0] : undefined;
  const area = entries[name]?.picked;
  const kind = kindOf(parameter.quantity);
  const text = textsOf(field, entries, wording)[0] ?? "";
  // A percentage is typed with its sign, or taken for one in words.
  const unit = kind === "percent" && text !== "" ? "" : unitOf(parameter.quantity, wording.unit, messages);
  const says = problems[name] ?? (understood?.is === "problem" ? understood.says : refused.get(name)?.says);
  const problem = says?.(messages);
  const type = (typed: string) => form.change(withRows(entries, field, [typed]));
  const notes = [
    ...(area ? [] : echo(text, understood, field, wording)),
    ...(isExample(field, entries, wording) ? [messages.form.example] : []),
    ...(parameter.optional && text === "" && !area && help === "" ? [messages.form.optional] : []),
  ];
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <div className="line">
        {area ? (
          <output id={id} className="reference" tabIndex={-1}>
            {messages.joined.told(messages.form.picked(referenceTo(area)), pickedInWords(form, field))}
          </output>
        ) : (
          <TypedInput
            id={id}
            quantity={parameter.quantity}
            text={text}
            change={type}
            describedBy={`${id}-help ${id}-problem`}
            isBroken={problem !== undefined}
            isExample={isExample(field, entries, wording)}
            keys={pickWithKey(form, field)}
          />
        )}
        {unit === "" || area ? null : <span className="unit">{unit}</span>}
        <PickButton form={form} field={field} label={label} />
      </div>
      <p id={`${id}-help`} className="help">
        {messages.joined.sentences([...(help === "" ? [] : [help]), ...notes])}
      </p>
      <p id={`${id}-problem`} className="problem">
        {problem}
        <OfferedReadings understood={area ? undefined : understood} id={id} take={type} />
      </p>
    </div>
  );
}

/** What a number was taken for, where that could be in doubt. */
export function echo(text: string, understood: Understood | undefined, { parameter }: Field, wording: Wording) {
  if (understood?.is !== "value" || typeof understood.value !== "number") return [];
  const kind = kindOf(parameter.quantity);
  // 76 % and 12.5 say themselves what they are.
  const isPlain = kind === "percent" ? /^[\d.]+ ?%$/ : kind === "time" ? /^\d{1,3}:\d\d$/ : /^[\d.]+$/;
  if (isPlain.test(text.trim())) return [];
  const { messages, unit } = wording;
  return [messages.form.understood(typedNumber(understood.value, parameter.quantity, unit, messages))];
}

/** A picked cell with what it holds; of several, how many. */
export function pickedInWords({ picked, wording }: FormState, { name, parameter }: Field): string {
  const { messages, unit } = wording;
  const values = picked[name];
  if (values === undefined) return "…";
  const count = values.reduce((sum, row) => sum + row.length, 0);
  if (count !== 1) return messages.form.filledCells(count);
  const value = values[0]?.[0];
  return typeof value === "number" ? shownNumber(value, parameter.quantity, unit, messages) : String(value ?? "");
}
