import { useMessages } from "../messages/messages";
import type { FormState } from "./form-state";
import type { Field } from "./job";

/** Takes the selected cells for a field, and gives the field back to the keyboard; one button, which keeps the focus. */
export function PickButton(props: { readonly form: FormState; readonly field: Field; readonly label: string }) {
  const { form, field, label } = props;
  const words = useMessages().form;
  const { togglePick } = form;
  if (togglePick === undefined) return null;
  const isPicked = form.entries[field.name]?.picked !== undefined;
  return (
    <button
      type="button"
      className="pick"
      aria-label={isPicked ? words.typeInsteadName(label) : words.pickName(label)}
      onClick={() => togglePick(field)}
    >
      {isPicked ? words.typeInstead : words.pick}
    </button>
  );
}
