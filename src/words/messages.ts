import type { FunctionSpec, Group, Parameter } from "../core/define";
import type { Named } from "../core/english-refusals";
import type { Saying } from "../core/phrases";
import type { Hint, Reason } from "../core/refusals";
import type { HostProblem } from "../host/host-problem";
import type { PieceMessages } from "./pieces";
import type { WithoutAddInWords } from "./without-add-in";

/** Something to say in the language that is spoken when it is read. */
export type Says = (messages: Messages) => string;

interface Words {
  /** What stands beside the field, the column or the job. */
  readonly label: string;
  readonly help: string;
}

/** Every word that the pane says. Names of functions and of their arguments are the same in every language. */
export interface Messages extends PieceMessages {
  readonly shell: Readonly<
    Record<"pane" | "tabs" | "language" | "weightUnit" | "noWorkbook" | "wait" | "notFetched", string>
  > & {
    /** A language whose words could not be fetched, by the name that it has for itself. */
    readonly noWords: (language: string) => string;
  };
  readonly tabs: Readonly<Record<"jobs" | "working" | "check" | "functions" | "cautions", string>>;
  readonly jobs: Readonly<Record<string, { readonly title: string; readonly question: string }>>;
  readonly inputs: Readonly<Record<string, Words>>;
  /** What is typed side by side, by its first list. */
  readonly lists: Readonly<Record<string, string>>;
  readonly choices: Readonly<Record<string, string>>;
  readonly answers: Readonly<Record<string, string>>;
  readonly columns: Readonly<Record<string, string>>;
  readonly units: Readonly<Record<"g" | "kg" | "jin" | "liang" | "oz" | "lb", string>>;
  readonly unitWords: Readonly<Record<"clock" | "span" | "points" | "area" | "perArea" | "mayBeBlank", string>>;
  readonly form: {
    readonly intro: string;
    readonly allJobs: string;
    readonly example: string;
    readonly exampleRows: string;
    /** A choice that is still ours. */
    readonly exampleChoice: (choice: string) => string;
    readonly understood: (value: string) => string;
    readonly span: (hours: number, minutes: number) => string;
    readonly pick: string;
    readonly pickName: (label: string) => string;
    readonly pickAll: string;
    readonly picked: (reference: string) => string;
    readonly filledCells: (count: number) => string;
    readonly typeInstead: string;
    readonly typeInsteadName: (label: string) => string;
    readonly more: string;
    readonly optional: string;
    readonly row: (row: number) => string;
    readonly addRow: string;
    readonly removeRow: string;
    readonly removeRowName: (row: number) => string;
    readonly startAgain: string;
  };
  readonly answer: {
    readonly heading: string;
    readonly waits: string;
    readonly needsInput: string;
    /** What stands where the answer would, with the reason. */
    readonly refused: (reason: string) => string;
    /** Of a cell that was picked. */
    readonly cellError: (code: string) => string;
    /** What an answer rests on that nobody typed: the labels of these fields. */
    readonly rests: (labels: readonly string[]) => string;
    readonly restsAltogether: string;
    readonly scroll: string;
    readonly picture: string;
  };
  readonly problems: {
    readonly needed: string;
    readonly notNumber: (text: string) => string;
    /** Before what a text may mean. */
    readonly whichOne: (text: string) => string;
    readonly unitInDoubt: (unit: string, why: Hint) => string;
    readonly notTime: (text: string) => string;
    readonly must: (bounds: readonly string[]) => string;
    readonly above: (value: string) => string;
    readonly atLeast: (value: string) => string;
    readonly below: (value: string) => string;
    readonly atMost: (value: string) => string;
    readonly whole: string;
    readonly pickOne: string;
    readonly pickLine: string;
    readonly pickColumns: (least: number, most: number) => string;
    readonly overPicked: string;
    readonly fixFirst: string;
    readonly noAnswer: string;
    readonly host: (problem: Pick<HostProblem, "trouble">) => string;
    readonly unknown: string;
  };
  readonly write: {
    readonly button: string;
    readonly newSheet: string;
    readonly where: (place: string) => string;
    readonly writtenOnNewSheet: (sheet: string) => string;
    readonly written: (place: string) => string;
    readonly filledTitle: string;
    readonly filled: (addresses: string) => string;
    readonly more: (count: number) => string;
    readonly over: string;
    readonly keep: string;
    readonly chart: string;
    readonly chartHelp: string;
    readonly noChart: string;
  };
  readonly withoutAddIn: WithoutAddInWords;
  /** What stands in the sheet beside inputs and answers. */
  readonly sheet: {
    readonly examples: (labels: readonly string[]) => string;
    readonly cautions: (titles: string) => string;
    /** What is written for the words of a choice, where functions read it in this language too. */
    readonly choices: Readonly<Record<string, string>>;
  };
  readonly cautions: Readonly<Record<string, { readonly title: string; readonly text: string }>>;
  readonly deferral: string;
  readonly reference: {
    readonly search: string;
    readonly none: string;
    readonly count: (count: number) => string;
    /** Above the parts of a function's page. */
    readonly headings: Readonly<Record<"arguments" | "answer" | "use" | "examples" | "cautions", string>>;
    readonly groups: Readonly<Record<Group, string>>;
    /** What an argument accepts, its unit, and what a blank does. */
    readonly limits: (parameter: Parameter) => string;
    readonly gives: (spec: FunctionSpec) => string;
    readonly column: (name: string, format: string, meaning: string) => string;
    readonly oneCell: string;
    readonly answerOf: (formula: string) => string;
  };
  /** What a page of the catalogue, or a step of a working, says in English; as it is where it was not translated. */
  readonly says: (english: string) => string;
  /** Why a function gives no answer; its arguments by their names, or as a form labels them. */
  readonly reason: (reason: Reason, named?: Named) => string;
  /** Invented words that forms start with. */
  readonly examples: Readonly<Record<"steps" | "plots" | "stages", readonly string[]>>;
  /** The last row of a fit: sum of squares, degrees of freedom, probability. */
  readonly fitted: (gamma: string, freedom: string, probability: string) => string;
  readonly verdict: string;
  /** What a function says in its answer, for reading beside the cell. */
  readonly phrase: (saying: Saying) => string;
}

/** What the pane says without the pages of functions. */
export type PaneWords = Omit<Messages, "says">;
