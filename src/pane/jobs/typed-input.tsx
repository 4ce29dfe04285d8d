import type { Quantity } from "../../core/quantities";
import { kindOf } from "../../jobs/read-text";
import { useMessages } from "../use-messages";
import type { pickWithKey } from "./pick-button";

interface TypedInputProps {
  readonly id: string;
  readonly quantity: Quantity;
  readonly text: string;
  readonly change: (text: string) => void;
  readonly describedBy: string;
  readonly isBroken: boolean;
  /** Shown apart from what the maker typed. */
  readonly isExample: boolean;
  /** Where no label element points at it. */
  readonly label?: string;
  /** What the keyboard does beside typing. */
  readonly keys?: ReturnType<typeof pickWithKey>;
}

/** The choice that nobody made. */
const example = "example";

/** A text field, or a choice of words. Numbers are typed as text: browsers refuse 0,76 and 76 % in fields for numbers. */
export function TypedInput({
  id,
  quantity,
  text,
  change,
  describedBy,
  isBroken,
  isExample,
  label,
  keys,
}: TypedInputProps) {
  const messages = useMessages();
  const kind = kindOf(quantity);
  const shared = {
    id,
    value: text,
    "aria-label": label,
    "aria-describedby": describedBy,
    "aria-invalid": isBroken || undefined,
    ...keys,
  };
  if (kind === "choice") {
    return (
      <select
        {...shared}
        value={isExample ? example : text}
        className={isExample ? "example" : undefined}
        onChange={(event) => change(event.target.value)}
      >
        {/* Whoever means the choice that stands here anyway takes it from those below. */}
        {isExample ? (
          <option value={example}>{messages.form.exampleChoice(messages.choices[text] ?? text)}</option>
        ) : null}
        {Object.keys(quantity.choices ?? {}).map((word) => (
          <option key={word} value={word}>
            {messages.choices[word] ?? word}
          </option>
        ))}
      </select>
    );
  }
  return (
    <input
      {...shared}
      type="text"
      inputMode={kind === "text" || kind === "time" ? "text" : "decimal"}
      className={isExample ? "example" : undefined}
      autoComplete="off"
      spellCheck={false}
      onChange={(event) => change(event.target.value)}
      onFocus={(event) => event.target.select()}
    />
  );
}
