import { bind } from "../cells/bind";
import { CellError } from "../cells/values";
import type { Example, FunctionSpec } from "../core/define";
import { columnsInWords, formula, meaning, oneCellForm, rowsOf, shownNumber, signature } from "../core/describe";
import type { Entry } from "../core/entry";
import { errorInWords } from "../words/error-in-words";
import type { Messages } from "../words/messages";
import { Said } from "./said";
import { useMessages } from "./use-messages";

/** One function: a line that opens into everything its page says, but for sources and checks. */
export function FunctionEntry({ entry: { spec, page } }: { readonly entry: Entry }) {
  const { cautions, deferral, reference, says } = useMessages();
  const first = page.examples[0];
  const oneCell = first === undefined ? undefined : oneCellForm(spec, first.given);
  return (
    <details>
      <summary>
        <span className="name">{spec.id}</span>
        <span className="what">
          <Said text={page.summary} />
        </span>
      </summary>
      <div className="entry">
        <pre>
          <code>{signature(spec)}</code>
        </pre>
        <Heading of="arguments" />
        <dl>
          {spec.parameters.map((parameter) => (
            <div key={parameter.name}>
              <dt>{parameter.name}</dt>
              <dd>
                <p>
                  <Said text={meaning(parameter, page.parameters)} />
                </p>
                <p className="bounds">{reference.limits(parameter)}</p>
              </dd>
            </div>
          ))}
        </dl>
        <Heading of="answer" />
        <p>{reference.gives(spec)}</p>
        <Columns spec={spec} />
        {oneCell === undefined ? null : (
          <>
            <p>{reference.oneCell}</p>
            <pre>
              <code>{oneCell}</code>
            </pre>
          </>
        )}
        <Heading of="use" />
        <pre>
          <code>{says(page.formula)}</code>
        </pre>
        {page.guide.map((paragraph) => (
          <p key={paragraph}>
            <Said text={paragraph} />
          </p>
        ))}
        <Heading of="examples" />
        {page.examples.map((example) => (
          <WorkedExample key={example.shows} spec={spec} example={example} />
        ))}
        {page.cautions.length === 0 ? null : (
          <>
            <Heading of="cautions" />
            {page.cautions.map(({ id, title, text }) => (
              <p key={id}>
                <strong>{cautions[id]?.title ?? title}</strong> {cautions[id]?.text ?? text}
              </p>
            ))}
            <p>{deferral}</p>
          </>
        )}
      </div>
    </details>
  );
}

function Heading({ of }: { readonly of: keyof Messages["reference"]["headings"] }) {
  const { reference } = useMessages();
  return <h3>{reference.headings[of]}</h3>;
}

function Columns({ spec }: { readonly spec: FunctionSpec }) {
  const { reference, columns: words } = useMessages();
  const columns = columnsInWords(spec);
  if (columns.length === 0) return null;
  return (
    <ul>
      {columns.map(({ name, column, format }) => (
        <li key={name}>{reference.column(name, format, words[column] ?? column)}</li>
      ))}
    </ul>
  );
}

function WorkedExample({ spec, example: { given, gives, shows } }: { spec: FunctionSpec; example: Example }) {
  const messages = useMessages();
  const { reference } = messages;
  const rows = rowsOf(gives);
  const written = formula(spec, given);
  const answer = typeof gives === "object" && "error" in gives ? bind(spec)(...given)[0]?.[0] : undefined;
  return (
    <div className="example">
      <p>
        <Said text={shows} asSentence />
      </p>
      <pre>
        <code>{written}</code>
      </pre>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than the pane is scrolled with the arrow keys */}
      <section className="answer" aria-label={reference.answerOf(written)} tabIndex={0}>
        <table>
          <tbody>
            {rows.map((row, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: the rows of an example never move
              <tr key={index}>
                {row.map((cell, column) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: nor do its columns
                  <td key={column} className={typeof cell === "number" ? "number" : undefined}>
                    {typeof cell === "number" ? shownNumber(cell) : cell}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {answer instanceof CellError ? <p className="bounds">{errorInWords(answer, messages)}</p> : null}
    </div>
  );
}
