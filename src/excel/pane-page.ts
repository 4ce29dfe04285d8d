/// <reference types="office-js" />
import { mountPane } from "../pane/mount-pane";

/** The task pane in Excel. It is readable at once; Excel waits only to hear that its page has started. */
const place = document.getElementById("pane");
if (place !== null) mountPane(place);
if (typeof Office !== "undefined") void Office.onReady();
