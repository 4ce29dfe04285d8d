import { useLayoutEffect, useRef, useState } from "react";
import { CellError } from "../../cells/values";
import { clock, looseWeight, moisture as moistureQuantity, weight } from "../../core/quantities";
import { refusalInWords } from "../../jobs/refusals";
import { shownNumber } from "../../jobs/shown-number";
import {
  type ChargeReading,
  fewestTimed,
  readingSays,
  readingsOfCharge,
  readWeight,
  readyWhen,
  roundOf,
} from "../../lots/charge-readings";
import type { FiringPlan, PlannedCharge } from "../../lots/firing-plan";
import { planningJob } from "../../lots/firing-plan";
import { type Lot, withoutWeighing, withWeighing } from "../../lots/lot";
import { JobCautions } from "../../pane/jobs/job-cautions";
import { OfferedReadings } from "../../pane/jobs/offered-readings";
import { TypedInput } from "../../pane/jobs/typed-input";
import { momentInWords } from "./moments";
import { usePhone } from "./phone-context";

interface OpenChargeProps {
  readonly lot: Lot;
  readonly plan: FiringPlan;
  readonly charge: PlannedCharge;
}

/** One charge at the pan: what the scale should read, the field for what it reads, and what that says. */
export function OpenCharge({ lot, plan, charge }: OpenChargeProps) {
  const { speech, choose, changeLot, tag } = usePhone();
  const { messages, phone } = speech;
  const { card } = phone;
  const { unit } = lot;
  const readings = readingsOfCharge(lot, charge.number);
  const [round, chooseRound] = useState(() => roundOf(charge, readings));
  // The weighing that is being typed: a new one for each reading.
  const [weighing, begin] = useState<string>(() => crypto.randomUUID());
  const typed = lot.weighings.find(({ id }) => id === weighing);
  const text = typed?.text ?? "";
  const field = useRef<HTMLDivElement>(null);
  // At once, while the tap still counts: only then does a phone show its keys.
  useLayoutEffect(() => field.current?.querySelector("input")?.focus(), []);

  const type = (now: string) =>
    changeLot((all, moment) =>
      withWeighing(all, { id: weighing, charge: charge.number, round, text: now, unit, at: moment }, moment),
    );
  const next = () => {
    chooseRound(Math.max(round, roundOf(charge, readings)));
    begin(crypto.randomUUID());
    field.current?.querySelector("input")?.focus();
  };
  const read = readWeight(text, typed?.unit ?? unit, unit);
  const target = charge.targets[round - 1] ?? charge.load;
  const shown = (value: number) => shownNumber(value, looseWeight, unit, messages);
  const inRound = readings.filter((reading) => reading.round === round);
  return (
    <form className="charge" noValidate onSubmit={(event) => event.preventDefault()}>
      <button type="button" className="plain back" onClick={() => choose({ charge: undefined })}>
        ‹ {card.back}
      </button>
      <h1>
        {card.charge(charge.number)} <small>{card.load(shown(charge.load))}</small>
      </h1>
      {plan.examples.length === 0 ? null : <p className="problem">{messages.answer.rests(plan.examples)}</p>}
      {charge.targets.length < 2 ? null : (
        <fieldset className="rounds">
          <legend>{card.rounds}</legend>
          {charge.targets.map((_, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a round is known by its number
            <label key={index}>
              <input
                type="radio"
                name="round"
                checked={round === index + 1}
                onChange={() => {
                  chooseRound(index + 1);
                  if (typed) changeLot((all, moment) => withWeighing(all, { ...typed, round: index + 1 }, moment));
                }}
              />{" "}
              {card.round(index + 1, plan.rounds[index] ?? "")}
            </label>
          ))}
        </fieldset>
      )}
      <p className="single">
        {card.shouldRead} <strong>{shown(target)}</strong>
      </p>
      <div className="field reading" ref={field}>
        <label htmlFor="reading">{card.reads}</label>
        <div className="line">
          <TypedInput
            id="reading"
            quantity={weight}
            text={text}
            change={type}
            describedBy="reading-problem"
            isBroken={read.is === "problem"}
            isExample={false}
          />
          <span className="unit">{messages.units[typed?.unit ?? unit]}</span>
        </div>
        <p id="reading-problem" className="problem">
          {read.is === "problem" ? read.says(messages) : ""}
          <OfferedReadings understood={read} id="reading" take={type} />
        </p>
      </div>
      <div role="status" className="says">
        {read.is === "value" && typeof read.value === "number" ? (
          <Says weightNow={read.value} at={typed?.at} plan={plan} charge={charge} round={round} unit={unit} />
        ) : null}
      </div>
      {text === "" ? null : (
        <button type="button" className="primary" onClick={next}>
          {card.next}
        </button>
      )}
      <Ready lot={lot} charge={charge} inRound={inRound} target={target} />
      {readings.length === 0 ? null : (
        <section aria-label={card.readings}>
          <h2>{card.readings}</h2>
          <ol className="readings-so-far">
            {readings.map((reading) => (
              <li key={reading.id}>{card.last(shown(reading.weight), momentInWords(reading.at, tag))}</li>
            ))}
          </ol>
          <button
            type="button"
            className="plain"
            onClick={() => {
              const last = readings.at(-1);
              if (last) changeLot((all, moment) => withoutWeighing(all, last.id, moment));
            }}
          >
            {phone.today.takeBack}
          </button>
        </section>
      )}
      <JobCautions job={planningJob} />
    </form>
  );
}

interface SaysProps {
  readonly weightNow: number;
  readonly at: number | undefined;
  readonly plan: FiringPlan;
  readonly charge: PlannedCharge;
  readonly round: number;
  readonly unit: Lot["unit"];
}

/** What the reading says, as it is typed. */
function Says({ weightNow, at, plan, charge, round, unit }: SaysProps) {
  const { speech, tag } = usePhone();
  const { messages, phone } = speech;
  const { card } = phone;
  const { left, moisture } = readingSays(weightNow, charge, round, plan);
  return (
    <>
      <p className="single">
        {left > 0 ? card.left : card.over} <strong>{shownNumber(Math.abs(left), looseWeight, unit, messages)}</strong>
      </p>
      {left > 0 ? null : <p className="done">{card.reached}</p>}
      {moisture instanceof CellError ? (
        <p className="problem">{refusalInWords(moisture)(messages)}</p>
      ) : (
        <p className="single">
          {card.moisture} <strong>{shownNumber(moisture, moistureQuantity, unit, messages)}</strong>
        </p>
      )}
      {at === undefined ? null : <p className="notes">{card.noted(momentInWords(at, tag))}</p>}
    </>
  );
}

interface ReadyProps {
  readonly lot: Lot;
  readonly charge: PlannedCharge;
  readonly inRound: readonly ChargeReading[];
  readonly target: number;
}

/** When the charge will weigh its target, from its timed readings. */
function Ready({ lot, charge, inRound, target }: ReadyProps) {
  const { speech, changeLot } = usePhone();
  const { messages, phone } = speech;
  const { card } = phone;
  const key = String(charge.number);
  const { text, unit } = lot.endWeights[key] ?? { text: "", unit: lot.unit };
  const read = readWeight(text, unit, lot.unit);
  const endWeight = read.is === "value" && typeof read.value === "number" ? read.value : undefined;
  const ready = readyWhen(inRound, target, endWeight);
  if (inRound.length === 0) return null;
  const time = (value: number) => shownNumber(value, clock, lot.unit);
  const said = ready && [
    { label: card.early, value: ready.early },
    { label: card.likely, value: ready.likely },
    { label: card.late, value: ready.late },
  ];
  const { label = "", help = "" } = messages.inputs.endWeight ?? {};
  return (
    <section className="ready" aria-label={card.ready}>
      <h2>{card.ready}</h2>
      {ready === undefined ? <p className="notes">{card.needsMore(fewestTimed - inRound.length)}</p> : null}
      <div className="headline-row">
        {said?.map(({ label, value }) =>
          value === undefined ? null : (
            <p className="single" key={label}>
              {label} <strong>{time(value)}</strong>
            </p>
          ),
        )}
      </div>
      {ready?.refusal ? <p className="problem">{refusalInWords(ready.refusal)(messages)}</p> : null}
      {ready === undefined ? null : (
        <>
          {endWeight === undefined ? <p className="notes">{card.withoutEnd}</p> : null}
          <div className="field">
            <label htmlFor="end-weight">{label}</label>
            <div className="line">
              <TypedInput
                id="end-weight"
                quantity={weight}
                text={text}
                change={(now) =>
                  changeLot((all, moment) => ({
                    ...all,
                    changed: moment,
                    endWeights: { ...all.endWeights, [key]: { text: now, unit } },
                  }))
                }
                describedBy="end-weight-help end-weight-problem"
                isBroken={read.is === "problem"}
                isExample={false}
              />
              <span className="unit">{messages.units[unit]}</span>
            </div>
            <p id="end-weight-help" className="help">
              {help}
            </p>
            <p id="end-weight-problem" className="problem">
              {read.is === "problem" ? read.says(messages) : ""}
            </p>
          </div>
          <p className="notes">{card.forecast}</p>
        </>
      )}
    </section>
  );
}
