/** The parts that go through the whole catalogue and are fetched with it. */
export { SheetCheck } from "./sheet-check/sheet-check";
export { WholeReference } from "./whole-reference";
export { Working } from "./working/working";
