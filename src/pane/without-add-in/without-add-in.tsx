import { useEffect, useRef, useState } from "react";
import type { BookFormulas, WorkbookHost } from "../../host/workbook-host";
import { carryOut, type Outcome, type Progress, readBook } from "../../without-add-in/carry-out";
import { type Plan, planOf, type Way } from "../../without-add-in/plan";
import type { Says } from "../../words/messages";
import { inWords } from "../jobs/use-picked";
import { useMessages } from "../use-messages";
import { OutcomeShown } from "./outcome-shown";
import { hasWork, PlanQuestion } from "./plan-question";

export interface WithoutAddInProps {
  readonly host: WorkbookHost;
  readonly leave: () => void;
}

const ways: readonly Way[] = ["to names", "back"];

/** Looks through the workbook, says exactly what would change, and changes it: so that it needs no add-in, or back. */
export function WithoutAddIn({ host, leave }: WithoutAddInProps) {
  const messages = useMessages();
  const { withoutAddIn: words } = messages;
  const title = useRef<HTMLHeadingElement>(null);
  const found = useRef<HTMLHeadingElement>(null);
  const [book, setBook] = useState<BookFormulas>();
  const [outcome, setOutcome] = useState<{ readonly way: Way; readonly was: Outcome }>();
  const [busy, setBusy] = useState<"reading" | Progress>();
  const [problem, setProblem] = useState<{ readonly says: Says; readonly hasBegun: boolean }>();
  const isBusy = busy !== undefined;
  useEffect(() => title.current?.focus(), []);
  // What was found, or came of it, is read next; the button that was pressed may be gone.
  useEffect(() => {
    if (!isBusy) found.current?.focus();
  }, [isBusy]);

  /** Afterwards the workbook is read once more. */
  const attempt = async (work: (hear: (progress: Progress) => void) => Promise<void>) => {
    if (isBusy) return;
    let hasBegun = false;
    setProblem(undefined);
    setOutcome(undefined);
    setBusy("reading");
    try {
      await work((progress) => {
        hasBegun = true;
        setBusy(progress);
      });
      setBook(await readBook(host));
    } catch (thrown) {
      setBook(undefined);
      setProblem({ says: inWords(thrown), hasBegun });
      title.current?.focus();
    } finally {
      setBusy(undefined);
    }
  };
  const look = () => attempt(async () => {});
  const change = (plan: Plan, keepsNames: boolean) =>
    attempt(async (onProgress) => {
      const was = await carryOut(host, plan, { keepsNames, onProgress });
      setOutcome({ way: plan.way, was });
    });
  const forget = () => {
    setBook(undefined);
    setOutcome(undefined);
    title.current?.focus();
  };

  const plans = book === undefined ? [] : ways.map((way) => planOf(book, way));
  const asked = plans.filter(hasWork);
  const without = plans[0]?.without ?? [];
  const said = problem && [problem.says(messages), ...(problem.hasBegun ? [words.brokenOff] : [])];
  return (
    <div className="without-add-in" aria-busy={isBusy}>
      <button type="button" className="plain back" onClick={leave}>
        ‹ {messages.form.allJobs}
      </button>
      <h1 ref={title} tabIndex={-1}>
        {words.title}
      </h1>
      <p>{words.intro}</p>
      <button type="button" className="primary" onClick={() => void look()} aria-disabled={isBusy}>
        {words.look}
      </button>
      <p role="status">
        {busy === undefined ? "" : busy === "reading" ? words.reading : words.progress(busy.sheet, busy.done, busy.all)}
      </p>
      {said === undefined ? null : (
        <p className="problem" role="alert">
          {messages.joined.sentences(said)}
        </p>
      )}
      {book === undefined || isBusy ? null : (
        <>
          {outcome === undefined ? null : <OutcomeShown {...outcome} host={host} heading={found} />}
          {asked.length > 0 || outcome !== undefined ? null : (
            <h2 ref={found} tabIndex={-1}>
              {without.length === 0 ? words.nothing : words.noneHas(without)}
            </h2>
          )}
          {asked.map((plan, index) => (
            <PlanQuestion
              key={plan.way}
              plan={plan}
              heading={outcome === undefined && index === 0 ? found : undefined}
              answer={(isWanted, keepsNames) => (isWanted ? void change(plan, keepsNames) : forget())}
            />
          ))}
        </>
      )}
    </div>
  );
}
