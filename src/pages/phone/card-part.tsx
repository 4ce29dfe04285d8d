import { looseWeight } from "../../core/quantities";
import { shownNumber } from "../../jobs/shown-number";
import { readingsOfCharge, roundOf } from "../../lots/charge-readings";
import { firingPlan, planningJob } from "../../lots/firing-plan";
import { entriesIn } from "../../lots/lot";
import { JobCautions } from "../../pane/jobs/job-cautions";
import { momentInWords } from "./moments";
import { OpenCharge } from "./open-charge";
import { usePhone } from "./phone-context";

/** The charges of the plan, or the one that is weighed. */
export function CardPart() {
  const { speech, settings, choose, lot, tag } = usePhone();
  const { messages, phone } = speech;
  const { card } = phone;
  const unit = lot?.unit ?? settings.unit;
  const plan = firingPlan(lot, { messages, unit });
  const charge = plan?.charges.find(({ number }) => number === settings.charge);
  if (lot !== undefined && plan !== undefined && charge !== undefined) {
    return <OpenCharge key={`${lot.id} ${charge.number}`} lot={lot} plan={plan} charge={charge} />;
  }
  const shown = (weight: number) => shownNumber(weight, looseWeight, unit, messages);
  const isPlanned = Object.keys(entriesIn(lot, planningJob.id)).length > 0;
  const toPlan = (
    <button
      type="button"
      className={plan ? "plain" : "primary"}
      onClick={() => choose({ part: "jobs", job: planningJob.id })}
    >
      {plan ? card.changePlan : card.plan}
    </button>
  );
  return (
    <>
      <h1>{phone.parts.card}</h1>
      {lot === undefined || plan === undefined ? (
        <>
          <p>{isPlanned ? card.notNow : card.noPlan}</p>
          {toPlan}
        </>
      ) : (
        <>
          {plan.examples.length === 0 ? null : <p className="problem">{messages.answer.rests(plan.examples)}</p>}
          <ul className="charges">
            {plan.charges.map((each) => {
              const readings = readingsOfCharge(lot, each.number);
              const round = roundOf(each, readings);
              const last = readings.at(-1);
              return (
                <li key={each.number}>
                  <button type="button" onClick={() => choose({ charge: each.number })}>
                    <span className="name">
                      {card.charge(each.number)} <small>{card.load(shown(each.load))}</small>
                    </span>
                    <span className="big">{shown(each.targets[round - 1] ?? each.load)}</span>
                    <span className="what">{card.round(round, plan.rounds[round - 1] ?? "")}</span>
                    <span className="what">
                      {last ? card.last(shown(last.weight), momentInWords(last.at, tag)) : card.none}
                    </span>
                  </button>
                </li>
              );
            })}
          </ul>
          {toPlan}
        </>
      )}
      <JobCautions job={planningJob} />
    </>
  );
}
