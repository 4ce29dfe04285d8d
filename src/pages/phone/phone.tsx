import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { dueTimes } from "../../lots/due";
import type { Kept } from "../../lots/kept-file";
import { begunOnDay, newLot } from "../../lots/lot";
import { CautionsPage } from "../../pane/cautions-page";
import { WordsMissing } from "../../pane/choices";
import { type Spoken, useSpoken } from "../../pane/spoken";
import { MessagesContext } from "../../pane/use-messages";
import { phoneIn } from "../../words/in-every-language/phone";
import { languages } from "../../words/languages";
import type { PhoneSpeech } from "../../words/phone-speech";
import { CardPart } from "./card-part";
import { ClockBar } from "./clock-bar";
import { JobsPart } from "./jobs-part";
import { dayInWords } from "./moments";
import { PageHeader } from "./page-header";
import { PhoneContext, type PhoneState } from "./phone-context";
import { useScreenAwake } from "./screen-awake";
import { keptSettings, type Part, type Settings } from "./settings";
import { TodayPart } from "./today-part";
import { useLots } from "./use-lots";

interface PhoneProps {
  readonly settings: Settings;
  /** What is spoken when the page opens. */
  readonly speech: Spoken<PhoneSpeech>;
  /** Absent where the browser keeps nothing for a page. */
  readonly kept: Kept | undefined;
}

const nothing: Kept = { lots: [], unread: [] };

/** The whole page: its parts, the lot that is worked on, and the language. */
export function Phone(opened: PhoneProps) {
  const [settings, setSettings] = useState(opened.settings);
  useEffect(() => keptSettings.write(settings), [settings]);
  const choose = useCallback((changed: Partial<Settings>) => setSettings((all) => ({ ...all, ...changed })), []);
  const {
    language,
    words: speech,
    missing,
    ask,
  } = useSpoken(opened.speech, phoneIn, (heard) => choose({ language: heard }));
  const { tag } = languages[language];
  const { messages, phone } = speech;
  const lots = useLots(opened.kept ?? nothing);
  const lot = lots.all.find(({ id }) => id === settings.lot);

  useEffect(() => {
    document.documentElement.lang = tag;
  }, [tag]);

  // What is typed before anything is drawn anew belongs to the same lot.
  const begun = useRef<string>();
  if (lot !== undefined) begun.current = undefined;
  const changeLot: PhoneState["changeLot"] = (change) => {
    const now = Date.now();
    const there = lots.find(settings.lot ?? begun.current) ?? lots.find(begun.current);
    if (there) return lots.put(change(there, now));
    const name = phone.lot.name(dayInWords(now, tag), begunOnDay(lots.all, now) + 1);
    const fresh = newLot(crypto.randomUUID(), name, settings.unit, now);
    begun.current = fresh.id;
    lots.put(change(fresh, now));
    choose({ lot: fresh.id });
  };

  const isAtWork =
    (settings.part === "jobs" && settings.job !== undefined) ||
    (settings.part === "card" && settings.charge !== undefined);
  useScreenAwake(isAtWork);

  const dues = useMemo(
    () => lots.all.flatMap((each) => dueTimes(each, { messages, unit: each.unit })),
    [lots.all, messages],
  );
  const shown: Readonly<Record<Part, () => JSX.Element>> = {
    jobs: () => <JobsPart />,
    card: () => <CardPart />,
    today: () => <TodayPart />,
    cautions: () => <CautionsPage />,
  };
  const state: PhoneState = {
    speech,
    language,
    tag,
    settings,
    choose,
    speak: (wanted) => void ask(wanted),
    lots,
    lot,
    changeLot,
  };
  const trouble =
    opened.kept === undefined ? phone.keeping.cannotKeep : lots.isKept ? undefined : phone.keeping.notKept;
  return (
    <PhoneContext.Provider value={state}>
      <MessagesContext.Provider value={messages}>
        <PageHeader />
        <WordsMissing of={missing} />
        {trouble === undefined ? null : (
          <p className="problem banner" role="alert">
            {trouble}
          </p>
        )}
        <ClockBar dues={dues} />
        <main className="page">{shown[settings.part]()}</main>
      </MessagesContext.Provider>
    </PhoneContext.Provider>
  );
}
