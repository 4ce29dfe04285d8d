import {
  CommandType,
  type ICommandInfo,
  type IExecutionOptions,
  type Injector,
  LifecycleService,
  LifecycleStages,
  LocaleType,
  LogLevel,
  mergeLocales,
} from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import {
  CalculationMode,
  FormulaCalculationSessionController,
  FormulaExecutedStateType,
  SetSelectionsOperation,
  TriggerCalculationController,
  UniverSheetsCorePreset,
} from "@univerjs/preset-sheets-core";
import engineWords from "@univerjs/preset-sheets-core/locales/en-US";
import { greenTheme } from "@univerjs/themes";
import "@univerjs/preset-sheets-core/lib/index.css";
import type { ErrorMessages } from "../../engine/error-messages";
import type { Evaluation } from "../../engine/evaluation";
import type { LeftFormulas } from "../../engine/left-formulas";
import { openEngine } from "../../engine/open-engine";
import { snapshotOf, workbookOf } from "../../engine/snapshot";
import type { Spills } from "../../engine/spills";
import { idsByName } from "../../named-formulas/own-names";
import type { Workbook } from "../../workbook/workbook";
import { keepClicksApart } from "./double-clicks";
import { followRows } from "./follow-rows";
import { keepNotes } from "./notes";
import { endRowsAtClicks } from "./tab-rows";
import { showTextFormats } from "./text-formats";
import { startTouch } from "./touch";
import { followSorting, withSteadyTyping } from "./typing";
import { words } from "./words";

export type Api = FUniver;

/** A workbook in the page: the engine's grid with our functions in it. */
export interface Grid {
  readonly api: Api;
  /** Why cells show an error; settled after every calculation. */
  readonly errors: ErrorMessages;
  readonly spills: Spills;
  /** The parts of the engine. */
  readonly injector: Injector;
  /** As it is now, with the results of the last calculation. */
  workbook(): Workbook;
  /** A cell as it is shown, spilled ones included. */
  shown(sheetName: string, row: number, column: number): string;
  /** What a cell holds, unrounded, spilled ones included; undefined for a blank. An error is its code. */
  value(sheetId: string, row: number, column: number): number | string | boolean | undefined;
  /** Whether cells may still hold what they came to before the last change. */
  isCalculating(): boolean;
  /** What an expression would come to in a cell; changes nothing. */
  readonly evaluation: Evaluation;
  /** Ends the typing in a cell as Enter does. */
  finishTyping(): Promise<void>;
  /**
   * Calls back after each change that the maker made, and again when what follows from it has been calculated. Gives
   * the way to stop it.
   */
  onChange(listener: () => void): () => void;
  /** Calls back whenever another cell is selected, by hand or by the page; gives the way to stop it. */
  onSelect(listener: () => void): () => void;
}

/** The engine asks for these words while it calculates, and brings none. */
function progressWords() {
  const { looking, calculating, done } = words().progress;
  return {
    ...{ analyzing: looking, calculating, done },
    ...{ "array-analysis": looking, "array-calculation": calculating },
  };
}

/**
 * Shows a workbook in the element with this id; done when it is calculated and takes clicks and keys. `left`: formulas
 * that keep the results that they came with.
 */
export async function openGrid(container: string, workbook: Workbook, left?: LeftFormulas): Promise<Grid> {
  // As the page around it and the pane.
  const darkScheme = matchMedia("(prefers-color-scheme: dark)");
  const { api, book, injector, errors, spills, evaluation, rawValue } = openEngine({
    settings: {
      theme: greenTheme,
      darkMode: darkScheme.matches,
      locale: LocaleType.EN_US,
      locales: { [LocaleType.EN_US]: mergeLocales(engineWords, { "sheets-formula": { progress: progressWords() } }) },
      logLevel: LogLevel.WARN,
    },
    plugins: (formula) => {
      const { plugins } = UniverSheetsCorePreset({
        container,
        header: true,
        toolbar: false,
        formulaBar: true,
        footer: { menus: false, statisticBar: false },
        formula: { ...formula, initialFormulaComputing: CalculationMode.FORCED },
      });
      return plugins.map(withSteadyTyping);
    },
    snapshot: snapshotOf(workbook, "workbook", left),
    byName: idsByName(workbook.names),
  });
  darkScheme.addEventListener("change", ({ matches }) => api.toggleDarkMode(matches));
  const formulas = api.getFormula();
  keepNotes(api, injector);
  followRows({ api, injector });
  followSorting(injector);
  showTextFormats(injector);

  const listeners = new Set<() => void>();
  let changed = false;
  const tell = () => {
    for (const listener of listeners) listener();
  };
  // The engine's own event for selections is told of none in the first seconds.
  const selectionListeners = new Set<() => void>();
  api.addEvent(api.Event.CommandExecuted, (command) => {
    if (command.id === SetSelectionsOperation.id) for (const listener of selectionListeners) listener();
    if (!isChangeByHand(command)) return;
    changed = true;
    tell();
  });

  const isCalculated = new Promise<void>((done) => {
    formulas.calculationResultApplied(() => done());
  });
  // The engine begins to calculate as soon as these two exist. It would make them itself when the grid is drawn, before
  // which it lets 300 ms pass: they are spent on calculating.
  injector.get(FormulaCalculationSessionController);
  injector.get(TriggerCalculationController);
  // A workbook without formulas is never calculated.
  if (workbook.sheets.some(({ cells }) => cells.some((cell) => cell.formula !== undefined && !left?.has(cell))))
    await isCalculated;
  errors.settle(rawValue);
  await injector.get(LifecycleService).onStage(LifecycleStages.Rendered);
  const element = document.getElementById(container);
  if (element) {
    startTouch(element, api, injector);
    keepClicksApart(element, api, injector);
    endRowsAtClicks(api, injector);
  }

  const spilledPlaces = () =>
    new Set(
      book
        .getSheets()
        .map((sheet) => sheet.getSheetId())
        .flatMap((sheet) => spills.cells(sheet).map(({ row, column }) => `${sheet}!${row},${column}`)),
    );
  let spilled = spilledPlaces();
  let isCalculating = false;
  formulas.calculationStart(() => {
    isCalculating = true;
  });
  formulas.calculationEnd((state) => {
    if (state === FormulaExecutedStateType.NOT_EXECUTED) isCalculating = false;
  });
  formulas.calculationResultApplied(() => {
    isCalculating = false;
    const before = spilled;
    spilled = spilledPlaces();
    // The engine leaves formulas stale that refer to cells which a shrinking spill has left.
    if ([...before].some((place) => !spilled.has(place))) formulas.executeCalculation();
    errors.settle(rawValue);
    if (changed) tell();
  });
  return {
    api,
    errors,
    spills,
    injector,
    workbook: () => workbookOf(book.save(), spills),
    shown: (sheetName, row, column) => book.getSheetByName(sheetName)?.getRange(row, column).getDisplayValue() ?? "",
    value: rawValue,
    isCalculating: () => isCalculating,
    evaluation,
    finishTyping: async () => {
      if (book.isCellEditing()) await book.endEditingAsync(true);
    },
    onChange: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    onSelect: (listener) => {
      selectionListeners.add(listener);
      return () => selectionListeners.delete(listener);
    },
  };
}

/** Sheets also change when formulas are calculated and when rows take the height of their text. */
function isChangeByHand({ id, type, options }: ICommandInfo & { options?: IExecutionOptions }): boolean {
  if (type !== CommandType.MUTATION || !id.startsWith("sheet.mutation.")) return false;
  return !options?.fromFormula && !id.includes("auto-height");
}
