import { type KeyboardEvent, type ReactNode, useEffect, useRef, useState } from "react";
import type { WorkbookHost } from "../host/workbook-host";
import { firstMessages, messagesIn } from "../words/in-every-language/messages";
import { type Language, languageIds, languageOf, languages } from "../words/languages";
import type { Messages } from "../words/messages";
import { CautionsPage } from "./cautions-page";
import { LanguageChoice, UnitChoice, WordsMissing } from "./choices";
import { JobsPage } from "./jobs/jobs-page";
import { Later } from "./later";
import { reference, sheetCheck, working } from "./parts";
import { keptSettings, type Settings, type Tab, tabs } from "./settings";
import { firstSpoken, type Spoken, useSpoken } from "./spoken";
import { MessagesContext, useMessages } from "./use-messages";

interface PaneProps {
  readonly host: WorkbookHost | undefined;
  /** What is spoken when the pane opens. */
  readonly speech: Spoken<Messages>;
  /** Hears which language is spoken, from the beginning. */
  readonly onLanguage?: ((language: Language) => void) | undefined;
}

/** The whole pane: its tabs, and the settings that hold for all of them. Without a workbook it can still be read. */
export function Pane({ host, speech, onLanguage }: PaneProps) {
  const [settings, setSettings] = useState(keptSettings.read);
  useEffect(() => keptSettings.write(settings), [settings]);
  const change = (changed: Partial<Settings>) => setSettings((all) => ({ ...all, ...changed }));

  const {
    language,
    words: messages,
    missing,
    ask,
  } = useSpoken(speech, messagesIn, (heard) => change({ language: heard }));
  const { tag } = languages[language];
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
          <UnitChoice unit={settings.unit} choose={(unit) => change({ unit })} />
          <LanguageChoice language={language} choose={(wanted) => void ask(wanted)} />
        </div>
        <WordsMissing of={missing} />
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
export function firstSpeech(host: WorkbookHost | undefined): Promise<Spoken<Messages>> {
  const wanted =
    keptSettings.read().language ?? languageOf(host?.language ?? globalThis.navigator?.language ?? languageIds[0]);
  return firstSpoken(wanted, messagesIn, { language: languageIds[0], words: firstMessages });
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
