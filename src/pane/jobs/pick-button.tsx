import type { KeyboardEvent } from "react";
import type { Field } from "../../jobs/job";
import { useMessages } from "../use-messages";
import type { FormState } from "./form-state";

export const pickId = ({ id }: Pick<FormState, "id">, { name }: Field): string => `${id}-${name}-pick`;

/** For an input whose field can be picked. */
export const pickWithKey = ({ togglePick }: FormState, field: Field) =>
  togglePick && {
    "aria-keyshortcuts": "Control+Enter",
    onKeyDown: (event: KeyboardEvent) => {
      if (event.key !== "Enter" || !(event.ctrlKey || event.metaKey)) return;
      event.preventDefault();
      togglePick(field);
    },
  };

/**
 * Takes the selected cells for a field, or gives the field back to the keyboard. The Tab key goes from field to field
 * and skips it, since Ctrl+Enter in the field does the same; where cells were picked there is no field to type in, and
 * the Tab key comes here.
 */
export function PickButton(props: { readonly form: FormState; readonly field: Field; readonly label: string }) {
  const { form, field, label } = props;
  const words = useMessages().form;
  const { togglePick } = form;
  if (togglePick === undefined) return null;
  const isPicked = form.entries[field.name]?.picked !== undefined;
  return (
    <button
      type="button"
      id={pickId(form, field)}
      className="pick"
      tabIndex={isPicked ? undefined : -1}
      aria-label={isPicked ? words.typeInsteadName(label) : words.pickName(label)}
      onClick={() => togglePick(field)}
    >
      {isPicked ? words.typeInstead : words.pick}
    </button>
  );
}
