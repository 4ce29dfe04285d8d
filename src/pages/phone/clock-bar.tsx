import { useEffect, useRef, useState } from "react";
import { clockAt, type Due, inClockForm } from "../../lots/due";
import { type Bell, startBell } from "./bell";
import { useNow } from "./moments";
import { usePhone } from "./phone-context";
import { useScreenAwake } from "./screen-awake";

/** How often it rings for work that nobody has seen to, and how long it goes on. */
const ringEvery = 20_000;
const ringFor = 5 * 60_000;

/** What is due next, counted down; what became due, and how late it is, until someone has seen to it. */
export function ClockBar({ dues }: { readonly dues: readonly Due[] }) {
  const { speech, lots } = usePhone();
  const { clock: words } = speech.phone;
  const now = useNow();
  const { overdue, next } = clockAt(lots.all, dues, now);
  const [bell, setBell] = useState<Bell>();
  useScreenAwake(bell !== undefined && (next !== undefined || overdue.length > 0));
  useRinging(bell, overdue, now);
  // Nothing is left to ring for.
  const isOver = overdue.length === 0 && next === undefined;
  useEffect(() => {
    if (!isOver || bell === undefined) return;
    bell.stop();
    setBell(undefined);
  }, [isOver, bell]);
  if (isOver) return null;

  const names = new Set([...overdue, ...(next ? [next] : [])].map(({ lot }) => lot));
  const named = ({ work, lot }: Due) =>
    names.size > 1 ? `${words.work(work)} (${lots.find(lot)?.name ?? ""})` : words.work(work);
  const seeTo = () => {
    const concerned = new Set(overdue.map(({ lot }) => lot));
    lots.put(
      ...lots.all.filter(({ id }) => concerned.has(id)).map((lot) => ({ ...lot, seenTo: now, changed: Date.now() })),
    );
  };
  const toggle = () => {
    if (bell) {
      bell.stop();
      return setBell(undefined);
    }
    const started = startBell();
    // Heard at once, so that the maker knows how loud it is.
    started.ring();
    setBell(started);
  };
  return (
    <section className="clock" aria-label={words.heading}>
      <p className="unheard" role="alert">
        {overdue.map(named).join(", ")}
      </p>
      {overdue.length === 0 ? null : (
        <>
          <ul>
            {overdue.map((due) => (
              <li key={`${due.lot} ${due.at} ${words.work(due.work)}`}>
                <strong>{named(due)}</strong> {words.late(inClockForm(now - due.at))}
              </li>
            ))}
          </ul>
          <button type="button" className="primary" onClick={seeTo}>
            {words.seen}
          </button>
        </>
      )}
      {next === undefined ? null : (
        <p className="next">
          {named(next)} <strong>{words.in(inClockForm(next.at - now))}</strong>
        </p>
      )}
      <button type="button" className="plain" aria-pressed={bell !== undefined} onClick={toggle}>
        {bell ? words.soundOn : words.sound}
      </button>
      <p className="help">{words.onlyWhileOn}</p>
    </section>
  );
}

/** Rings for each thing that comes due, and again while nobody sees to it. */
function useRinging(bell: Bell | undefined, overdue: readonly Due[], now: number): void {
  const rung = useRef(0);
  const latest = overdue.at(-1)?.at;
  useEffect(() => {
    if (bell === undefined || latest === undefined || now - latest > ringFor) return;
    if (rung.current >= latest && now - rung.current < ringEvery) return;
    rung.current = now;
    bell.ring();
  }, [bell, latest, now]);
}
