import { type IAccessor, ICommandService, type Injector } from "@univerjs/core";
import { MoveSelectionEnterAndTabCommand } from "@univerjs/preset-sheets-core";
import type { Api } from "./grid";

/**
 * Enter ends a row that was typed with Tab, and goes to below its first cell: the engine keeps that cell in mind, and
 * did so when another one had been clicked since. The first Enter there, and with it the next number, then went to
 * wherever Tab had been pressed before.
 */
export function endRowsAtClicks(api: Api, injector: Injector): void {
  const commands = injector.get(ICommandService);
  const { id, handler } = MoveSelectionEnterAndTabCommand;
  const selected = (): string => {
    const sheet = api.getActiveWorkbook()?.getActiveSheet();
    const cell = sheet?.getSelection()?.getCurrentCell();
    return `${sheet?.getSheetId()} ${cell?.actualRow},${cell?.actualColumn}`;
  };
  /** Where Enter or Tab went last. */
  let reached = "";
  commands.unregisterCommand(id);
  const moving: typeof MoveSelectionEnterAndTabCommand = {
    ...MoveSelectionEnterAndTabCommand,
    handler: async (accessor, params) => {
      const isStillThere = selected() === reached;
      const isDone = await handler(isStillThere ? accessor : withoutRow(accessor), params);
      reached = selected();
      return isDone;
    },
  };
  commands.registerCommand(moving);
}

/** The part of the engine that keeps the first cell of the row, which has no name outside of it. */
interface RowMemory {
  getCurrentBySearch(): unknown;
  addOrUpdate(row: object): unknown;
}

/** The engine's parts as the command gets them; the one that keeps the row knows of none. */
const withoutRow = (accessor: IAccessor): IAccessor => ({
  ...accessor,
  get: ((...asked: Parameters<IAccessor["get"]>) => {
    const part: unknown = accessor.get(...asked);
    return isRowMemory(part) ? Object.create(part, { getCurrentBySearch: { value: () => undefined } }) : part;
  }) as IAccessor["get"],
});

const isRowMemory = (part: unknown): part is RowMemory =>
  typeof part === "object" && part !== null && "getCurrentBySearch" in part && "addOrUpdate" in part;
