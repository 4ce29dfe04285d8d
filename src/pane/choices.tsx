/** What holds for all of a page: the unit of weights, and the language. */
import { type WeightUnit, weightUnits } from "../jobs/shown-number";
import { type Language, languageIds, languages } from "../words/languages";
import { useMessages } from "./use-messages";

interface UnitChoiceProps {
  readonly unit: WeightUnit;
  readonly choose: (unit: WeightUnit) => void;
}

export function UnitChoice({ unit, choose }: UnitChoiceProps) {
  const { shell, units } = useMessages();
  return (
    <label>
      {shell.weightUnit}{" "}
      <select value={unit} onChange={({ target }) => choose(target.value as WeightUnit)}>
        {weightUnits.map((each) => (
          <option key={each} value={each}>
            {units[each]}
          </option>
        ))}
      </select>
    </label>
  );
}

interface LanguageChoiceProps {
  readonly language: Language;
  readonly choose: (language: Language) => void;
}

/** A button for each other language, in that language. */
export function LanguageChoice({ language, choose }: LanguageChoiceProps) {
  return languageIds
    .filter((other) => other !== language)
    .map((other) => (
      <button key={other} type="button" className="plain" lang={languages[other].tag} onClick={() => choose(other)}>
        {languages[other].name}
      </button>
    ));
}

/** That the words of a language could not be fetched. */
export function WordsMissing({ of }: { readonly of: Language | undefined }) {
  const { shell } = useMessages();
  if (of === undefined) return null;
  return (
    <p className="problem banner" role="alert">
      {shell.noWords(languages[of].name)}
    </p>
  );
}
