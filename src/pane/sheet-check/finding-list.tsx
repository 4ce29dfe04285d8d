import { useState } from "react";
import { type Finding, type Rule, rules } from "../../sheet-check/finding";
import { errorInWords } from "../../words/error-in-words";
import type { Messages } from "../../words/messages";
import { addressOf } from "../../workbook/addresses";
import { useMessages } from "../use-messages";

/** More findings of one rule than this are shown when asked for. */
const mostAtOnce = 20;

interface FindingListProps {
  readonly findings: readonly Finding[];
  readonly goTo: (finding: Finding) => void;
}

/** The findings by rules: what, where, why, and what to try. */
export function FindingList({ findings, goTo }: FindingListProps) {
  return rules.map((rule) => {
    const own = findings.filter((finding) => finding.rule === rule);
    return own.length === 0 ? null : <RuleFindings key={rule} rule={rule} findings={own} goTo={goTo} />;
  });
}

function RuleFindings({ rule, findings, goTo }: FindingListProps & { readonly rule: Rule }) {
  const messages = useMessages();
  const { check } = messages;
  const [all, showAll] = useState(false);
  const words = check.rules[rule];
  return (
    <section aria-label={words.title}>
      <h2>{words.title}</h2>
      <p>
        <strong>{check.why}</strong> {words.why}
      </p>
      <p>
        <strong>{check.advice}</strong> {words.advice}
      </p>
      <ul className="findings">
        {findings.slice(0, all ? undefined : mostAtOnce).map((finding) => {
          const address = addressOf(finding.row, finding.column);
          return (
            <li key={address}>
              <button type="button" className="goes" aria-label={check.goTo(address)} onClick={() => goTo(finding)}>
                {address}
              </button>
              <span>{words.what({ ...finding.details, ...saidOf(finding, messages) })}</span>
            </li>
          );
        })}
      </ul>
      {findings.length <= mostAtOnce || all ? null : (
        <button type="button" onClick={() => showAll(true)}>
          {check.showAll(findings.length)}
        </button>
      )}
    </section>
  );
}

/** What there is to say of an error beside its code. */
const saidOf = ({ error, names }: Finding, messages: Messages): { readonly message?: string } =>
  error === undefined || error.message === "" ? {} : { message: errorInWords(error, messages, names) };
