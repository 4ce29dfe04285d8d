import { ICommandService, type Injector, type Plugin, type PluginCtor } from "@univerjs/core";
import {
  EditorBridgeService,
  IEditorBridgeService,
  ReorderRangeMutation,
  UniverSheetsUIPlugin,
} from "@univerjs/preset-sheets-core";

/**
 * The engine's go-between for cells and their editor, which leaves an open editor alone.
 *
 * Whenever anything writes a cell with the row and column of the one being edited, on whatever sheet, the engine loads
 * the editor anew with what the cell held before. Every calculation writes, so that numbers typed at an ordinary pace
 * lost what they began with and got what stood there before. An editor that opens next is loaded when its cell is
 * selected, and so has nothing to miss.
 */
class SteadyEditor extends EditorBridgeService {
  override refreshEditCellState(): void {
    if (!this.isVisible().visible) super.refreshEditCellState();
  }
}

type Configured = readonly [PluginCtor<Plugin>, object?];

/** A plugin of the engine with its configuration; the one that edits cells gets the steady editor. */
export function withSteadyTyping(plugin: PluginCtor<Plugin> | Configured): Configured {
  const [kind, configuration = {}] = Array.isArray(plugin) ? (plugin as Configured) : [plugin as PluginCtor<Plugin>];
  if (kind !== UniverSheetsUIPlugin) return [kind, configuration];
  return [kind, { ...configuration, override: [[IEditorBridgeService, { useClass: SteadyEditor }]] }];
}

/**
 * Has the editor and the formula bar hold what stands in the selected cell once rows were sorted: the engine loads them
 * anew only after writing, and Enter in an editor with the old content would put it over the new.
 */
export function followSorting(injector: Injector): void {
  const editor = injector.get(IEditorBridgeService);
  injector.get(ICommandService).onCommandExecuted(({ id }) => {
    if (id === ReorderRangeMutation.id) editor.refreshEditCellState();
  });
}
