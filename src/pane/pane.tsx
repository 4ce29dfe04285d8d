import { type KeyboardEvent, type ReactNode, useEffect, useRef, useState } from "react";
import type { WorkbookHost } from "../host/workbook-host";
import { weightUnits } from "../jobs/shown-number";
import { type Language, languageIds, languageOf, languages } from "../words/languages";
import type { Messages } from "../words/messages";
import { firstMessages, messagesIn } from "../words/messages-in";
import { CautionsPage } from "./cautions-page";
import { JobsPage } from "./jobs/jobs-page";
import { Later } from "./later";
import { reference, sheetCheck, working } from "./parts";
import { keptSettings, type Settings, type Tab, tabs } from "./settings";
import { MessagesContext, useMessages } from "./use-messages";

/** A language with what the pane says in it. */
export interface Speech {
  readonly language: Language;
  readonly messages: Messages;
  /** The language that was wanted, where its words could not be fetched. */
  readonly missing?: Language;
}

interface PaneProps {
  readonly host: WorkbookHost | undefined;
  /** What is spoken when the pane opens. */
  readonly speech: Speech;
  /** Hears which language is spoken, from the beginning. */
  readonly onLanguage?: ((language: Language) => void) | undefined;
}

/** The whole pane: its tabs, and the settings that hold for all of them. Without a workbook it can still be read. */
export function Pane({ host, speech, onLanguage }: PaneProps) {
  const [settings, setSettings] = useState(keptSettings.read);
  useEffect(() => keptSettings.write(settings), [settings]);
  const change = (changed: Partial<Settings>) => setSettings((all) => ({ ...all, ...changed }));

  const [spoken, speak] = useState(speech);
  const [unfetched, setUnfetched] = useState(speech.missing);
  const { language, messages } = spoken;
  const { tag } = languages[language];
  const asked = useRef<Language>();
  const choose = async (wanted: Language) => {
    asked.current = wanted;
    setUnfetched(undefined);
    try {
      const words = await messagesIn[wanted]();
      // The last one asked for counts, whichever comes last.
      if (asked.current !== wanted) return;
      speak({ language: wanted, messages: words });
      change({ language: wanted });
    } catch {
      setUnfetched(wanted);
    }
  };
  useEffect(() => onLanguage?.(language), [language, onLanguage]);
  const withoutWorkbook = <p>{messages.shell.noWorkbook}</p>;
  const pages: Readonly<Record<Tab, () => ReactNode>> = {
    jobs: () => <JobsPage host={host} unit={settings.unit} open={settings.job} choose={(job) => change({ job })} />,
    working: () => (host === undefined ? withoutWorkbook : <Later part={working} given={{ host }} />),
    check: () => (host === undefined ? withoutWorkbook : <Later part={sheetCheck} given={{ host }} />),
    functions: () => <Later part={reference} given={{}} />,
    cautions: () => <CautionsPage />,
  };
  return (
    <MessagesContext.Provider value={messages}>
      <div lang={tag}>
        <div className="settings">
          <label>
            {messages.shell.weightUnit}{" "}
            <select
              value={settings.unit}
              onChange={(event) => change({ unit: event.target.value as (typeof weightUnits)[number] })}
            >
              {weightUnits.map((unit) => (
                <option key={unit} value={unit}>
                  {messages.units[unit]}
                </option>
              ))}
            </select>
          </label>
          {languageIds
            .filter((other) => other !== language)
            .map((other) => (
              <button
                key={other}
                type="button"
                className="plain"
                lang={languages[other].tag}
                onClick={() => void choose(other)}
              >
                {languages[other].name}
              </button>
            ))}
        </div>
        {unfetched === undefined ? null : (
          <p className="problem" role="alert">
            {messages.shell.noWords(languages[unfetched].name)}
          </p>
        )}
        <Tabs shown={settings.tab} show={(tab) => change({ tab })} />
        <div className="page" role="tabpanel" id="pane-page" aria-labelledby={`tab-${settings.tab}`}>
          {settings.tab === "working" || settings.tab === "check" ? <h1>{messages.tabs[settings.tab]}</h1> : null}
          {pages[settings.tab]()}
        </div>
      </div>
    </MessagesContext.Provider>
  );
}

/** The language that was chosen, or that of the host; the first one where its words cannot be fetched. */
export async function firstSpeech(host: WorkbookHost | undefined): Promise<Speech> {
  const language =
    keptSettings.read().language ?? languageOf(host?.language ?? globalThis.navigator?.language ?? languageIds[0]);
  try {
    return { language, messages: await messagesIn[language]() };
  } catch {
    return { language: languageIds[0], messages: firstMessages, missing: language };
  }
}

/** The arrow keys go from tab to tab, as in every list of tabs. */
function Tabs({ shown, show }: { readonly shown: Tab; readonly show: (tab: Tab) => void }) {
  const messages = useMessages();
  const list = useRef<HTMLDivElement>(null);
  const go = (event: KeyboardEvent) => {
    const place = tabs.indexOf(shown);
    const next = { ArrowRight: place + 1, ArrowLeft: place - 1, Home: 0, End: tabs.length - 1 }[event.key];
    if (next === undefined) return;
    event.preventDefault();
    const tab = tabs[(next + tabs.length) % tabs.length] as Tab;
    show(tab);
    list.current?.querySelector<HTMLElement>(`#tab-${tab}`)?.focus();
  };
  return (
    <div className="tabs" role="tablist" aria-label={messages.shell.tabs} ref={list} onKeyDown={go}>
      {tabs.map((tab) => (
        <button
          key={tab}
          type="button"
          role="tab"
          id={`tab-${tab}`}
          aria-selected={tab === shown}
          aria-controls="pane-page"
          tabIndex={tab === shown ? 0 : -1}
          onClick={() => show(tab)}
        >
          {messages.tabs[tab]}
        </button>
      ))}
    </div>
  );
}
