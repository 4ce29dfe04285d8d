import { useRef, useState } from "react";
import { fileOf, keptIn } from "../../lots/kept-file";
import { type Lot, moved, withoutWeighing } from "../../lots/lot";
import { handOut } from "../../pane/hand-out";
import { dayInWords, momentInWords } from "./moments";
import { OfflineNote } from "./offline-note";
import { usePhone } from "./phone-context";
import { SendOn } from "./send-on";

/** So many lots stand here at first. */
const mostShown = 10;

/** The last lots, each to be looked at, mended and sent on; and everything that is kept, as one file. */
export function TodayPart() {
  const { speech, lots } = usePhone();
  const { today, parts } = speech.phone;
  const [showsAll, showAll] = useState(false);
  // What becomes of a weighing is said here, for the lot that it stood in may no longer say anything.
  const [done, say] = useState("");
  return (
    <>
      <h1>{parts.today}</h1>
      <p>{lots.all.length === 0 ? today.nothing : today.intro}</p>
      <p role="status" className="done">
        {done}
      </p>
      {lots.all.slice(0, showsAll ? undefined : mostShown).map((lot) => (
        <LotOfToday key={lot.id} lot={lot} say={say} />
      ))}
      {showsAll || lots.all.length <= mostShown ? null : (
        <button type="button" className="plain" onClick={() => showAll(true)}>
          {today.more}
        </button>
      )}
      <Everything />
    </>
  );
}

/** How many other lots a weighing can be moved to with one tap. */
const mostOthers = 3;

function LotOfToday({ lot, say }: { readonly lot: Lot; readonly say: (done: string) => void }) {
  const { speech, choose, lots, tag } = usePhone();
  const { today, lot: words, card } = speech.phone;
  const last = lot.weighings.at(-1);
  const others = lots.all.filter(({ id }) => id !== lot.id).slice(0, mostOthers);
  return (
    <section className="lot" aria-labelledby={`name-${lot.id}`}>
      <label htmlFor={`name-${lot.id}`} className="unheard">
        {words.rename}
      </label>
      <input
        id={`name-${lot.id}`}
        type="text"
        autoComplete="off"
        value={lot.name}
        onChange={({ target }) => lots.put({ ...lot, name: target.value, changed: Date.now() })}
      />
      <p>
        {today.weighings(lot.weighings.length)} {today.keptSince(momentInWords(lot.begun, tag))}{" "}
        {lot.sent === undefined ? today.notSent : today.sentOn(momentInWords(lot.sent, tag))}
      </p>
      {last === undefined ? null : (
        <div className="last">
          <p>
            {today.lastWeighing(
              `${card.charge(last.charge)}, ${last.text} ${speech.messages.units[last.unit]}`,
              momentInWords(last.at, tag),
            )}
          </p>
          <button
            type="button"
            className="plain"
            aria-label={today.of(today.takeBack, lot.name)}
            onClick={() => {
              lots.put(withoutWeighing(lot, last.id, Date.now()));
              say(today.tookBack);
            }}
          >
            {today.takeBack}
          </button>
          {others.map((other) => (
            <button
              key={other.id}
              type="button"
              className="plain"
              aria-label={today.of(today.moveTo(other.name), lot.name)}
              onClick={() => {
                const { from, to } = moved(last.id, lot, other, Date.now());
                lots.put(from, to);
                say(today.movedTo(other.name));
              }}
            >
              {today.moveTo(other.name)}
            </button>
          ))}
        </div>
      )}
      <button
        type="button"
        className="plain"
        aria-label={today.of(today.open, lot.name)}
        onClick={() => choose({ lot: lot.id, part: "jobs", job: undefined, charge: undefined })}
      >
        {today.open}
      </button>
      <SendOn lot={lot} />
    </section>
  );
}

/** All lots as one file, and back. */
function Everything() {
  const { speech, lots, tag } = usePhone();
  const { today } = speech.phone;
  const file = useRef<HTMLInputElement>(null);
  const [said, say] = useState<{ readonly text: string; readonly isProblem: boolean }>();
  const save = () => {
    const now = Date.now();
    const content = new Blob([fileOf(lots.all, lots.unread, now)], { type: "application/json" });
    handOut(content, `tea-mass-balance ${new Date(now).toISOString().slice(0, 10)}.json`);
    say({ text: today.saved, isProblem: false });
  };
  const read = async (chosen: File | undefined) => {
    if (chosen === undefined) return;
    const found = keptIn(await chosen.text());
    if (found === undefined) return say({ text: today.notOurs(chosen.name), isProblem: true });
    say({ text: today.read(lots.takeIn(found)), isProblem: false });
  };
  const oldest = lots.all.at(-1);
  return (
    <section aria-labelledby="everything">
      <h2 id="everything">{today.everything}</h2>
      <p>{today.everythingHelp}</p>
      {oldest === undefined ? null : <p>{today.keptSince(dayInWords(oldest.begun, tag))}</p>}
      <button type="button" className="primary" onClick={save}>
        {today.saveAll}
      </button>
      <button type="button" className="plain" onClick={() => file.current?.click()}>
        {today.readAll}
      </button>
      <input
        ref={file}
        type="file"
        accept=".json,application/json"
        aria-label={today.readAll}
        hidden
        onChange={({ target }) => {
          void read(target.files?.[0]).finally(() => {
            // The same file can be chosen again.
            target.value = "";
          });
        }}
      />
      <p role="status" className={said?.isProblem ? "problem" : "done"}>
        {said?.text}
      </p>
      {lots.all.length === 0 ? null : <p className="help">{lots.stays ? today.staysHere : today.mayGo}</p>}
      {lots.unread.length === 0 ? null : <p className="problem">{today.unread(lots.unread.length)}</p>}
      <OfflineNote />
    </section>
  );
}
