import { cautions, deferral } from "../../core/cautions";
import type { FunctionSpec, Parameter } from "../../core/define";
import { accepts, resultInWords, whenBlank } from "../../core/describe";
import { englishHint, englishReason, type Named } from "../../core/english-refusals";
import type { Hint, Reason } from "../../core/refusals";
import type { HostProblem } from "../../host/workbook-host";
import { englishPieces, type PieceMessages } from "./english-pieces";

interface Words {
  /** What stands beside the field, the column or the job. */
  readonly label: string;
  readonly help: string;
}

/** Every word that the pane says. Names of functions and of their arguments are the same in every language. */
export interface Messages extends PieceMessages {
  readonly shell: Readonly<
    Record<"pane" | "tabs" | "language" | "otherLanguage" | "weightUnit" | "noWorkbook", string>
  >;
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
    readonly host: (problem: HostProblem) => string;
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
  /** What stands in the sheet beside inputs and answers. */
  readonly sheet: {
    readonly examples: (labels: readonly string[]) => string;
    readonly cautions: (titles: string) => string;
  };
  readonly cautions: Readonly<Record<string, { readonly title: string; readonly text: string }>>;
  readonly deferral: string;
  readonly reference: {
    readonly search: string;
    readonly none: string;
    readonly count: (count: number) => string;
    /** Above the parts of a function's page. */
    readonly headings: Readonly<Record<"arguments" | "answer" | "use" | "examples" | "cautions", string>>;
    readonly groups: Readonly<Record<string, string>>;
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
  /** A word or sentence that a function gives, for reading beside the answer. */
  readonly answerText: (text: string) => string;
}

export const english: Messages = {
  ...englishPieces,
  shell: {
    pane: "Tea Mass Balance",
    tabs: "Parts of the pane",
    language: "Language",
    otherLanguage: "中文",
    weightUnit: "Weights in",
    noWorkbook: "There is no workbook here. Open the pane beside one, in Excel or on the workbook page.",
  },
  tabs: { jobs: "Jobs", working: "Working", check: "Sheet check", functions: "Functions", cautions: "Cautions" },
  jobs: {
    charges: {
      title: "Plan the charges",
      question: "How many pans, how heavy, and what each should weigh after firing",
    },
    scale: { title: "What should the scale read", question: "A loss in percent, and the three things it can mean" },
    moisture: { title: "How moist is it now", question: "From the weight alone, without an oven" },
    route: {
      title: "Route to the finished tea",
      question: "Every step with its scale reading, down to the last drying",
    },
    finished: {
      title: "Will the finished weight add up",
      question: "Between which weights the lot can honestly come out",
    },
    turns: { title: "Turning times", question: "When to turn the wrapped leaf" },
    season: { title: "Season table", question: "Lots, weights and outturn by plot, flush or picker, from a range" },
    balance: { title: "Close a lot's balance", question: "Where every gram went, stage by stage" },
    fit: { title: "Fit it", question: "Do the readings agree within their errors, and which to suspect" },
  },
  inputs: {
    weight: { label: "Weight of the leaf", help: "What is on the scale before the work begins." },
    moisture: { label: "Moisture of the leaf", help: "Water as a share of the whole weight, at that weighing." },
    panLoad: { label: "Weight wanted in one pan", help: "The leaf is split into equal charges near this." },
    maxLoad: { label: "Most that a pan may hold", help: "No charge is made heavier." },
    readability: { label: "Smallest step of the scale", help: "Loads are whole steps, and add up exactly." },
    targets: { label: "Target", help: "" },
    targetKinds: { label: "What it is", help: "" },
    names: { label: "Step", help: "" },
    loss: { label: "Loss wanted", help: "How much is to go, in percent." },
    lossOf: { label: "Loss of what", help: "Ask whoever told you; the three lie far apart." },
    startWeight: { label: "Weight at the start", help: "When the moisture was known." },
    startMoisture: { label: "Moisture at the start", help: "One point wrong here grows on the way down." },
    weightNow: { label: "Weight now", help: "The same leaf, with nothing taken out." },
    dryLoss: { label: "Dry matter lost since then", help: "Dust and sift-outs, as a share of the dry matter." },
    freshWeight: { label: "Fresh weight", help: "As received, before anything was taken out." },
    freshMoisture: { label: "Fresh moisture", help: "Of the leaf as received." },
    finishedWeight: { label: "Finished weight", help: "What was packed, or is written in the book. May wait." },
    finishedMoisture: { label: "Finished moisture", help: "Of the finished tea." },
    removed: { label: "Leaf taken out", help: "Sift-outs and samples, weighed as leaf." },
    removedMoisture: { label: "Moisture of the leaf taken out", help: "Blank: as the fresh leaf." },
    lowLoss: { label: "Least dry matter lost", help: "In your own good lots. Blank: none." },
    highLoss: { label: "Most dry matter lost", help: "In your own good lots. Blank: no lower limit." },
    weightError: { label: "Error of the weights", help: "One standard error. Blank: 0." },
    freshMoistureError: {
      label: "Error of the fresh moisture",
      help: "One standard error, in points: 1 is one percent of the weight. Blank: 1 point, our assumption.",
    },
    finishedMoistureError: {
      label: "Error of the finished moisture",
      help: "One standard error, in points. Blank: 0.",
    },
    start: { label: "Wrapped at", help: "Time of day." },
    duration: { label: "Stays wrapped for", help: "Hours and minutes: 3:00 is three hours." },
    interval: { label: "Turned every", help: "Hours and minutes: 0:20 is twenty minutes." },
    groups: { label: "Plot", help: "" },
    freshWeights: { label: "Fresh", help: "" },
    finishedWeights: { label: "Finished", help: "" },
    areaNames: { label: "Plot", help: "" },
    areas: { label: "Area", help: "" },
    stages: { label: "Stage", help: "" },
    weights: { label: "Weight", help: "" },
    moistures: { label: "Moisture", help: "" },
    removedMoistures: { label: "Its moisture", help: "" },
    weightErrors: { label: "Error of the weights", help: "One standard error of each weighing." },
    moistureErrors: {
      label: "Error of the moistures",
      help: "One standard error, in points: 1 is one percent of the weight.",
    },
    dryLosses: { label: "Dry matter lost at each stage", help: "Taken as exact. Blank: none." },
    confidence: { label: "How sure before it speaks up", help: "Blank: 95 %." },
  },
  lists: {
    targets: "Targets, one after the other",
    names: "Steps, one after the other",
    groups: "Lots",
    areaNames: "Land, may be left blank",
    stages: "Weighings, in the order of the work",
  },
  choices: { moisture: "moisture left", water: "of the water", weight: "of the weight", points: "points" },
  answers: {
    CHARGECOUNT: "Charges",
    CHARGEPLAN: "The plan",
    FIRINGTARGET: "The scale should read",
    LOSSMEANINGS: "What the same loss can mean",
    MOISTURENOW: "Moisture now",
    DRYINGSTEPS: "The route",
    FINISHEDBAND: "The finished weight can be",
    FINISHEDCHECK: "The weight in the book",
    TURNTIMES: "Turn at",
    SEASONTABLE: "The season",
    STAGEBALANCE: "Where the grams went",
    BALANCEFIT: "The fit",
  },
  columns: {
    charge: "charge",
    load: "load",
    "reading after target": "after target",
    meaning: "loss of",
    "scale reading": "scale",
    "weight off": "off",
    moisture: "moisture",
    "dry basis": "dry basis",
    step: "step",
    "water off this step": "off here",
    "water off so far": "off so far",
    "share of start": "of start",
    low: "low",
    "at no loss": "at no loss",
    high: "high",
    group: "plot",
    lots: "lots",
    open: "open",
    "left out": "left out",
    fresh: "fresh",
    finished: "finished",
    outturn: "outturn",
    "leaf ratio": "leaf ratio",
    area: "area",
    "finished per area": "per area",
    "share of finished": "share",
    stage: "stage",
    weight: "weight",
    "dry matter": "dry matter",
    "water off": "water off",
    "dry matter removed": "taken out",
    unaccounted: "missing",
    kept: "kept",
    note: "note",
    "leaf removed": "leaf out",
    "fitted weight": "fitted",
    "fitted moisture": "fitted",
    z: "z",
    expected: "expected",
    flag: "flag",
    input: "input",
    value: "value",
    error: "error",
    "share of variance": "share",
  },
  units: { g: "g", kg: "kg", jin: "jin", liang: "liang", oz: "oz", lb: "lb" },
  unitWords: {
    clock: "hh:mm",
    span: "h:mm",
    points: "points",
    area: "your unit",
    perArea: "per unit of area",
    mayBeBlank: "may be blank",
  },
  form: {
    intro:
      "Type your own numbers over the examples, or select a cell in the sheet and press Pick: with the keyboard, Ctrl+Enter in the field.",
    allJobs: "All jobs",
    example: "(An example.)",
    exampleRows: "These rows are an example: type your own.",
    exampleChoice: (choice) => `${choice} (example)`,
    understood: (value) => `Taken as ${value}.`,
    span: (hours, minutes) => [...counted(hours, "hour"), ...counted(minutes, "minute")].join(" "),
    pick: "Pick",
    pickName: (label) => `Pick from the selected cells: ${label}`,
    pickAll: "Pick all columns from the selection",
    picked: (reference) => `from ${reference}`,
    filledCells: (count) => `${count} ${count === 1 ? "cell" : "cells"}`,
    typeInstead: "Type",
    typeInsteadName: (label) => `Type instead: ${label}`,
    more: "More, may be left blank",
    optional: "May be left blank.",
    row: (row) => `row ${row}`,
    addRow: "Add a row",
    removeRow: "×",
    removeRowName: (row) => `Remove row ${row}`,
    startAgain: "Back to the example",
  },
  answer: {
    heading: "Answer",
    waits: "The answer waits for a weight or moisture that is still blank.",
    needsInput: "The answer comes when the marked fields are right.",
    refused: (reason) => `No answer: ${reason}.`,
    cellError: (code) => `a picked cell shows ${code}`,
    rests: (labels) => `This rests on our example for: ${labels.join("; ")}.`,
    restsAltogether: "This rests on our example altogether: type your own numbers.",
    scroll: "Answer, can be scrolled sideways",
    picture: "Picture",
  },
  problems: {
    needed: "Fill this in.",
    notNumber: (text) => `“${text}” is not a number.`,
    whichOne: (text) => `What is “${text}” here?`,
    unitInDoubt: (unit, why) => `“${unit}” can mean several units: ${englishHint(why)}.`,
    notTime: (text) => `“${text}” is not a time: write hours and minutes, such as 0:20 or 14:30.`,
    must: (bounds) => `Must be ${bounds.join(" and ")}.`,
    above: (value) => `above ${value}`,
    atLeast: (value) => `${value} or more`,
    below: (value) => `below ${value}`,
    atMost: (value) => `at most ${value}`,
    whole: "a whole number",
    pickOne: "Select one single cell in the sheet, then press Pick.",
    pickLine: "Select one column or one row in the sheet, then press Pick.",
    pickColumns: (least, most) =>
      least === most
        ? `Select ${least} columns side by side first.`
        : `Select ${least} to ${most} columns side by side first.`,
    overPicked: "The block would lie over the cells that you picked. Select an empty place beside them.",
    fixFirst: "Nothing was written: a field needs another look.",
    noAnswer: "Nothing was written: there is no answer yet.",
    host: ({ message }) => message,
    unknown: "The workbook did not answer. Nothing that you typed is lost; try again.",
  },
  write: {
    button: "Write it at the selected cell",
    newSheet: "Write it on a new sheet",
    writtenOnNewSheet: (sheet) => `Written on the new sheet “${sheet}”. The tinted cells are yours to change.`,
    where: (place) => `Selected now: ${place}`,
    written: (place) => `Written at ${place}. The tinted cells are yours to change; Undo takes it back.`,
    filledTitle: "These cells are filled",
    filled: (addresses) => `Writing here would replace what stands in ${addresses}.`,
    more: (count) => `and ${count} more`,
    over: "Write over them",
    keep: "Keep them",
    chart: "With a chart beside it",
    chartHelp: "Of the rows that the table has now.",
    noChart: "But there is no chart.",
  },
  sheet: {
    examples: (labels) => `Still our example, type your own: ${labels.join("; ")}.`,
    cautions: (titles) => `Take care: ${titles}. Local codes come first.`,
  },
  cautions: Object.fromEntries(cautions.map(({ id, title, text }) => [id, { title, text }])),
  deferral,
  reference: {
    search: "Search names, summaries and arguments",
    none: "No function holds all of these words. Try a single one, such as weight.",
    count: (count) => `${count} ${count === 1 ? "function" : "functions"}`,
    headings: { arguments: "Arguments", answer: "Answer", use: "Use", examples: "Examples", cautions: "Cautions" },
    groups: {
      moisture: "moisture",
      targets: "targets",
      charges: "charges",
      yields: "yields",
      balance: "balance",
      season: "season",
      uncertainty: "uncertainty",
      units: "units",
      time: "time",
    },
    limits: (parameter) => {
      const { unit } = parameter.quantity;
      return `${accepts(parameter)}.${unit === "" ? "" : ` Unit: ${unit}.`} Left blank: ${whenBlank(parameter)}.`;
    },
    gives: resultInWords,
    column: (name, format) => `${name} (${format})`,
    oneCell: "Inside a worksheet table, take one cell of it:",
    answerOf: (formula) => `Answer of ${formula}`,
  },
  says: (text) => text,
  reason: englishReason,
  examples: {
    steps: ["First firing", "Second firing", "Third firing", "Last drying"],
    plots: ["Field by the well", "Wall garden", "Field by the well", "Wall garden"],
    stages: ["fresh", "withered", "fired", "finished"],
  },
  fitted: (gamma, freedom, probability) =>
    `Sum of squares ${gamma}, degrees of freedom ${freedom}, probability of as much by chance ${probability}.`,
  verdict: "Verdict",
  answerText: (text) => text,
};

/** "1 hour", "3 hours"; nothing of 0. */
const counted = (count: number, what: string): string[] =>
  count === 0 ? [] : [`${count} ${what}${count === 1 ? "" : "s"}`];
