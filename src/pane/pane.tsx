import { type KeyboardEvent, type ReactNode, useEffect, useRef, useState } from "react";
import { catalogue } from "../core/catalogue";
import type { WorkbookHost } from "../host/workbook-host";
import { weightUnits } from "../jobs/shown-number";
import { type Language, languageIds, languageOf, languages } from "../words/languages";
import { messagesIn } from "../words/messages-in";
import { CautionsPage } from "./cautions-page";
import { FunctionReference } from "./function-reference";
import { JobsPage } from "./jobs/jobs-page";
import { keptSettings, type Settings, type Tab, tabs } from "./settings";
import { SheetCheck } from "./sheet-check/sheet-check";
import { MessagesContext, useMessages } from "./use-messages";
import { Working } from "./working/working";

interface PaneProps {
  readonly host: WorkbookHost | undefined;
  /** Hears which language is spoken, from the beginning. */
  readonly onLanguage?: ((language: Language) => void) | undefined;
}

/** The whole pane: its tabs, and the settings that hold for all of them. Without a workbook it can still be read. */
export function Pane({ host, onLanguage }: PaneProps) {
  const [settings, setSettings] = useState(keptSettings.read);
  useEffect(() => keptSettings.write(settings), [settings]);
  const change = (changed: Partial<Settings>) => setSettings((all) => ({ ...all, ...changed }));

  const language = settings.language ?? languageOf(host?.language ?? globalThis.navigator?.language ?? "en");
  const { tag } = languages[language];
  const messages = messagesIn[language];
  useEffect(() => onLanguage?.(language), [language, onLanguage]);
  const withoutWorkbook = <p>{messages.shell.noWorkbook}</p>;
  const pages: Readonly<Record<Tab, () => ReactNode>> = {
    jobs: () => <JobsPage host={host} unit={settings.unit} open={settings.job} choose={(job) => change({ job })} />,
    working: () => (host === undefined ? withoutWorkbook : <Working host={host} />),
    check: () => (host === undefined ? withoutWorkbook : <SheetCheck host={host} />),
    functions: () => <FunctionReference catalogue={catalogue} />,
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
                onClick={() => change({ language: other })}
              >
                {languages[other].name}
              </button>
            ))}
        </div>
        <Tabs shown={settings.tab} show={(tab) => change({ tab })} />
        <div className="page" role="tabpanel" id="pane-page" aria-labelledby={`tab-${settings.tab}`}>
          {settings.tab === "working" || settings.tab === "check" ? <h1>{messages.tabs[settings.tab]}</h1> : null}
          {pages[settings.tab]()}
        </div>
      </div>
    </MessagesContext.Provider>
  );
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
