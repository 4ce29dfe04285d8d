import type { RefObject } from "react";
import type { CellContent, CellPlace, WorkbookHost } from "../../host/workbook-host";
import type { Outcome } from "../../without-add-in/carry-out";
import type { Way } from "../../without-add-in/plan";
import { referenceTo } from "../../workbook/references";
import { useMessages } from "../use-messages";

/** More places than this are counted, not listed. */
const mostListed = 30;

interface OutcomeShownProps {
  readonly way: Way;
  readonly was: Outcome;
  readonly host: WorkbookHost;
  readonly heading: RefObject<HTMLHeadingElement>;
}

/** What has changed, what could not, and which cells show something else than before. */
export function OutcomeShown({ way, was, host, heading }: OutcomeShownProps) {
  const { withoutAddIn: words, problems, joined } = useMessages();
  const { formulas, put, takenOut, left, sheetsLeft, others } = was;
  const shown = (value: CellContent): string => (value === "" ? words.blank : String(value));
  const said = [
    words.done[way](formulas),
    ...(put.length > 0 ? [words.namesIn(put.length)] : []),
    ...(takenOut.length > 0 ? [words.namesOut(takenOut.length)] : []),
    ...(way === "to names" && formulas > 0 && others.length === 0 ? [words.sameAnswers] : []),
  ];
  return (
    <>
      <h2 ref={heading} tabIndex={-1} className="done">
        {joined.sentences(said)}
      </h2>
      {left.length + sheetsLeft.length === 0 ? null : (
        <section aria-label={words.left}>
          <h3>{words.left}</h3>
          {sheetsLeft.map(({ sheet, trouble }) => (
            <p key={sheet}>{words.leftSheet(sheet, problems.host({ trouble }))}</p>
          ))}
          <Places host={host} places={left.map(({ trouble, ...at }) => ({ at, says: problems.host({ trouble }) }))} />
        </section>
      )}
      {others.length === 0 ? null : (
        <section aria-label={words.others}>
          <h3>{words.others}</h3>
          <p className="problem">{words.othersWhy}</p>
          <Places
            host={host}
            places={others.map(({ before, now, ...at }) => ({
              at,
              says: words.beforeAndNow(shown(before), shown(now)),
            }))}
          />
        </section>
      )}
    </>
  );
}

interface PlacesProps {
  readonly host: WorkbookHost;
  readonly places: readonly { readonly at: CellPlace; readonly says: string }[];
}

function Places({ host, places }: PlacesProps) {
  const { withoutAddIn: words } = useMessages();
  if (places.length === 0) return null;
  return (
    <>
      <ul className="findings">
        {places.slice(0, mostListed).map(({ at, says }) => {
          const place = referenceTo({ ...at, rows: 1, columns: 1 });
          return (
            <li key={place}>
              <button
                type="button"
                className="goes"
                aria-label={words.goTo(place)}
                // A sheet that is gone by now, or hidden, is not shown; nothing else happens.
                onClick={() => void host.goTo(at).catch(() => undefined)}
              >
                {place}
              </button>
              <span>{says}</span>
            </li>
          );
        })}
      </ul>
      {places.length > mostListed ? <p>{words.more(places.length - mostListed)}</p> : null}
    </>
  );
}
