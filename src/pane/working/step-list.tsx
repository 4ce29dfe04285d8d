import type { Column, FunctionSpec, Step } from "../../core/define";
import { isWeight, type Quantity } from "../../core/quantities";
import { shownValue } from "../../working/shown-value";
import { useMessages } from "../use-messages";

/** More rows than this are not shown: the sheet has them. */
const mostRows = 12;

/** The steps to an answer: what is worked out, in symbols, with the numbers put in, and what it comes to. */
export function StepList({ steps, spec, unit }: { steps: readonly Step[]; spec: FunctionSpec; unit: string }) {
  const { says } = useMessages();
  return (
    <ol className="steps">
      {steps.map((step) => (
        <li key={step.says}>
          <p>{says(step.says)}</p>
          <p className="formula">
            <code>{says(step.symbols)}</code>
          </p>
          <p className="formula">
            <code>
              {says(step.numbers)}
              {Array.isArray(step.gives) || step.gives === ""
                ? ""
                : ` = ${shownValue(step.gives, step.quantity, unitFor(step.quantity, unit))}`}
            </code>
          </p>
          {Array.isArray(step.gives) ? <Rows gives={step.gives} step={step} spec={spec} unit={unit} /> : null}
        </li>
      ))}
    </ol>
  );
}

/** Only a weight has the unit of the cells. */
const unitFor = (quantity: Quantity | undefined, unit: string): string =>
  quantity !== undefined && isWeight(quantity) ? unit : "";

interface RowsProps {
  readonly gives: readonly unknown[];
  readonly step: Step;
  readonly spec: FunctionSpec;
  readonly unit: string;
}

function Rows({ gives, step, spec, unit }: RowsProps) {
  const { working, says, columns: words } = useMessages();
  const columns: readonly Column[] = "columns" in spec.result ? spec.result.columns : [];
  const isOneRow = spec.result.shape === "row";
  const rows: readonly (readonly unknown[])[] = isOneRow
    ? [gives]
    : gives.map((row) => (Array.isArray(row) ? row : [row]));
  const quantityOf = (column: number) => step.quantity ?? columns[Math.min(column, columns.length - 1)]?.quantity;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than the pane is scrolled with the arrow keys
    <section className="answer" aria-label={says(step.says)} tabIndex={0}>
      <table>
        {columns.length === 0 ? null : (
          <thead>
            <tr>
              {(rows[0] ?? []).map((_, place) => {
                const column = columns[Math.min(place, columns.length - 1)] as Column;
                const number = column.repeats ? ` ${place - columns.length + 2}` : "";
                return (
                  <th key={`${column.name}${number}`} scope="col">{`${words[column.name] ?? column.name}${number}`}</th>
                );
              })}
            </tr>
          </thead>
        )}
        <tbody>
          {rows.slice(0, mostRows).map((row, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the rows of an answer have no other name
            <tr key={index}>
              {row.map((value, column) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: nor have its columns
                <td key={column} className={typeof value === "number" ? "number" : undefined}>
                  {shownValue(value, quantityOf(column), unitFor(quantityOf(column), unit))}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {rows.length > mostRows ? <p className="bounds">{working.rowsOfTable(mostRows, rows.length)}</p> : null}
    </section>
  );
}
