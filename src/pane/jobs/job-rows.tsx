import { useRef } from "react";
import {
  type Entries,
  isExample,
  isExampleAt,
  type Row,
  rowsOf,
  textsOf,
  withAllOf,
  withRows,
} from "../../jobs/entries";
import type { Field } from "../../jobs/job";
import { kindOf } from "../../jobs/read-text";
import { unitOf } from "../../jobs/shown-number";
import { referenceTo } from "../../workbook/references";
import { useMessages } from "../use-messages";
import type { FormState } from "./form-state";
import { echo, pickedInWords } from "./job-field";
import { OfferedReadings } from "./offered-readings";
import { PickButton, pickWithKey } from "./pick-button";
import { TypedInput } from "./typed-input";

interface JobRowsProps {
  readonly fields: readonly Field[];
  readonly form: FormState;
  /** Picks a selection of several columns for all fields at once. */
  readonly pickAll: (() => void) | undefined;
}

/** Lists that are typed side by side; those that were picked from the sheet stand above. */
export function JobRows({ fields, form, pickAll }: JobRowsProps) {
  const messages = useMessages();
  const { entries, wording, problems, refused } = form;
  const label = ({ name }: Field) => messages.inputs[name]?.label ?? name;
  const picked = fields.filter(({ name }) => entries[name]?.picked);
  const typed = fields.filter(({ name }) => !entries[name]?.picked);
  const rows = Math.max(0, ...typed.map((field) => textsOf(field, entries, wording).length));
  const id = `${form.id}-${fields[0]?.name ?? ""}`;

  /** Which of the typed rows a function refuses. */
  const rowOf = ({ name }: Field) => {
    const { item } = refused.get(name) ?? {};
    return item !== undefined && item <= rows && !entries[name]?.picked ? item : undefined;
  };

  /** The same change to the rows of every list, so that they stay side by side. */
  const changeRows = (change: (rows: Row[], field: Field) => Row[]) => {
    const whole = withAllOf(entries, fields);
    const changed = fields.reduce(
      (all: Entries, field) => withRows(all, field, change([...rowsOf(field, whole, wording)], field)),
      whole,
    );
    form.change(changed);
  };
  const addRow = () =>
    changeRows((all, { parameter }) => [...all, Object.keys(parameter.quantity.choices ?? { "": [] })[0] ?? ""]);
  const list = useRef<HTMLFieldSetElement>(null);
  const removeRow = (row: number) => {
    // The last button goes with its row, and that of a single row cannot be pressed: the keyboard must not be on it.
    const isLast = row === rows - 1;
    if (rows === 2) list.current?.querySelector<HTMLElement>(`#${id}-add`)?.focus();
    else if (isLast) list.current?.querySelector<HTMLElement>(`#${id}-remove-${row}`)?.focus();
    changeRows((all) => all.filter((_, index) => index !== row));
  };

  return (
    <fieldset className="rows" ref={list}>
      <legend>{messages.lists[fields[0]?.name ?? ""]}</legend>
      {pickAll === undefined ? null : (
        <button type="button" className="plain" onClick={pickAll}>
          {messages.form.pickAll}
        </button>
      )}
      {picked.map((field) => (
        <div className="line" key={field.name}>
          <span>{label(field)}</span>
          <output className="reference">
            {messages.joined.told(
              messages.form.picked(referenceTo(entries[field.name]?.picked as NonNullable<Entries[string]["picked"]>)),
              pickedInWords(form, field),
            )}
          </output>
          <PickButton form={form} field={field} label={label(field)} />
        </div>
      ))}
      {fields.map((field) => {
        // What is said of a row that is typed stands below that row.
        const says = problems[field.name] ?? (rowOf(field) === undefined ? refused.get(field.name)?.says : undefined);
        return says === undefined ? null : (
          <p key={field.name} id={problemId(form, field)} className="problem" role="alert">
            {says(messages)}
          </p>
        );
      })}
      {typed.length === 0 ? null : (
        <>
          {typed.some((field) => isExample(field, entries, wording)) ? (
            <p className="notes">{messages.form.exampleRows}</p>
          ) : null}
          <table className="typed">
            <thead>
              <tr>
                {typed.map((field) => (
                  <th key={field.name} scope="col" className={kindOf(field.parameter.quantity)}>
                    <span>{heading(label(field), field, form)}</span>
                    <PickButton form={form} field={field} label={label(field)} />
                  </th>
                ))}
                <td className="remove" />
              </tr>
            </thead>
            <tbody>
              {Array.from({ length: rows }, (_, row) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a row is known by its place alone
                <tr key={row}>
                  {typed.map((field) => (
                    <td key={field.name}>
                      <RowInput field={field} row={row} form={form} label={label(field)} refusedRow={rowOf(field)} />
                    </td>
                  ))}
                  <td className="remove">
                    <button
                      type="button"
                      className="plain"
                      id={`${id}-remove-${row + 1}`}
                      aria-label={messages.form.removeRowName(row + 1)}
                      disabled={rows < 2}
                      onClick={() => removeRow(row)}
                    >
                      {messages.form.removeRow}
                    </button>
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
          <button type="button" className="plain" id={`${id}-add`} onClick={addRow}>
            {messages.form.addRow}
          </button>
        </>
      )}
    </fieldset>
  );
}

const problemId = ({ id }: FormState, { name }: Field): string => `${id}-${name}-problem`;

function heading(label: string, { parameter }: Field, { wording }: FormState): string {
  const kind = kindOf(parameter.quantity);
  const unit = kind === "number" ? unitOf(parameter.quantity, wording.unit, wording.messages) : "";
  return unit === "" ? label : wording.messages.joined.withUnit(label, unit);
}

function RowInput(props: {
  readonly field: Field;
  readonly row: number;
  readonly form: FormState;
  readonly label: string;
  /** The row that a function refuses, from 1; without, a refusal is about all of them. */
  readonly refusedRow: number | undefined;
}) {
  const { field, row, form, label, refusedRow } = props;
  const messages = useMessages();
  const { entries, wording, readings } = form;
  const rows = rowsOf(field, entries, wording);
  const reading = readings.get(field.name);
  const understood = reading && "typed" in reading ? reading.typed[row] : undefined;
  const text = textsOf(field, entries, wording)[row] ?? "";
  const id = `${form.id}-${field.name}-${row + 1}`;
  const refusal = form.refused.get(field.name);
  const isRefused = refusal !== undefined && (refusedRow === undefined || refusedRow === row + 1);
  const refusalHere = isRefused && refusedRow !== undefined ? refusal.says : undefined;
  const problem = (understood?.is === "problem" ? understood.says : refusalHere)?.(messages);
  const type = (typed: string) => {
    const changed = Array.from({ length: Math.max(rows.length, row + 1) }, (_, index) => rows[index] ?? "");
    changed[row] = typed;
    form.change(withRows(entries, field, changed));
  };
  const [note] = echo(text, understood, field, wording);
  return (
    <>
      <TypedInput
        id={id}
        quantity={field.parameter.quantity}
        text={text}
        label={messages.joined.list([label, messages.form.row(row + 1)])}
        change={type}
        describedBy={isRefused && refusalHere === undefined ? `${id}-notes ${problemId(form, field)}` : `${id}-notes`}
        isBroken={problem !== undefined || isRefused}
        isExample={isExampleAt(row, field, entries, wording)}
        keys={pickWithKey(form, field)}
      />
      <p id={`${id}-notes`} className={problem === undefined ? "notes" : "problem"}>
        {problem ?? note}
        <OfferedReadings understood={understood} id={id} take={type} />
      </p>
    </>
  );
}
