import type { IDisposable } from "@univerjs/core";
import type { FRange } from "@univerjs/preset-sheets-core";
import { createElement } from "react";
import type { ErrorMessage } from "../engine/error-messages";
import { addressOf } from "../workbook-files/addresses";
import { goToCell } from "./go-to-cell";
import type { Grid } from "./grid";

/** What a cell has to say: why it shows an error, or the note that came with the workbook. */
interface CellMessage {
  readonly text: string;
  readonly isError: boolean;
}

const bubbleName = "cell-bubble";

/** Said while no cell has anything to say. */
const hint = "Type over the tinted cells: every answer follows.";

/**
 * Shows messages and notes in two places: in a bubble beside the cell that is selected or under the pointer, and in
 * the line above the grid, which also names errors elsewhere and which screen readers read out.
 */
export function showCellMessages(grid: Grid, line: HTMLElement): void {
  const { api, errors } = grid;
  api.registerComponent(bubbleName, Bubble);
  const bubbles = { selected: bubbleSlot(), hovered: bubbleSlot() };

  const messageAt = (sheetId: string, row: number, column: number): CellMessage | undefined => {
    const error = errors.at(sheetId, row, column)?.message ?? explanation(grid, sheetId, row, column);
    if (error) return { text: error, isError: true };
    const cell = api.getActiveWorkbook()?.getSheetBySheetId(sheetId)?.getSheet().getCellRaw(row, column);
    const note: unknown = cell?.custom?.note;
    return typeof note === "string" ? { text: note, isError: false } : undefined;
  };

  const showSelected = () => {
    const sheet = api.getActiveWorkbook()?.getActiveSheet();
    const place = sheet?.getSelection()?.getCurrentCell();
    if (!sheet || !place) return;
    const { actualRow: row, actualColumn: column } = place;
    const message = messageAt(sheet.getSheetId(), row, column);
    bubbles.selected.show(sheet.getRange(row, column), message);
    if (message) line.replaceChildren(spoken(addressOf(row, column), message));
    else line.replaceChildren(elsewhere(grid, sheet.getSheetId()));
    line.classList.toggle("has-error", message?.isError ?? errors.all().length > 0);
  };

  grid.onSelect(showSelected);
  api.addEvent(api.Event.ActiveSheetChanged, showSelected);
  errors.subscribe(showSelected);
  api.addEvent(api.Event.CellHover, ({ worksheet, row, column }) => {
    const selected = worksheet.getSelection()?.getCurrentCell();
    const isSelected = selected?.actualRow === row && selected.actualColumn === column;
    const message = isSelected ? undefined : messageAt(worksheet.getSheetId(), row, column);
    bubbles.hovered.show(worksheet.getRange(row, column), message);
  });
  showSelected();
}

/** A bubble that stands beside one cell at a time. */
function bubbleSlot() {
  let standing: { key: string; bubble: IDisposable } | undefined;
  return {
    show(range: FRange, message: CellMessage | undefined) {
      const key = message ? `${range.getSheetId()}!${range.getA1Notation()} ${message.text}` : "";
      if (key === (standing?.key ?? "")) return;
      standing?.bubble.dispose();
      standing = undefined;
      if (!message) return;
      const bubble = range.attachPopup({
        componentKey: bubbleName,
        direction: "horizontal",
        offset: [6, 0],
        showOnSelectionMoving: true,
        extraProps: { message },
      });
      if (bubble) standing = { key, bubble };
    },
  };
}

function Bubble({ popup }: { popup: { extraProps: { message: CellMessage } } }) {
  const { text, isError } = popup.extraProps.message;
  return createElement("div", { className: isError ? "bubble has-error" : "bubble" }, text);
}

function spoken(address: string, { text }: CellMessage): HTMLElement {
  const sentence = document.createElement("span");
  const strong = document.createElement("strong");
  strong.textContent = `${address}: `;
  sentence.append(strong, text);
  return sentence;
}

/** What the engine's own errors mean, in plain words. */
const meanings: Readonly<Record<string, string>> = {
  "#DIV/0!": "this divides by zero or by a blank cell",
  "#NAME?": "a function or a name in this formula is not known: look at its spelling",
  "#REF!": "this refers to a cell that is no longer there",
  "#NUM!": "no number answers this",
  "#SPILL!": "the answer needs the cells beside or below this one: empty them",
  "#CYCLE!": "this formula refers to itself",
};

/** Why a cell shows an error that no function of ours gave: its own mistake, or one that it was handed on. */
function explanation({ api, errors, value }: Grid, sheetId: string, row: number, column: number): string | undefined {
  const shown = value(sheetId, row, column);
  if (typeof shown !== "string" || !shown.startsWith("#")) return undefined;
  if (meanings[shown]) return meanings[shown];
  const source = first(errors.all(), sheetId);
  if (source?.code !== shown) return undefined;
  const sheet =
    source.sheet === sheetId ? "" : `${api.getActiveWorkbook()?.getSheetBySheetId(source.sheet)?.getSheetName()} `;
  return `an error elsewhere reaches this cell. ${sheet}${addressOf(source.row, source.column)}: ${source.message}`;
}

/** Errors of the sheet in view come before others. */
const first = (all: readonly ErrorMessage[], sheetId: string): ErrorMessage | undefined =>
  all.find(({ sheet }) => sheet === sheetId) ?? all[0];

/** The first error of the workbook, with a button that goes there. */
function elsewhere(grid: Grid, sheetId: string): HTMLElement {
  const { api, errors } = grid;
  const all = errors.all();
  const source = first(all, sheetId);
  const sentence = document.createElement("span");
  if (source === undefined) {
    sentence.textContent = hint;
    return sentence;
  }
  const sheet = api.getActiveWorkbook()?.getSheetBySheetId(source.sheet);
  const address = addressOf(source.row, source.column);
  const go = document.createElement("button");
  go.type = "button";
  go.textContent = source.sheet === sheetId ? address : `${sheet?.getSheetName()} ${address}`;
  go.title = "Go to this cell";
  go.addEventListener("click", () => goToCell(grid, source.sheet, source.row, source.column));
  const others = all.filter(({ message }) => message !== source.message).length;
  const same = all.length - others - 1;
  sentence.append(go, ` ${source.message}`);
  const rest = [
    same > 0 ? `${same} more ${same === 1 ? "cell says" : "cells say"} the same` : "",
    others > 0 ? `${others} ${others === 1 ? "cell says" : "cells say"} something else` : "",
  ].filter(Boolean);
  if (rest.length > 0) sentence.append(` (${rest.join(", ")})`);
  return sentence;
}
