import { createRoot } from "react-dom/client";
import { firstSpoken } from "../../pane/spoken";
import { firstPhone, phoneIn } from "../../words/in-every-language/phone";
import { languageIds, languageOf } from "../../words/languages";
import { installWorker } from "./install-worker";
import { keepAtLastMoment, readLots } from "./kept-lots";
import { Phone } from "./phone";
import { keptSettings } from "./settings";
import "../../pane/all-styles";
import "./phone.css";

/** Opens the page with what the phone keeps; where the browser keeps nothing for pages, or words cannot be fetched, it says so and goes on. */
async function start(place: HTMLElement): Promise<void> {
  const settings = keptSettings.read();
  const wanted = settings.language ?? languageOf(navigator.language);
  const [speech, kept] = await Promise.all([
    firstSpoken(wanted, phoneIn, { language: languageIds[0], words: firstPhone }),
    readLots().catch(() => undefined),
  ]);
  createRoot(place).render(<Phone settings={settings} speech={speech} kept={kept} />);
  addEventListener("pagehide", keepAtLastMoment);
  installWorker();
}

const place = document.getElementById("phone");
if (place !== null) void start(place);
