import type { WeightUnit } from "../../jobs/shown-number";
import { LanguageChoice, UnitChoice } from "../../pane/choices";
import { usePhone } from "./phone-context";
import { parts } from "./settings";

/** How many lots can be gone back to from here; Today has them all. */
const mostOffered = 12;

/** The parts of the page, the lot that is worked on, and what holds for all of it. */
export function PageHeader() {
  const { speech, language, settings, choose, speak, lots, lot, changeLot } = usePhone();
  const { phone } = speech;
  const unit = lot?.unit ?? settings.unit;
  const chooseUnit = (wanted: WeightUnit) => {
    choose({ unit: wanted });
    if (lot) changeLot((now) => ({ ...now, unit: wanted }));
  };
  const offered = lots.all.filter((each, place) => place < mostOffered || each.id === lot?.id);
  return (
    <header>
      <nav className="parts" aria-label={phone.navigation}>
        {parts.map((part) => (
          <button
            key={part}
            type="button"
            aria-current={settings.part === part ? "page" : undefined}
            onClick={() => choose({ part, job: undefined, charge: undefined })}
          >
            {phone.parts[part]}
          </button>
        ))}
      </nav>
      <div className="of-all">
        {lots.all.length === 0 ? null : (
          <>
            <label>
              {phone.lot.label}{" "}
              <select value={lot?.id ?? ""} onChange={({ target }) => choose({ lot: target.value || undefined })}>
                {lot === undefined ? <option value="">{phone.lot.add}</option> : null}
                {offered.map(({ id, name }) => (
                  <option key={id} value={id}>
                    {name}
                  </option>
                ))}
              </select>
            </label>
            <button
              type="button"
              className="plain"
              disabled={lot === undefined}
              onClick={() => choose({ lot: undefined, unit, charge: undefined })}
            >
              {phone.lot.add}
            </button>
          </>
        )}
        <UnitChoice unit={unit} choose={chooseUnit} />
        <LanguageChoice language={language} choose={speak} />
      </div>
    </header>
  );
}
