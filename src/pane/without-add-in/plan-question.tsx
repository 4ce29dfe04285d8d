import { type RefObject, useState } from "react";
import { formulasIn, type Plan } from "../../without-add-in/plan";
import { Choice } from "../choice";
import { useMessages } from "../use-messages";

interface PlanQuestionProps {
  readonly plan: Plan;
  readonly heading: RefObject<HTMLHeadingElement> | undefined;
  readonly answer: (isWanted: boolean, keepsNames: boolean) => void;
}

/** Whether there is anything to ask. */
export const hasWork = (plan: Plan): boolean =>
  formulasIn(plan) + plan.locked.length + plan.changed.length > 0 ||
  (plan.way === "back" ? plan.uncalled.length > 0 : plan.blocked.length > 0);

/** What one way would change, exactly, and the buttons that answer. */
export function PlanQuestion({ plan, heading, answer }: PlanQuestionProps) {
  const { withoutAddIn: words } = useMessages();
  const [keepsNames, keepNames] = useState(false);
  const { way, sheets, locked, changed, put, uncalled, without, taken, blocked } = plan;
  const count = formulasIn(plan);
  const isBack = way === "back";
  const canChange = count > 0 || changed.length > 0 || (isBack && uncalled.length > 0);
  const lines = [
    count > 0 && words.formulas[way](count, sheets.length),
    changed.length > 0 && words.changedNames(changed.map(({ name }) => name)),
    !isBack && put.length > 0 && words.put(put.length),
    isBack && uncalled.length > 0 && words.takenOut(uncalled.length),
    !isBack && without.length > 0 && words.without(without),
    ...locked.map(({ sheet, formulas }) => words.locked(sheet, formulas)),
    taken.length > 0 && words.taken(taken),
    !isBack && blocked.length > 0 && words.blocked(blocked),
    words.unseen,
  ].filter((line) => line !== false);
  const id = isBack ? "way-back" : "way-to-names";
  return (
    <section aria-labelledby={id}>
      <h2 id={id} ref={heading} tabIndex={-1}>
        {words.headings[way]}
      </h2>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {!canChange ? null : (
        <>
          <p>
            <strong>{words.copy}</strong>
          </p>
          <div className="write">
            {isBack && uncalled.length > 0 ? (
              <Choice
                id="keep-names"
                label={words.keepNames}
                help={words.keepNamesHelp}
                isChosen={keepsNames}
                choose={keepNames}
              />
            ) : null}
            <button type="button" className={isBack ? "plain" : "primary"} onClick={() => answer(true, keepsNames)}>
              {words.button[way](count)}
            </button>
            <button type="button" className="plain" onClick={() => answer(false, false)}>
              {words.leave}
            </button>
          </div>
        </>
      )}
    </section>
  );
}
