import { type IWorkbookData, type Plugin, type PluginCtor, Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { catalogue } from "../core/catalogue";
import { keepColumnIndexShort } from "./column-index";
import { keepEmptyTexts } from "./empty-texts";
import { ErrorMessages } from "./error-messages";
import { type Evaluation, evaluationIn } from "./evaluation";
import { descriptionsFor, executorsFor } from "./executors";
import { constantOf } from "./snapshot";
import { prepareSorting } from "./sort-table";
import { spillsOf } from "./spills";

/** The functions of the catalogue, as the engine's presets take them. */
interface FormulaSettings {
  readonly function: ReturnType<typeof executorsFor>;
  readonly description: ReturnType<typeof descriptionsFor>;
}

interface Opening {
  readonly settings: ConstructorParameters<typeof Univer>[0];
  /** What the platform's preset is made of: with a grid in a page, without one in Node. */
  readonly plugins: (
    formula: FormulaSettings,
  ) => readonly (PluginCtor<Plugin> | readonly [PluginCtor<Plugin>, object?])[];
  readonly snapshot: IWorkbookData;
  /** What the workbook can call by named formulas of its own. */
  readonly byName: ReadonlySet<string>;
}

/** The only place that opens the engine, for Node and for the page, with our functions in it and one workbook. */
export function openEngine({ settings, plugins, snapshot, byName }: Opening) {
  keepColumnIndexShort();
  keepEmptyTexts();
  const errors = new ErrorMessages();
  const univer = new Univer(settings);
  const formula = { function: executorsFor(catalogue, errors, byName), description: descriptionsFor(catalogue) };
  for (const plugin of plugins(formula)) {
    const [part, options] = Array.isArray(plugin) ? plugin : [plugin as PluginCtor<Plugin>];
    univer.registerPlugin(part, options);
  }
  const api = FUniver.newAPI(univer);
  const book = api.createWorkbook(snapshot);
  const injector = univer.__getInjector();
  const spills = spillsOf(injector, book.getId());
  prepareSorting(injector);
  let known: Evaluation | undefined;
  /** Made at its first use: it takes parts of the engine that begin to calculate as soon as they are there. */
  const evaluation: Evaluation = (expression, place) => {
    known ??= evaluationIn(injector, book.getId(), errors);
    return known(expression, place);
  };

  /** What a cell holds, spilled ones included: the cell itself, not the engine's getValue(), which rounds. */
  const rawValue = (sheetId: string, row: number, column: number) => {
    const cell = book.getSheetBySheetId(sheetId)?.getSheet().getCellMatrix().getValue(row, column);
    const data = cell && constantOf(cell) !== undefined ? cell : spills.cellAt(sheetId, row, column);
    return data ? constantOf(data) : undefined;
  };

  return { univer, api, book, injector, errors, spills, evaluation, rawValue };
}
