interface ChoiceProps {
  readonly id: string;
  readonly label: string;
  readonly help: string;
  readonly isChosen: boolean;
  readonly choose: (isChosen: boolean) => void;
}

/** A box to tick, with what it means below. */
export function Choice({ id, label, help, isChosen, choose }: ChoiceProps) {
  const helpId = `${id}-help`;
  return (
    <div className="choice">
      <input
        type="checkbox"
        id={id}
        aria-describedby={helpId}
        checked={isChosen}
        onChange={(event) => choose(event.target.checked)}
      />
      <label htmlFor={id}>{label}</label>
      <span id={helpId} className="help">
        {help}
      </span>
    </div>
  );
}
