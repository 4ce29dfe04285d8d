/** What is not offered for a file of the maker's own, since only cells are changed in it, and why. */
import type { Api } from "./grid";
import { showStatus } from "./show";
import { words } from "./words";

/** Commands of the engine that move cells, sheets or names about; in a saved file other parts would still point to where they stood. */
const moving =
  /^sheet\.command\.(?:insert-(?:row|col|sheet|range|multi)|remove-(?:row|col|sheet|worksheet-merge)|delete-range|move-(?:rows|cols|range)|add-worksheet-merge|set-worksheet-(?:name|order)|copy-sheet|.*defined-name)/;

export function keepInPlace(api: Api): void {
  api.addEvent(api.Event.BeforeCommandExecute, (event) => {
    if (!moving.test(event.id)) return;
    event.cancel = true;
    showStatus(words().ownFile.staysInPlace, "warning");
  });
}
